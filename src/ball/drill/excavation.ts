import type { Hole, Sleeve } from '../../layout/hole.js';
import { hypot } from '../../math/hypot.js';
import { dot, type Vec3 } from '../../math/vec3.js';
import { addMoments, type Moments, NO_MOMENTS } from '../mass/mass-properties.js';
import { type Stretch, uniformMoments } from '../solid/stretch.js';
import { type BoreSolid, boreSolid, depthAt } from './bore-solid.js';
import { boreStretches } from './bore-stretches.js';
import type { RayRule } from './ray-rule.js';

/** What drilling a grip does to any ball of one radius, whatever its core and however that is turned. */
export interface Excavation {
  /** Where matter of the ball is taken out, in B; each point once, even where bores meet. */
  readonly stretches: readonly Stretch[];
  /** Slugs and inserts put back, less the holes through them; about Bo, in B. */
  readonly putBack: Moments;
}

/**
 * Rays that represent a set of holes.
 *
 * Each bore is filled with rays parallel to its axis. What an earlier bore has removed is left out, so that
 * bores that meet inside the ball (two fingers with a 1/4 in bridge do) count their shared matter once.
 * Likewise, sleeves that meet are put back once, and no sleeve blocks another finger's hole.
 *
 * @param holes   in drilling order, in B; the order changes only which of two bores a shared ray belongs to
 * @param radius  the ball's, m
 */
export function excavate(holes: readonly Hole[], radius: number, rule: RayRule): Excavation {
  const bores = holes.flatMap((hole) => boresOf(hole, radius));
  return {
    stretches: bores.flatMap((bore, i) => boreStretches(bore, radius, bores.slice(0, i), rule)),
    putBack: sleevesLeft(holes, radius, rule),
  };
}

/** The bores of a hole: its sleeve's, if any, and the open one, which may reach deeper into the ball. */
export const boresOf = (hole: Hole, ballRadius: number): readonly BoreSolid[] => [
  ...(hole.sleeve ? [boreSolid(hole, hole.sleeve.bore, ballRadius)] : []),
  boreSolid(hole, hole.open, ballRadius),
];

/** Slugs and inserts, each less those before it and less every open hole, about Bo, in B. */
function sleevesLeft(holes: readonly Hole[], ballRadius: number, rule: RayRule): Moments {
  const sleeves: BoreSolid[] = [];
  const opens = holes.map((hole) => boreSolid(hole, hole.open, ballRadius));
  let left = NO_MOMENTS;
  holes.forEach((hole, i) => {
    if (!hole.sleeve) return;
    const sleeve = sleeveSolid(hole, hole.sleeve, ballRadius);
    const elsewhere = [...sleeves, ...opens.filter((_, other) => other !== i)];
    // The hole through the sleeve has rays of its own, since those of the sleeve would run along its wall now and then.
    const through = boreStretches(opens[i], ballRadius, elsewhere, rule).map((x) => ({
      ...x,
      e: Math.min(x.e, depthAt(sleeve, axisDistance(opens[i], x.a))),
    }));
    const solid = boreStretches(sleeve, ballRadius, elsewhere, rule);
    const { density } = hole.sleeve;
    left = addMoments(left, addMoments(uniformMoments(solid, density), uniformMoments(through, density), -1));
    sleeves.push(sleeve);
  });
  return left;
}

/** A slug or insert as if solid. If it is as deep as its bore it fills the tip too; otherwise it ends flat. */
function sleeveSolid(hole: Hole, { bore, height }: Sleeve, ballRadius: number): BoreSolid {
  const depth = Math.min(height, bore.depth);
  return boreSolid(hole, { ...bore, depth }, ballRadius, height >= bore.depth ? hole.tip : 'flat');
}

const axisDistance = (bore: BoreSolid, a: Vec3): number => {
  const rel: Vec3 = [a[0] - bore.mouth[0], a[1] - bore.mouth[1], a[2] - bore.mouth[2]];
  return hypot(dot(rel, bore.u), dot(rel, bore.v));
};
