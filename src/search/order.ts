import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { WISHED_IDS, type WishedId } from '../records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { keyOf } from './candidates/candidates.js';
import { layoutsApart, pickDiffering } from './candidates/pick-differing.js';
import { ARRIVES_ALIKE, meanDifferences, shareAbove } from './scoring/world-statistics.js';
import type { LayoutOutcomes } from './simulate-layouts.js';
import { type Sizes, visibility } from './visibility.js';

/** The rules by which layouts are ordered beyond their scores. */
export interface OrderRules {
  /** The numbers that are wished for; all that can be where nothing is. */
  readonly ids: readonly WishedId[];
  readonly hasWish: boolean;
  /** Standard deviation of the bowler's shots. */
  readonly scatter: Sizes;
  /** Score by practice alone; the same for all where practice has no weight. */
  readonly byPractice: (layout: LayoutNumbers) => number;
  /** Least distance of pin and oil rings from the holes, in. */
  readonly clearanceIn: (row: LayoutOutcomes) => number;
}

/** Mean differences between two layouts over worlds, in the units of answers. */
export const sizeBetween = (a: LayoutOutcomes, b: LayoutOutcomes): Sizes =>
  meanDifferences(WISHED_IDS, a.worlds, b.worlds);

/** Points of mean score that count as a tie, if a person would not see the difference either. */
const SCORE_ALIKE = 1;

/** One of two tied layouts is ahead of the other if it scores higher in at least this share of worlds. */
const AHEAD = 0.55;

/** Points of score by practice alone that make no difference. */
const PRACTICE_ALIKE = 1;

/** Distance from the usual layout (`layoutsApart`) that makes no difference. */
const NEARNESS_ALIKE = 0.25;

/**
 * Orders layouts that met the same worlds.
 *
 * Layouts that reach the pins about as often as the usual middle layout come before those that do not. Within each group the mean score
 * decides, except among layouts that tie with the leader: within a point of its score, and with no difference that a person would see.
 * These are ordered by how many of the others they are ahead of in most worlds, then by practice, then by nearness to the usual layout,
 * then by clearance from holes. In most worlds the first layout is behind neither the usual one nor, among those that reach the pins
 * about as often, its runner-up. Where no reaction is wished for, all else being a matter of taste, the usual layout leads if it is within a point
 * of the best.
 *
 * @returns only layouts that differ from one another
 */
export function inOrder(
  rows: readonly LayoutOutcomes[],
  middle: LayoutOutcomes,
  rules: OrderRules,
): readonly LayoutOutcomes[] {
  const least = middle.worlds.arrives - ARRIVES_ALIKE;
  const arriving = byScore(rows.filter(({ worlds }) => worlds.arrives >= least));
  const others = byScore(rows.filter(({ worlds }) => worlds.arrives < least));
  const [leader] = arriving;
  if (!leader) return differing(others);
  const tied = arriving.filter(
    (row) =>
      leader.worlds.meanScore - row.worlds.meanScore <= SCORE_ALIKE &&
      visibility(sizeBetween(row, leader), rules.scatter, rules.ids) === 'unseen',
  );
  const order = [
    ...tied.sort((a, b) => standing(b, tied) - standing(a, tied) || tieBreak(a, b, rules)),
    ...arriving.filter((row) => !tied.includes(row)),
    ...others,
  ];
  const usual = arriving.find(({ layout }) => keyOf(layout) === keyOf(middle.layout));
  if (!rules.hasWish && usual && leader.worlds.meanScore - usual.worlds.meanScore <= SCORE_ALIKE)
    return differing([usual, ...order.filter((row) => row !== usual)]);
  return withSureFirst(order, arriving, middle);
}

const byScore = (rows: readonly LayoutOutcomes[]): LayoutOutcomes[] =>
  [...rows].sort((a, b) => b.worlds.meanScore - a.worlds.meanScore);

/** Number of other layouts that a layout is ahead of in most worlds, less the number that it is behind. */
const standing = (row: LayoutOutcomes, all: readonly LayoutOutcomes[]): number =>
  all.reduce((sum, other) => {
    const share = shareAbove(row.worlds, other.worlds);
    return sum + (share >= AHEAD ? 1 : share <= 1 - AHEAD ? -1 : 0);
  }, 0);

function tieBreak(a: LayoutOutcomes, b: LayoutOutcomes, { byPractice, clearanceIn }: OrderRules): number {
  const practice = byPractice(b.layout) - byPractice(a.layout);
  if (Math.abs(practice) > PRACTICE_ALIKE) return practice;
  const nearness = layoutsApart(a.layout, MIDDLE_LAYOUT) - layoutsApart(b.layout, MIDDLE_LAYOUT);
  if (Math.abs(nearness) > NEARNESS_ALIKE) return nearness;
  return clearanceIn(b) - clearanceIn(a) || b.worlds.meanScore - a.worlds.meanScore;
}

/** The layouts of an order, best first, that differ from one another. */
const differing = (order: readonly LayoutOutcomes[]): readonly LayoutOutcomes[] =>
  pickDiffering(order, order.length);

/**
 * The layouts of an order that differ from one another, led by the first candidate that in most worlds is behind neither the usual layout
 * nor its runner-up (a runner-up that is no candidate does not count). If preferences are circular and there is no such candidate, the
 * first one that is not behind the usual layout leads, followed by those that it is not behind.
 */
function withSureFirst(
  order: readonly LayoutOutcomes[],
  candidates: readonly LayoutOutcomes[],
  middle: LayoutOutcomes,
): readonly LayoutOutcomes[] {
  const isBehind = (a: LayoutOutcomes, b: LayoutOutcomes): boolean => shareAbove(a.worlds, b.worlds) < 0.5;
  const lists = order
    .filter((row) => candidates.includes(row) && !isBehind(row, middle))
    .map((first) => differing([first, ...order.filter((row) => row !== first)]));
  const sure = lists.find(([first, second]) => !candidates.includes(second) || !isBehind(first, second));
  if (sure) return sure;
  if (lists.length === 0) return differing(order);
  const [[first, ...rest]] = lists;
  return [
    first,
    ...rest.filter((row) => !isBehind(first, row)),
    ...rest.filter((row) => isBehind(first, row)),
  ];
}
