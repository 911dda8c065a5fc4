import type { LeverEffect, SimulatedLayout, TargetAnswer } from '../records/answers/answer.js';
import { LEVER_KINDS } from '../records/answers/statements/ids.js';
import type { Limit, Limits } from '../records/answers/statements/limits.js';
import { NUMBER_OF_WISH } from '../records/schemas/reaction-numbers.js';
import type { SearchResult } from '../search/race.js';
import { wishMiss } from '../search/scoring/score.js';
import type { Target } from '../search/scoring/target.js';
import { reader, wishedInUnit, wishedNumber } from '../simulate/readings.js';
import type { Outcome } from '../simulate/simulator.js';

type Missed = Limits['wish-missed']['missed'][number];
type ReactionBands = SimulatedLayout['bands']['reaction'];

/** A wish is reported as missed beyond this share of the attainable range; a step of five is a quarter of it. */
const NOTABLE_MISS = 0.15;

/** A reason is reported if it rules out more than this share of the layouts looked at. */
const NOTABLE_SHARE = 0.25;

/** What limits the result: the ball, conflicting wishes, a constraint. @param levers  other changes that were tried with the best layout */
export function limits(
  result: SearchResult,
  best: Outcome,
  targets: readonly TargetAnswer[],
  bands: ReactionBands,
  levers: readonly LeverEffect[],
): Limit[] {
  const lines = targets.flatMap((target) => movesLittle(target, best, bands, levers));
  const missed = result.targets.flatMap((target) => missedWish(target, best));
  if (missed.length > 0)
    lines.push({ code: joinsSomewhere(result) ? 'wish-missed' : 'wishes-do-not-join', params: { missed } });
  const lookedAt = result.rejected.reduce((sum, { count }) => sum + count, result.found.length);
  for (const { why, count } of result.rejected)
    if (count > NOTABLE_SHARE * lookedAt) lines.push({ code: 'many-set-aside', params: { count, why } });
  if (!best.reaction.rollsBeforePins) lines.push({ code: 'slides-at-pins', params: {} });
  return lines;
}

/** How far a shot is from what a wish aims for; nothing where that is not much. */
function missedWish(target: Target, best: Outcome): Missed[] {
  const { wish, value } = target;
  const shareOfRange = Math.abs(wishMiss(best, target));
  if (shareOfRange <= NOTABLE_MISS) return [];
  return [
    { reading: NUMBER_OF_WISH[wish], by: wishedInUnit(wish, wishedNumber(wish, best) - value), shareOfRange },
  ];
}

/** Whether any layout that was rolled and may be drilled meets all wishes. */
const joinsSomewhere = ({ targets, found, attained }: SearchResult): boolean =>
  [...found, ...attained].some(({ outcome }) =>
    targets.every((target) => Math.abs(wishMiss(outcome, target)) <= NOTABLE_MISS),
  );

/** Reported for a number that the layout moves by less than shots, lane and core vary it. */
function movesLittle(
  { reading, attainable: { low, high } }: TargetAnswer,
  best: Outcome,
  bands: ReactionBands,
  levers: readonly LeverEffect[],
): Limit[] {
  const spread = bands[reading].high - bands[reading].low;
  if (high - low >= spread) return [];
  const movedMoreBy = LEVER_KINDS.map((kind) => {
    const reached = levers.filter((lever) => lever.kind === kind).map(({ reaction }) => reaction[reading]);
    return { kind, by: spanOf([reader(reading)(best), ...reached]) };
  }).filter(({ by }) => by > high - low);
  return [{ code: 'layout-moves-little', params: { reading, low, high, spread, movedMoreBy } }];
}

const spanOf = (values: readonly number[]): number => Math.max(...values) - Math.min(...values);
