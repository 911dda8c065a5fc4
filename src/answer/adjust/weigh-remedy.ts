import { meanSimple } from 'simple-statistics';
import { fromKeys } from '../../base/from-keys.js';
import { IN_A_NIGHT } from '../../records/answers/parts/over-scatter.js';
import { COMPARED_IDS, type ComparedId, type WishedId } from '../../records/schemas/reaction-numbers.js';
import type { Visibility } from '../../records/schemas/visibilities.js';
import { meanDifferences } from '../../search/scoring/world-statistics.js';
import { visibility } from '../../search/visibility.js';
import { reader } from '../../simulate/readings.js';
import type { ShotScatter } from '../../simulate/shot-scatter.js';
import type { Outcome } from '../../simulate/simulator.js';

/** Wanted change of each number that is wished for, in the unit of answers. */
export type WantedChange = Readonly<Partial<Record<WishedId, number>>>;

/** Effect of a remedy, compared with the ball without it in the same worlds, and with the wanted change. */
interface Weighed {
  /** Mean changes, in the units of answers. */
  readonly effect: Readonly<Record<ComparedId, number>>;
  readonly visibility: Readonly<Record<ComparedId, Visibility>>;
  /** The part of the wanted change that is then still missing. */
  readonly left: WantedChange;
  /** How far that is, in deviations of the bowler's shots. */
  readonly miss: number;
  /** Share of worlds in which it comes nearer to the wish. */
  readonly nearer: number;
  readonly verdict: 'helps' | 'no-help' | 'unseen';
}

/** Root mean square of what is missing, each number in deviations of the bowler's shots. */
export function missOf(missing: WantedChange, scatter: ShotScatter): number {
  const squares = Object.entries(missing).map(
    ([id, by]) => (by / Math.max(scatter[id as WishedId], Number.EPSILON)) ** 2,
  );
  return Math.sqrt(meanSimple(squares));
}

/**
 * Weighs a remedy. It helps if a person could see its effect on the wished numbers, and could see that it comes nearer to the wish.
 *
 * @param outcomes  with the remedy, world by world
 * @param before    without it, in the same worlds
 */
export function weighRemedy(
  outcomes: readonly Outcome[],
  before: readonly Outcome[],
  wanted: WantedChange,
  scatter: ShotScatter,
): Weighed {
  const effect = meanDifferences(COMPARED_IDS, { outcomes }, { outcomes: before });
  const ids = Object.keys(wanted) as WishedId[];
  const leftBy = (change: Readonly<Record<WishedId, number>>): WantedChange =>
    Object.fromEntries(ids.map((id) => [id, (wanted[id] as number) - change[id]]));
  const left = leftBy(effect);
  const [now, miss] = [missOf(wanted, scatter), missOf(left, scatter)];
  const paired = outcomes.flatMap((own, world) => {
    const other = before[world];
    if (own.shot !== 'pins' || other.shot !== 'pins') return [];
    const change = Object.fromEntries(ids.map((id) => [id, reader(id)(own) - reader(id)(other)]));
    return [missOf(leftBy(change as Record<WishedId, number>), scatter) < now ? 1 : 0];
  });
  const isUnseen = visibility(effect, scatter, ids) === 'unseen';
  return {
    effect,
    visibility: fromKeys(COMPARED_IDS, (id) => visibility(effect, scatter, [id])),
    left,
    miss,
    nearer: paired.length > 0 ? meanSimple(paired) : 0,
    verdict: isUnseen ? 'unseen' : now - miss >= IN_A_NIGHT ? 'helps' : 'no-help',
  };
}
