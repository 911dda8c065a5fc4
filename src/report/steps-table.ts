import type { StepEffect } from '../records/answer.js';
import { signed } from './figures.js';
import type { Page } from './page.js';
import { table } from './table.js';

/** What one step more or less in each layout number would change. */
export const stepsTable = (steps: readonly StepEffect[], page: Page): string[] =>
  steps.length === 0
    ? []
    : table(
        [
          { head: 'one step' },
          { head: 'score\npoints' },
          { head: 'starts\nft' },
          { head: 'shape\ndeg/ft' },
          { head: 'hook\nboards' },
          { head: 'flare\nin' },
        ],
        steps.map((step) => [
          step.change,
          signed(step.score, 0),
          signed(step.hookStartFt, 1),
          signed(step.hookSharpnessDegPerFt, 2),
          signed(step.totalHookBoards, 1),
          signed(step.flareIn, 1),
        ]),
        page,
      );
