import { ALL_SHEETS, takeTwoPages } from './two-pages-of.js';

takeTwoPages(ALL_SHEETS);
