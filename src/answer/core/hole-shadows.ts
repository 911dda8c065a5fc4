import { type BoreSolid, depthAt } from '../../ball/drill/bore-solid.js';
import { boresOf } from '../../ball/drill/excavation.js';
import { type SectionPlane, seenOn } from '../../ball/section/section-plane.js';
import { placeLayout } from '../../layout/placement.js';
import { mulVec, transpose } from '../../math/mat3.js';
import { hullOf, type Loop, type PlanePoint } from '../../math/polygon.js';
import { cos, sin } from '../../math/sin-cos.js';
import { add, addScaled, scale, type Vec3 } from '../../math/vec3.js';
import { ballProblem } from '../../prepare/ball-problem.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { OwnCoreBall } from '../../records/schemas/ball.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';

/** A hole, with the bore of its insert or slug, as it is seen through a ball that lets light through. */
export interface HoleShadow {
  readonly hole: string;
  /** Its outline seen square to a plane, m. */
  readonly outlineOn: (plane: SectionPlane) => Loop;
}

/** Points around a bore's rim and tip. */
const AROUND = 48;

/**
 * The holes of a bowler's grip, drilled with a layout, as shadows in the frame C of the core.
 *
 * A left-hander's ball is computed as its mirror image; the core is shown as its file has it, so the holes are mirrored back.
 *
 * @throws {Refusal} as `ballProblem` does
 */
export function holeShadows(ball: OwnCoreBall, bowler: Bowler, layout: LayoutNumbers): HoleShadow[] {
  const { holes, pap_B, pinToMarker, published } = ballProblem(ball, bowler, 'moment');
  const { radius } = published;
  const R_CB = transpose(placeLayout(toLayout(layout, radius), pap_B, pinToMarker).R_BC);
  const sense = bowler.hand === 'left' ? -1 : 1;
  const toCore = (p_B: Vec3): Vec3 => {
    const [x, y, z] = mulVec(R_CB, p_B);
    return [x, sense * y, z];
  };
  return holes.map((hole) => {
    const points_C = boresOf(hole, radius).flatMap(boreRims).map(toCore);
    const outlineOn = (plane: SectionPlane): Loop =>
      hullOf(points_C.map((p_C): PlanePoint => seenOn(plane, p_C)));
    return { hole: hole.name, outlineOn };
  });
}

/** Points around a bore's mouth, around the end of its wall, and the deepest of its tip, m. */
function boreRims(bore: BoreSolid): Vec3[] {
  const { mouth, d, u, v, radius, depth } = bore;
  const rim = Array.from({ length: AROUND }, (_, i): Vec3 => {
    const angle = (2 * Math.PI * i) / AROUND;
    return add(mouth, add(scale(radius * cos(angle), u), scale(radius * sin(angle), v)));
  });
  return [...rim, ...rim.map((p) => addScaled(p, depth, d)), addScaled(mouth, depthAt(bore, 0), d)];
}
