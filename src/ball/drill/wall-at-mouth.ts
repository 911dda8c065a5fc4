import { type Hole, mouthRadius } from '../../layout/hole.js';
import { asin } from '../../math/atan.js';
import { bisectBoundary } from '../../math/bisect-boundary.js';
import { arcAngle, tangentToward, walk } from '../../math/sphere.js';
import { dot, sub, type Vec3 } from '../../math/vec3.js';

/**
 * What is left of a ball along its surface between the edges of two holes, m; negative: by how much they overlap.
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
 * A bore that runs in at a slant opens as an oval: along its lean the edge lies farther from the middle than the bore is wide.
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

/** An oval's half length in half widths, at most: 2 at 60° on a flat surface, and a ball curves away. */
const WIDEST = 4;

/** To what a number holds. */
const HALVINGS = 50;
