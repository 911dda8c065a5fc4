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

/** Unit vector in B of a point `across` (rad) from the centre line; its foot on that line lies `along` (rad) from the grip centre. */
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
 * Marks of holes, rounded to steps of the ruler so that spans and bridge keep their size.
 *
 * Roundings do not add up: across, the ring finger's mark makes up for the rounding of the middle finger's, and along, each finger's
 * mark is placed by its distance from the rounded thumb mark. Spans and bridge are then off by at most half a step each.
 *
 * @param holes  of a right-hander, in B
 * @param step   smallest division that the ruler is read to, rad
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
    // the fingers lie on opposite sides, and `across` has a sign: if one is marked too far to the PAP's side, so must the other be
    const marked = toStep(across + carried);
    carried = marked - (across + carried);
    if (!thumb || thumbAlong === undefined) return { hole, along: toStep(along), across: marked };
    const leg = otherLeg(arcAngle(thumb.mouth_B, hole.mouth_B), Math.abs(marked));
    return { hole, along: toStep(thumbAlong + (leg ?? along - thumbAlong)), across: marked };
  });
}
