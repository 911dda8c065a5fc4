import { DEGREE, from } from '../../base/units.js';
import { type Reached, wishedNumber } from '../../simulate/readings.js';
import type { Target } from './target.js';

/** Entry angles that carry best (secondary, USBC pin-carry work: 4–6° at board 17–18). */
export const BEST_ENTRY_DEG = { least: 4, most: 6 };
const BEST_ENTRY = [from(BEST_ENTRY_DEG.least, DEGREE), from(BEST_ENTRY_DEG.most, DEGREE)] as const;

/** Weight of the entry angle relative to one wish: it decides between layouts that meet the wishes equally well. */
const ENTRY_WEIGHT = 0.1;

/** An entry angle this far outside the best ones counts as a full miss. */
const ENTRY_SPAN = from(6, DEGREE);

/**
 * How near an outcome comes to the wanted reaction, 0 to 100.
 *
 * 100 × (1 − root of the weighted mean of squared misses). A wish's miss is its distance from the target
 * over the attainable range; at steps 1 and 5 more than was asked for is no miss. A shot that does not
 * reach the pins scores 0.
 */
export function score(outcome: Reached, targets: readonly Target[]): number {
  if (outcome.shot !== 'pins') return 0;
  let sum = ENTRY_WEIGHT * entryMiss(outcome.reaction.entryAngle) ** 2;
  let weight = ENTRY_WEIGHT;
  for (const target of targets) {
    sum += wishMiss(outcome, target) ** 2;
    weight += 1;
  }
  return 100 * Math.max(0, 1 - Math.sqrt(sum / weight));
}

/** Signed miss of a wish over the attainable range; 0 when an extreme wish is outdone. */
export function wishMiss(outcome: Reached, { wish, step, value, low, high }: Target): number {
  const range = high - low;
  if (!(range > 0)) return 0;
  const off = (wishedNumber(wish, outcome) - value) / range;
  if (step === 1) return Math.max(0, off);
  if (step === 5) return Math.min(0, off);
  return off;
}

function entryMiss(angle: number): number {
  const [low, high] = BEST_ENTRY;
  const outside = angle < low ? low - angle : angle > high ? angle - high : 0;
  return Math.min(1, outside / ENTRY_SPAN);
}
