import type { SharesAnswer } from '../../records/answers/answer.js';
import type { Quantity, Units } from '../text/display-units.js';
import { signed } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { type Grid, gridLines } from '../text/table.js';

/** The numbers whose changes are shared out, after the score. */
export const SHARE_ROWS = [
  { key: 'hookStartFt', name: 'hook starts', quantity: 'lane' },
  { key: 'sharpnessDegPerFt', name: 'sharpness', quantity: 'sharpness' },
  { key: 'totalHookBoards', name: 'total hook', quantity: 'boards' },
  { key: 'flareIn', name: 'flare', quantity: 'flare' },
  { key: 'differentialIn', name: 'total differential', quantity: 'gyration' },
  { key: 'intermediateDifferentialIn', name: 'intermediate diff.', quantity: 'gyration' },
] as const satisfies readonly { key: keyof SharesAnswer; name: string; quantity: Quantity }[];

/** How much of each difference from a reference comes from which of the three layout numbers. */
export const sharesTable = (shares: SharesAnswer, page: Page, head = 'against the\nusual layout'): string[] =>
  gridLines(sharesGrid(shares, page.units, head), page);

export const sharesGrid = (shares: SharesAnswer, units: Units, head: string): Grid => ({
  columns: [
    { head },
    { head: 'drilling\nangle' },
    { head: 'pin-to-\nPAP' },
    { head: 'VAL\nangle' },
    { head: 'all\nthree' },
  ],
  rows: [
    ['score, points', ...cells(shares.score, (value) => signed(value, 0))],
    ...SHARE_ROWS.map(({ key, name, quantity }) => {
      const unit = units[quantity];
      return [`${name}, ${unit.name}`, ...cells(shares[key], unit.change)];
    }),
  ],
});

const cells = (
  { drillingAngle, pinToPap, valAngle, total }: SharesAnswer['score'],
  show: (value: number) => string,
): string[] => [drillingAngle, pinToPap, valAngle, total].map(show);
