import type { ReactionAnswer, TargetAnswer } from '../records/answer.js';
import { band, decimals } from './figures.js';
import type { Page } from './page.js';
import { table } from './table.js';

/** How each wish is worded, and the reaction number that answers it. */
const WISHES = {
  hookStart: {
    name: 'hook starts',
    key: 'hookStartFt',
    unit: 'ft',
    digits: 1,
    steps: ['earliest', 'early', 'middle', 'late', 'latest'],
  },
  hookShape: {
    name: 'hook shape',
    key: 'hookSharpnessDegPerFt',
    unit: 'deg/ft',
    digits: 2,
    steps: ['smoothest', 'smooth', 'middle', 'sharp', 'sharpest'],
  },
  hookTotal: {
    name: 'total hook',
    key: 'totalHookBoards',
    unit: 'boards',
    digits: 1,
    steps: ['least', 'little', 'middle', 'much', 'most'],
  },
} as const;

/** What was asked for, what number that is for this bowler and ball, and what a layout gives. */
export const wishesTable = (
  targets: readonly TargetAnswer[],
  reaction: ReactionAnswer,
  page: Page,
  whose = 'best\nlayout',
): string[] =>
  targets.length === 0
    ? []
    : table(
        [
          { head: 'asked for' },
          { head: 'step of 5', align: 'left' },
          { head: 'aimed\nat' },
          { head: whose },
          { head: 'layouts\ncan give' },
        ],
        targets.map(({ wish, step, value, attainable }) => {
          const { name, key, unit, digits, steps } = WISHES[wish];
          const show = (x: number): string => decimals(x, digits);
          return [
            `${name}, ${unit}`,
            `${steps[step - 1]} (${step})`,
            show(value),
            show(reaction[key]),
            band(attainable, show, page),
          ];
        }),
        page,
      );
