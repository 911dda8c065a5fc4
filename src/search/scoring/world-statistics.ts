import { meanSimple, standardDeviation } from 'simple-statistics';
import { fromKeys } from '../../base/from-keys.js';
import { clamp } from '../../math/clamp.js';
import type { Band } from '../../records/answers/answer.js';
import { TWENTIETHS } from '../../records/answers/parts/twentieths.js';
import type { ComparedId } from '../../records/schemas/reaction-numbers.js';
import { type Reached, reader, wishedNumber } from '../../simulate/readings.js';
import type { Outcome } from '../../simulate/simulator.js';
import { score } from './score.js';
import type { Target } from './target.js';

/** What one layout does over all worlds but the nominal one. */
export interface ScoredOutcomes {
  readonly outcomes: readonly Outcome[];
  /** World by world; null where the ball does not reach the pins. */
  readonly scores: readonly (number | null)[];
  /** Over the worlds in which the ball reaches the pins; 0 when it does in none. */
  readonly meanScore: number;
  /** Share of worlds in which the ball reaches the pins. */
  readonly arrives: number;
}

/** Layouts that reach the pins less often than the usual middle one by more than this share of worlds come after the others. */
export const ARRIVES_ALIKE = 0.03;

/** Beside that, the share that this many worlds make is left to chance: where few were met, one lost ball decides nothing. */
const LEFT_TO_CHANCE = 1.5;

/** Whether a layout reaches the pins about as often as the usual middle one in the worlds that it has met. */
export function arrivesAlike(
  { scores, arrives }: ScoredOutcomes,
  middleArrives: readonly boolean[],
): boolean {
  const met = scores.length;
  const usual = middleArrives.slice(0, met).filter(Boolean).length / met;
  return arrives >= usual - Math.max(ARRIVES_ALIKE, LEFT_TO_CHANCE / met);
}

/** Scores what one layout does over worlds against the targets of each world. */
export function scoredOutcomes(
  outcomes: readonly Outcome[],
  aimed: readonly (readonly Target[])[],
): ScoredOutcomes {
  const scores = outcomes.map((outcome, world) =>
    outcome.shot === 'pins' ? score(outcome, aimed[world]) : null,
  );
  const arrives = outcomes.filter(({ shot }) => shot === 'pins').length / outcomes.length;
  return { outcomes, scores, meanScore: meanSimple(scoresAtPins({ scores })), arrives };
}

/** Targets shifted by what a world's luck does to the usual middle layout. */
export const shiftTargets = (
  targets: readonly Target[],
  here: Reached,
  nominal: Reached,
): readonly Target[] =>
  here.shot === 'pins' && nominal.shot === 'pins'
    ? targets.map((target) => {
        const luck = wishedNumber(target.wish, here) - wishedNumber(target.wish, nominal);
        return { ...target, value: target.value + luck };
      })
    : targets;

/** Share of worlds in which `a` scores above `b`, among those in which both reach the pins. A tie counts half; 0.5 if there is no such world. */
export function shareAbove(a: ScoredOutcomes, b: ScoredOutcomes): number {
  let wins = 0;
  let both = 0;
  for (const [i, own] of a.scores.entries()) {
    const other = b.scores[i];
    if (own === null || other === null) continue;
    wins += own > other ? 1 : own === other ? 0.5 : 0;
    both++;
  }
  return both > 0 ? wins / both : 0.5;
}

type Rolled = Pick<ScoredOutcomes, 'outcomes'>;

/** Differences, `a` less `b`, of a reaction number in each world in which both reach the pins; a single 0 when there is no such world. */
function pairedDifferences(a: Rolled, b: Rolled, pick: (outcome: Outcome) => number): number[] {
  const paired = a.outcomes.flatMap((own, i) => {
    const other = b.outcomes[i];
    return own.shot === 'pins' && other.shot === 'pins' ? [pick(own) - pick(other)] : [];
  });
  return paired.length > 0 ? paired : [0];
}

/** Their mean. */
export const meanDifference = (a: Rolled, b: Rolled, pick: (outcome: Outcome) => number): number =>
  meanSimple(pairedDifferences(a, b, pick));

/** The same of several, in the units of answers. */
export const meanDifferences = <K extends ComparedId>(
  ids: readonly K[],
  a: Rolled,
  b: Rolled,
): Record<K, number> => fromKeys(ids, (id) => meanDifference(a, b, reader(id)));

/** Quantiles of the differences of several, in the units of answers. */
export const pairedTwentieths = <K extends ComparedId>(
  ids: readonly K[],
  a: ScoredOutcomes,
  b: ScoredOutcomes,
): Record<K, number[]> => fromKeys(ids, (id) => twentiethsOf(pairedDifferences(a, b, reader(id))));

/** Standard deviations of the differences of several, in the units of answers. */
export const pairedDeviations = <K extends ComparedId>(
  ids: readonly K[],
  a: Rolled,
  b: Rolled,
): Record<K, number> => fromKeys(ids, (id) => standardDeviation(pairedDifferences(a, b, reader(id))));

/** 5th to 95th percentile. */
export function bandOf(values: readonly number[]): Band {
  const sorted = [...values].sort((a, b) => a - b);
  return { low: quantileOf(sorted, 0.05), high: quantileOf(sorted, 0.95) };
}

/**
 * The value below which a new draw lies with probability `share`, whatever the distribution: the n-th of N sorted values has an expected
 * n/(N + 1) below it, with linear interpolation in between (Hyndman & Fan, Am. Stat. 50, 361, 1996, definition 6).
 *
 * @param sorted  ascending
 */
function quantileOf(sorted: readonly number[], share: number): number {
  const place = share * (sorted.length + 1) - 1;
  const below = Math.max(0, Math.floor(place));
  const above = Math.min(sorted.length - 1, below + 1);
  const part = clamp(place - below, 0, 1);
  return sorted[below] + part * (sorted[above] - sorted[below]);
}

/** Quantiles in the middle of each twentieth, ascending. */
export function twentiethsOf(values: readonly number[]): number[] {
  const sorted = [...values].sort((a, b) => a - b);
  return Array.from({ length: TWENTIETHS }, (_, i) => quantileOf(sorted, (i + 0.5) / TWENTIETHS));
}

/** Band of a reaction number over the worlds in which the ball reached the pins; all of them when none did. */
export const bandAtPins = (rows: readonly Outcome[], pick: (outcome: Outcome) => number): Band =>
  bandOf(valuesAtPins(rows, pick));

/** A reaction number in the worlds in which the ball reached the pins; in all of them when it did in none. */
export function valuesAtPins(rows: readonly Outcome[], pick: (outcome: Outcome) => number): number[] {
  const reached = rows.filter((row) => row.shot === 'pins');
  return (reached.length > 0 ? reached : rows).map(pick);
}

/** Scores in the worlds in which the ball reached the pins; a single 0 when it did in none. */
export function scoresAtPins({ scores }: Pick<ScoredOutcomes, 'scores'>): number[] {
  const reached = scores.filter((each) => each !== null);
  return reached.length > 0 ? reached : [0];
}
