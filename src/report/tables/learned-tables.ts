import {
  FORETOLD_IDS,
  type LearnedAnswer,
  type LearnedNumber,
} from '../../records/answers/learned-answer.js';
import { capital } from '../../records/text/capital.js';
import type { Units } from '../text/display-units.js';
import { percent } from '../text/figures.js';
import type { Grid } from '../text/table.js';
import { FORETOLD, numberHead, numberSpread, spreadText } from '../wording/learned-numbers.js';
import { surpriseName } from '../wording/learned-words.js';

/** Numbers before and after, with what is left of how far off they were. */
export const numbersGrid = (numbers: readonly LearnedNumber[], units: Units): Grid => ({
  columns: [
    { head: '' },
    { head: 'before', align: 'right' },
    { head: 'after', align: 'right' },
    { head: '± left', align: 'right' },
  ],
  rows: numbers.map(({ id, before, after, leftShare }) => [
    numberHead(id, units),
    numberSpread(id, before, units),
    numberSpread(id, after, units),
    `${percent(Math.min(1, leftShare))} %`,
  ]),
});

/** Predictions for a night like the last. */
export const foretoldGrid = ({ foretold: { before, after } }: LearnedAnswer, units: Units): Grid => ({
  columns: [{ head: '' }, { head: 'before', align: 'right' }, { head: 'after', align: 'right' }],
  rows: FORETOLD_IDS.map((id) => {
    const { show, name } = FORETOLD[id].unit(units);
    const cell = (of: LearnedAnswer['foretold']['before']): string => (of ? spreadText(of[id], show) : '-');
    return [`${FORETOLD[id].name}, ${name}`, cell(before), cell(after)];
  }),
});

/** Nights learned from. */
export const nightsGrid = ({ nights }: LearnedAnswer): Grid => ({
  columns: [
    { head: 'night' },
    { head: 'ball', align: 'left' },
    { head: 'lane', align: 'left' },
    { head: 'shots', align: 'right' },
  ],
  rows: nights.map(({ on, ball, lane, shots }, i) => [on ?? `${i + 1}`, ball, lane, String(shots)]),
});

/** How likely what was read is beside all else, least likely first. */
export const surprisesGrid = ({ misfit, nights }: LearnedAnswer, units: Units): Grid => ({
  columns: [
    { head: 'beside all else' },
    { head: 'means', align: 'right' },
    { head: 'as far off\nby luck, %', align: 'right' },
  ],
  rows: misfit.surprises.map(({ of, means, chance }) => [
    capital(surpriseName(of, nights, units)),
    String(means),
    percent(chance),
  ]),
});
