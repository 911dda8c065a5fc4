import { addScaled, cross, dot, scale, unit, type Vec3 } from '../../math/vec3.js';
import type { BallFace } from '../../records/answers/parts/ball-face.js';

/** Where a ball is looked at from: unit vectors in B to the picture's right, up, and toward the eye. */
export interface View {
  readonly name: 'grip' | 'pap';
  readonly right_B: Vec3;
  readonly up_B: Vec3;
  readonly toward_B: Vec3;
}

const FINGERS: Vec3 = [0, 1, 0];
const GRIP_CENTRE: Vec3 = [0, 0, 1];

/**
 * The ball with the grip centre in the middle, fingers up.
 *
 * B is a right-hander's frame; a left-hander's ball is its mirror image, so its picture is drawn with left
 * and right exchanged.
 */
export const gripView = ({ hand }: Pick<BallFace, 'hand'>): View => lookedAtFrom('grip', GRIP_CENTRE, hand);

/** The ball with the PAP in the middle, the VAL upright. */
export const papView = ({ hand, pap }: Pick<BallFace, 'hand' | 'pap'>): View =>
  lookedAtFrom('pap', pap, hand);

function lookedAtFrom(name: View['name'], toward_B: Vec3, hand: BallFace['hand']): View {
  const up_B = unit(addScaled(FINGERS, -dot(FINGERS, toward_B), toward_B));
  const right_B = cross(up_B, toward_B);
  return { name, right_B: hand === 'right' ? right_B : scale(-1, right_B), up_B, toward_B };
}

/** Where a point of the ball is seen, in radii from the picture's middle, y up; depth is positive on the near side. */
export const project = ({ right_B, up_B, toward_B }: View, u_B: Vec3) => ({
  x: dot(u_B, right_B),
  y: dot(u_B, up_B),
  depth: dot(u_B, toward_B),
});
