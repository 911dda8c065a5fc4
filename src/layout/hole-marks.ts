import { atan2 } from '../math/atan.js';
import { hypot } from '../math/hypot.js';
import { cos, sin } from '../math/sin-cos.js';
import { arcAngle, otherLeg } from '../math/sphere.js';
import type { Vec3 } from '../math/vec3.js';
import type { Hole } from './hole.js';

/** Where a hole is marked, rad: along the centre line from the grip centre, then across, square to it. */
export interface HoleMark {
  readonly hole: Hole;
  /** Positive: toward the fingers. */
  readonly along: number;
  /** Positive: toward the PAP's side. */
  readonly across: number;
}

/** Unit vector in B of a point `across` (rad) from the centre line, whose foot lies `along` it from the grip centre. */
export const pointBeside = (across: number, along: number): Vec3 => [
  sin(across),
  cos(across) * sin(along),
  cos(across) * cos(along),
];

/** The inverse of `pointBeside`. */
export const acrossAndAlong = (u_B: Vec3): { across: number; along: number } => ({
  across: atan2(u_B[0], hypot(u_B[1], u_B[2])),
  along: atan2(u_B[1], u_B[2]),
});

/**
 * Marks of holes to a step of the rule, so that what a hand feels keeps its size.
 *
 * Roundings do not add up: the ring finger's mark makes up across for what the middle finger's was rounded by, and each finger's
 * is as far from the thumb's mark as it should be. Spans and bridge are then off by half a step each.
 *
 * @param holes  of a right-hander, in B
 * @param step   what the rule is read to, rad
 */
export function holeMarks(holes: readonly Hole[], step: number): readonly HoleMark[] {
  const toStep = (arc: number): number => Math.round(arc / step) * step;
  const thumb = holes.find(({ name }) => name === 'thumb');
  const thumbAlong = thumb && toStep(acrossAndAlong(thumb.mouth_B).along);
  let carried = 0;
  return holes.map((hole) => {
    const { across, along } = acrossAndAlong(hole.mouth_B);
    if (hole.name !== 'middle' && hole.name !== 'ring')
      return { hole, along: toStep(along), across: toStep(across) };
    // the middle finger lies on the other side: what it is marked farther out, the ring finger is marked nearer in
    const marked = toStep(across + carried);
    carried = marked - (across + carried);
    if (!thumb || thumbAlong === undefined) return { hole, along: toStep(along), across: marked };
    const leg = otherLeg(arcAngle(thumb.mouth_B, hole.mouth_B), Math.abs(marked));
    return { hole, along: toStep(thumbAlong + (leg ?? along - thumbAlong)), across: marked };
  });
}
