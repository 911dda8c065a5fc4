import type { CausesAnswer, CausesOf } from '../../records/answers/answer.js';
import { REACTION_NUMBERS, SHARED_IDS } from '../../records/schemas/reaction-numbers.js';
import type { Units } from '../text/display-units.js';
import { signed } from '../text/figures.js';
import type { Grid } from '../text/table.js';

/** Whether a layout is compared with itself, so that nothing has a cause. */
const isNothing = (causes: CausesAnswer): boolean =>
  [causes.score, ...SHARED_IDS.map((id) => causes[id])].every((of) =>
    [of.total, of.centre, of.flare, of.inertia].every((each) => each === 0),
  );

/** How much of each difference comes from which property of the drilled ball; empty where that is not known or there is none. */
export const causesGrid = (causes: CausesAnswer | null, units: Units, head: string): Grid => ({
  columns: [
    { head },
    { head: 'centre\nof mass' },
    { head: 'flare' },
    { head: 'RG and\ndiff.' },
    { head: 'in all' },
  ],
  rows:
    causes && !isNothing(causes)
      ? [
          ['score, points', ...cells(causes.score, (value) => signed(value, 0))],
          ...SHARED_IDS.map((id) => {
            const { row, quantity } = REACTION_NUMBERS[id].compared;
            const unit = units[quantity];
            return [`${row}, ${unit.name}`, ...cells(causes[id], unit.change)];
          }),
        ]
      : [],
});

const cells = ({ centre, flare, inertia, total }: CausesOf, show: (value: number) => string): string[] =>
  [centre, flare, inertia, total].map(show);
