import { from, INCH } from '../../base/units.js';
import { type Hole, mouthRadius } from '../../layout/hole.js';
import { asin } from '../../math/atan.js';
import { sin } from '../../math/sin-cos.js';
import { addScaled, dot, norm, scale, type Vec3 } from '../../math/vec3.js';
import { entryOf, unitAcross } from './bore-solid.js';
import { boresOf } from './excavation.js';
import { wallAtMouth } from './wall-at-mouth.js';

/** How far behind its edge a lip is measured, m: what is nearer chips off any hole, and is bevelled (common practice, no source). */
const LOOKED_AT = from(1 / 4, INCH);

/** The ball between a bore that runs in at a slant and the surface over it, m. */
interface BoreLip {
  readonly hole: Hole;
  /**
   * Its thickness a quarter of an inch behind its edge, or earlier where the bore ends or meets the hole that it vents; or its
   * width along the surface to that hole, where that is less. At 0 and below there is no lip.
   */
  readonly least: number;
}

/**
 * The lip of every hole.
 *
 * Along the wall nearest the surface a lip grows thicker from its edge inward. At an arc α behind the edge its thickness is
 * R (1 − sin γ / sin(α + γ)), from the triangle of edge, wall and centre; γ is the angle at the edge between that wall and the way
 * straight in.
 *
 * @param radius  the ball's, m
 */
export const boreLips = (holes: readonly Hole[], radius: number): readonly BoreLip[] =>
  holes.map((hole) => {
    const vented = holes.filter(({ name }) => name === hole.into);
    const widths = vented.map((other) => wallAtMouth(hole, other, radius));
    return { hole, least: Math.min(thicknessOf(hole, vented, radius), ...widths) };
  });

function thicknessOf(hole: Hole, vented: readonly Hole[], radius: number): number {
  const d = hole.axis_B;
  const wall = addScaled(scale(radius, hole.mouth_B), mouthRadius(hole), outwardFrom(d, hole.mouth_B));
  const middle = -dot(wall, d); // along the wall, where it is nearest to the centre
  const nearest = norm(addScaled(wall, middle, d));
  const edge = middle - Math.sqrt(Math.max(0, radius ** 2 - nearest ** 2));
  const met = vented.flatMap((other) => boresOf(other, radius));
  const end = Math.min(depthOf(hole), ...met.map((bore) => entryOf(bore, wall, d)));
  if (nearest >= radius || end <= edge) return 0;
  const gamma = asin(nearest / radius);
  const alpha = LOOKED_AT / radius;
  const behind = (radius * sin(alpha)) / sin(alpha + gamma);
  return radius - norm(addScaled(wall, Math.min(edge + behind, end), d));
}

/** Unit vector across an axis that leads away from the ball; any vector across where the axis runs straight in. */
function outwardFrom(d: Vec3, mouth: Vec3): Vec3 {
  const out = addScaled(mouth, -dot(mouth, d), d);
  const length = norm(out);
  return length > 1e-9 ? scale(1 / length, out) : unitAcross(d);
}

/** Depth of a hole's widest bore, m. */
const depthOf = ({ open, sleeve }: Hole): number =>
  sleeve && sleeve.bore.radius > open.radius ? sleeve.bore.depth : open.depth;
