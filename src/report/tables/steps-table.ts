import type { StepEffect } from '../../records/answers/answer.js';
import { SHARED_IDS } from '../../records/schemas/reaction-numbers.js';
import type { Units } from '../text/display-units.js';
import { signed } from '../text/figures.js';
import type { Grid } from '../text/table.js';
import { say } from '../wording/say.js';
import { changeCells, reactionHeads } from './reaction-rows.js';

/** What one step more or less in each layout number would change. */
export const stepsGrid = (steps: readonly StepEffect[], units: Units): Grid => ({
  columns: [{ head: 'one step' }, { head: 'score\npoints' }, ...reactionHeads(SHARED_IDS, units)],
  rows: steps.map((step) => [
    say(step.change, units),
    signed(step.score, 0),
    ...changeCells(step, SHARED_IDS, units),
  ]),
});
