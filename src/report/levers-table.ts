import type { LeverEffect, RankedLayout } from '../records/answer.js';
import { decimals, points } from './figures.js';
import type { Page } from './page.js';
import { table } from './table.js';

/** What other changes than of the layout would do, below what the best layout does. */
export const leversTable = (best: RankedLayout, levers: readonly LeverEffect[], page: Page): string[] =>
  levers.length === 0
    ? []
    : table(
        [
          { head: 'with the best layout and' },
          { head: 'score' },
          { head: 'starts\nft' },
          { head: 'shape\ndeg/ft' },
          { head: 'hook\nboards' },
          { head: 'entry\ndeg' },
        ],
        [
          { change: 'nothing else changed', score: best.nominalScore, reaction: best.reaction },
          ...levers,
        ].map(({ change, score, reaction }) => [
          change,
          points(score),
          decimals(reaction.hookStartFt, 1),
          decimals(reaction.hookSharpnessDegPerFt, 2),
          decimals(reaction.totalHookBoards, 1),
          decimals(reaction.entryAngleDeg, 1),
        ]),
        page,
      );
