import type { SharesAnswer } from '../../records/answers/answer.js';
import { REACTION_NUMBERS, SHARED_IDS } from '../../records/schemas/reaction-numbers.js';
import type { Quantity, Units } from '../text/display-units.js';
import { signed } from '../text/figures.js';
import type { Grid } from '../text/table.js';

interface ShareRow {
  readonly key: Exclude<keyof SharesAnswer, 'score'>;
  readonly name: string;
  readonly quantity: Quantity;
}

/** The numbers whose changes are shared out, after the score. */
const SHARE_ROWS: readonly ShareRow[] = [
  ...SHARED_IDS.map((key) => {
    const { row, quantity } = REACTION_NUMBERS[key].compared;
    return { key, name: row, quantity };
  }),
  { key: 'differentialIn', name: 'total differential', quantity: 'gyration' },
  { key: 'intermediateDifferentialIn', name: 'intermediate diff.', quantity: 'gyration' },
];

/** Whether a layout is compared with itself, so that there is nothing to share out. */
export const isNothing = (shares: SharesAnswer): boolean =>
  Object.values(shares).every(({ total, drillingAngle, pinToPap, valAngle }) =>
    [total, drillingAngle, pinToPap, valAngle].every((each) => each === 0),
  );

/** How much of each difference from a reference comes from which of the three layout numbers; nothing of the reference itself. */
export const sharesGrid = (shares: SharesAnswer, units: Units, head: string): Grid => ({
  columns: [
    { head },
    { head: 'drilling\nangle' },
    { head: 'pin-to-\nPAP' },
    { head: 'VAL\nangle' },
    { head: 'all\nthree' },
  ],
  rows: isNothing(shares)
    ? []
    : [
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
