import type { SharesAnswer } from '../records/answer.js';
import { signed } from './figures.js';
import type { Page } from './page.js';
import { table } from './table.js';

const SHARE_ROWS = [
  { key: 'score', name: 'score', unit: 'points', digits: 0 },
  { key: 'hookStartFt', name: 'hook starts', unit: 'ft', digits: 1 },
  { key: 'hookSharpnessDegPerFt', name: 'hook shape', unit: 'deg/ft', digits: 2 },
  { key: 'totalHookBoards', name: 'total hook', unit: 'boards', digits: 1 },
  { key: 'flareIn', name: 'flare', unit: 'in', digits: 1 },
  { key: 'differentialIn', name: 'total differential', unit: 'in', digits: 3 },
  { key: 'intermediateDifferentialIn', name: 'intermediate diff.', unit: 'in', digits: 3 },
] as const satisfies readonly { key: keyof SharesAnswer; name: string; unit: string; digits: number }[];

/** How much of each difference from a reference comes from which of the three layout numbers. */
export const sharesTable = (shares: SharesAnswer, page: Page, head = 'against the\nusual layout'): string[] =>
  table(
    [
      { head },
      { head: 'drilling\nangle' },
      { head: 'pin-to-\nPAP' },
      { head: 'VAL\nangle' },
      { head: 'all\nthree' },
    ],
    SHARE_ROWS.map(({ key, name, unit, digits }) => [
      `${name}, ${unit}`,
      signed(shares[key].drillingAngle, digits),
      signed(shares[key].pinToPap, digits),
      signed(shares[key].valAngle, digits),
      signed(shares[key].total, digits),
    ]),
    page,
  );
