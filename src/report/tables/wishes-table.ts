import type { ReactionAnswer, TargetAnswer } from '../../records/answers/answer.js';
import { band } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { type Grid, gridLines } from '../text/table.js';

/** How each wish is worded, and the reaction number that answers it. */
export const WISHES = {
  hookStart: {
    name: 'hook starts',
    key: 'hookStartFt',
    quantity: 'lane',
    steps: ['earliest', 'early', 'middle', 'late', 'latest'],
  },
  sharpness: {
    name: 'sharpness',
    key: 'sharpnessDegPerFt',
    quantity: 'sharpness',
    steps: ['smoothest', 'smooth', 'middle', 'sharp', 'sharpest'],
  },
  totalHook: {
    name: 'total hook',
    key: 'totalHookBoards',
    quantity: 'boards',
    steps: ['least', 'little', 'middle', 'much', 'most'],
  },
} as const;

/** What was asked for, what number that is for this bowler and ball, and what a layout gives. */
export const wishesTable = (
  targets: readonly TargetAnswer[],
  reaction: ReactionAnswer,
  page: Page,
  whose = 'best\nlayout',
): string[] => gridLines(wishesGrid(targets, reaction, page, whose), page);

export const wishesGrid = (
  targets: readonly TargetAnswer[],
  reaction: ReactionAnswer,
  page: Page,
  whose: string,
): Grid => ({
  columns: [
    { head: 'asked for' },
    { head: 'step of 5', align: 'left' },
    { head: 'aimed\nat' },
    { head: whose },
    { head: 'layouts\ncan give' },
  ],
  rows: targets.map(({ wish, step, value, attainable }) => {
    const { name, key, quantity, steps } = WISHES[wish];
    const { name: unit, show } = page.units[quantity];
    return [
      `${name}, ${unit}`,
      `${steps[step - 1]} (${step})`,
      show(value),
      show(reaction[key]),
      band(attainable, show, page),
    ];
  }),
});
