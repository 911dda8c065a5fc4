import { type PublishedNumbers, standsUnderCg } from '../ball/published.js';
import type { PublishedBall } from '../records/ball.js';
import { familiesOf } from './published-numbers.js';

/** What was assumed of a core that is fitted to a ball's published numbers. */
export const coreAssumptions = (ball: PublishedBall, published: PublishedNumbers): string[] => [
  ...shapeAssumption(ball),
  ...(standsUnderCg(published) && published.pinToCg > 0 ? [UNDER_CG] : []),
  'The core is not known: many that have the published numbers stand for it. Drilled numbers are their medians, and the bands hold 9 of 10 of them.',
];

function shapeAssumption(ball: PublishedBall): string[] {
  if (ball.coreShape) return [];
  return familiesOf(ball).length === 1
    ? ['The core is taken as asymmetric, since a mass bias is published.']
    : [
        'Nobody said whether the core is a plain body of revolution or has side features, and its numbers do not tell: half the cores tried are plain, half lobed. Their drilled numbers can differ by 0.007 in; set coreShape to "plain" or "lobed" to narrow the bands.',
      ];
}

const UNDER_CG =
  'With so little differential the low-RG axis means nothing: the cores stand under the CG mark, not under the pin.';
