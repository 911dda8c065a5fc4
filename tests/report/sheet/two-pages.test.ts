import { ALL_SHEETS, takeTwoPages } from './two-pages-of.js';

// the fullest sheet of each grip; all of them: two-pages.slow.test.ts
takeTwoPages(
  ALL_SHEETS.filter(({ fit, drillings }) => drillings === { assumed: 0, given: 1, vented: 2 }[fit]),
);
