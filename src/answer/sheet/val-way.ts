import { DEGREE, from } from '../../base/units.js';
import { upTheVal } from '../../layout/placement.js';
import { cos, sin } from '../../math/sin-cos.js';
import { clockwiseTurn, tangentToward, walk } from '../../math/sphere.js';
import { addScaled, cross, rotateAbout, scale, type Vec3 } from '../../math/vec3.js';
import type { ByTurn, MarkWays, PlacedMark } from './mark-ways.js';

/** The end of the VAL that points up, as steps name it. */
const UPPER_VAL = 'upper end of the VAL';

/** How far up the VAL the point lies that shows its direction, rad. */
const BEYOND = 0.5;

/** The VAL as a protractor on the PAP finds it. */
interface ValWay extends ByTurn {
  /** Unit tangent up the VAL where the way ends. */
  readonly up_B: Vec3;
}

/**
 * The VAL by the layout's own angle, from the way to a mark, and along it to where it meets the midline.
 *
 * @param seenFrom  what the angle is taken from
 * @param foot_B    where the VAL meets the midline
 * @param up        arc from there up to the PAP, rad
 */
export function valWay(
  { byTurn, onTape, arcOf, offIn }: MarkWays,
  pap: PlacedMark,
  seenFrom: PlacedMark,
  foot_B: Vec3,
  up: number,
): ValWay {
  const beyond_B = walk(pap.true_B, upTheVal(pap.true_B), BEYOND);
  const { way } = byTurn(beyond_B, pap, seenFrom);
  const turn = Math.sign(clockwiseTurn(pap.true_B, seenFrom.true_B, beyond_B)) * from(way.deg, DEGREE);
  const upAtPap = rotateAbout(tangentToward(pap.placed_B, seenFrom.placed_B), pap.placed_B, -turn);
  const inches = onTape(Math.abs(up));
  const back = Math.sign(up) * arcOf(inches);
  const placed_B = walk(pap.placed_B, upAtPap, -back);
  return {
    way: { ...way, inches, way: up > 0 ? 'down' : 'up', offIn: offIn(placed_B, foot_B) },
    placed_B,
    up_B: addScaled(scale(cos(back), upAtPap), sin(back), pap.placed_B),
  };
}

/** Square to the VAL, away from the PAP's side of a right-hander's ball, by an arc. */
export function squareToVal(
  { onTape, arcOf, offIn }: MarkWays,
  start: PlacedMark,
  up_B: Vec3,
  true_B: Vec3,
  arc: number,
): ByTurn {
  const inches = onTape(arc);
  const placed_B = walk(start.placed_B, cross(start.placed_B, up_B), arcOf(inches));
  return {
    way: {
      kind: 'turn',
      at: start.name,
      from: UPPER_VAL,
      deg: 90,
      inches,
      way: 'on',
      hold: { away: UPPER_VAL, toward: start.name },
      side: 'left',
      offIn: offIn(placed_B, true_B),
    },
    placed_B,
  };
}
