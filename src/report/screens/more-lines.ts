import type { Page } from '../text/page.js';
import { wrap } from '../text/wrap.js';

/** How to see what is behind a first screen. */
export const moreLines = (page: Page): string[] =>
  wrap('More: --full, --report FILE.html, --json', page.width).map(page.paint.quiet);
