import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { WISHED_IDS, type WishedId } from '../records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { layoutsApart, pickDiffering } from './candidates/pick-differing.js';
import { ARRIVES_ALIKE, meanDifferences, shareAbove } from './scoring/world-statistics.js';
import type { LayoutOutcomes } from './simulate-layouts.js';
import { type Sizes, visibility } from './visibility.js';

/** What decides the order of layouts besides their scores. */
export interface OrderRules {
  /** The numbers that are wished for. */
  readonly ids: readonly WishedId[];
  /** Of the bowler's shots. */
  readonly scatter: Sizes;
  /** Score by practice alone; the same for all where practice has no weight. */
  readonly byPractice: (layout: LayoutNumbers) => number;
  /** How far the marks and the oil rings keep clear, in. */
  readonly clearanceIn: (row: LayoutOutcomes) => number;
}

/** Mean differences between two layouts over worlds, in the units of answers. */
export const sizeBetween = (a: LayoutOutcomes, b: LayoutOutcomes): Sizes =>
  meanDifferences(WISHED_IDS, a.worlds, b.worlds);

/** Points of mean score that need not be told apart, where a person would not see the difference either. */
const SCORE_ALIKE = 1;

/** From this share of worlds on one of two layouts that tie is ahead of the other. */
const AHEAD = 0.55;

/** Points of score by practice alone that make no difference. */
const PRACTICE_ALIKE = 1;

/** Distance from the usual layout (`layoutsApart`) that makes no difference. */
const NEARNESS_ALIKE = 0.25;

/**
 * Orders layouts that met the same worlds.
 *
 * Those that reach the pins about as often as the usual middle layout come before those that do not. Then the mean score decides,
 * but for layouts that tie with the leader, within a point of its score and with no difference that a person would see: among them first what is ahead of most of
 * the others in most worlds, then what is good under practice, then what lies nearest to the usual, then what keeps
 * farther from holes. The first is behind neither the usual nor, of those that reach the pins about
 * as often, its runner-up in most worlds.
 *
 * @returns those that differ from one another
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
  return withSureFirst(order, arriving, middle);
}

const byScore = (rows: readonly LayoutOutcomes[]): LayoutOutcomes[] =>
  [...rows].sort((a, b) => b.worlds.meanScore - a.worlds.meanScore);

/** How many of the others a layout is ahead of in most worlds, less those it is behind. */
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

/** Of an order, best first, those that differ from one another. */
const differing = (order: readonly LayoutOutcomes[]): readonly LayoutOutcomes[] =>
  pickDiffering(order, order.length);

/**
 * Of an order those that differ from one another, with the first candidate in front that is behind neither the usual nor its runner-up
 * in most worlds, unless that is no candidate. Where worlds go round in a circle and there is none: one that is not behind the usual,
 * followed by what it is not behind.
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
