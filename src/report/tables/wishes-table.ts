import type { Band, ReactionAnswer, TargetAnswer } from '../../records/answers/answer.js';
import { NUMBER_OF_WISH, REACTION_NUMBERS, wishWords } from '../../records/schemas/reaction-numbers.js';
import { band } from '../text/figures.js';
import type { Spelling } from '../text/page.js';
import type { Grid } from '../text/table.js';
import { unitOf } from './reaction-rows.js';

/** What was asked for, what number that is for this bowler and ball, and what a layout gives. */
export const wishesGrid = (
  targets: readonly TargetAnswer[],
  reaction: ReactionAnswer,
  page: Spelling,
  whose: string,
): Grid => ({
  columns: [
    { head: 'asked for' },
    { head: 'your wish', align: 'left' },
    { head: 'target' },
    { head: whose },
    { head: 'range with\nthis ball' },
  ],
  rows: targets.map(({ wish, step, asked, value, attainable }) => {
    const id = NUMBER_OF_WISH[wish];
    const { name, show } = unitOf(id, page.units);
    return [
      `${REACTION_NUMBERS[id].compared.row}, ${name}`,
      step === null
        ? numberAsked(asked ?? value, attainable, show)
        : `${wishWords(wish).steps[step - 1]} (${step})`,
      show(value),
      show(reaction[id]),
      band(attainable, show, page),
    ];
  }),
});

/** A number that was asked for, and that it is out of reach where it is. */
const numberAsked = (asked: number, { low, high }: Band, show: (value: number) => string): string =>
  asked < low || asked > high ? `${show(asked)}, out of reach` : show(asked);
