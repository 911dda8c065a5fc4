import { type Hole, mouthRadius } from '../../layout/hole.js';
import { asin } from '../../math/atan.js';
import { bisectBoundary } from '../../math/bisect-boundary.js';
import { arcAngle, tangentToward, walk } from '../../math/sphere.js';
import { dot, sub, type Vec3 } from '../../math/vec3.js';

/**
 * Length of surface between the edges of two holes, m; negative where they overlap, by how much.
 *
 * @param radius  the ball's, m
 */
export const wallAtMouth = (one: Hole, other: Hole, radius: number): number =>
  radius *
  (arcAngle(one.mouth_B, other.mouth_B) -
    mouthEdge(one, other.mouth_B, radius) -
    mouthEdge(other, one.mouth_B, radius));

/**
 * Arc along the ball from the middle of a hole's mouth to its edge, toward another point, rad.
 *
 * A slanted bore opens as an oval: in the direction of its slant the edge lies farther from the middle than the bore's radius.
 *
 * @param toward_B  unit vector, in B, not the mouth's own
 * @param radius    the ball's, m
 */
export function mouthEdge(hole: Hole, toward_B: Vec3, radius: number): number {
  const { mouth_B, axis_B } = hole;
  const along_B = tangentToward(mouth_B, toward_B);
  const width = mouthRadius(hole) / radius;
  const isInBore = (arc: number): boolean => {
    const way = sub(walk(mouth_B, along_B, arc), mouth_B);
    return dot(way, way) - dot(way, axis_B) ** 2 < width * width;
  };
  return bisectBoundary(isInBore, 0, WIDEST * asin(width), HALVINGS);
}

/** Greatest half length of an oval in half widths: 2 at 60° on a flat surface, and more on a ball, which curves away. */
const WIDEST = 4;

/** Enough to exhaust the digits of a double. */
const HALVINGS = 50;
