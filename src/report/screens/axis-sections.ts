import { FLARE_START_NOTE } from '../tables/axis-tables.js';
import type { Page } from '../text/page.js';
import { paragraph, section } from '../text/section.js';
import { type Grid, gridLines } from '../text/table.js';

/** Where the high-RG axis of drilled balls comes out, and how their flare starts. */
export const axisSections = (psa: Grid, flareStart: Grid, page: Page): string[][] => [
  section('Where the high-RG axis (PSA) comes out', gridLines(psa, page), page),
  section(
    'How flare starts',
    [...gridLines(flareStart, page), ...paragraph(FLARE_START_NOTE, page, page.paint.quiet)],
    page,
  ),
];
