import type { SimulatedLayout, TargetAnswer } from '../records/answers/answer.js';
import { NUMBER_OF_WISH, REACTION_NUMBERS } from '../records/schemas/reaction-numbers.js';
import { wishMiss } from '../search/scoring/score.js';
import type { SearchResult } from '../search/search.js';
import type { Outcome } from '../simulate/simulator.js';

type ReactionBands = SimulatedLayout['bands']['reaction'];

/** A wish missed by more than this share of the attainable range is said. */
const NOTABLE_MISS = 0.15;

/** What holds the result back: the ball, the wishes together, a constraint. */
export function limits(
  result: SearchResult,
  best: Outcome,
  targets: readonly TargetAnswer[],
  bands: ReactionBands,
): string[] {
  const lines: string[] = [];
  for (const target of targets) {
    const { low, high } = target.attainable;
    const band = bands[NUMBER_OF_WISH[target.wish]];
    const spread = band.high - band.low;
    if (high - low < spread)
      lines.push(
        `Layout moves ${target.quantity} by ${number(high - low)} ${target.unit} in all (${number(low)} to ${number(high)} ${target.unit}), less than shots, lane and core vary (${number(spread)} ${target.unit} from the 5th to the 95th percentile). Cover finish, line or another ball would move it more.`,
      );
  }
  const missed = result.targets.filter((target) => Math.abs(wishMiss(best, target)) > NOTABLE_MISS);
  if (missed.length > 0)
    lines.push(
      `No layout of this ball joins all wishes: the best found misses ${missed.map((t) => `${REACTION_NUMBERS[NUMBER_OF_WISH[t.wish]].name} by ${Math.round(100 * Math.abs(wishMiss(best, t)))} %`).join(' and ')} of the attainable range.`,
    );
  const rejected = [...result.rejected];
  const lookedAt = rejected.reduce((sum, [, count]) => sum + count, result.found.length);
  const setAside = rejected.filter(([, count]) => count > 0.25 * lookedAt);
  for (const [why, count] of setAside) lines.push(`${count} layouts were set aside because ${why}.`);
  if (!best.reaction.rollsBeforePins)
    lines.push('The ball is still sliding at the pins: it does not reach its roll phase.');
  return lines;
}

const number = (value: number): string => (Math.abs(value) < 1 ? value.toFixed(2) : value.toFixed(1));
