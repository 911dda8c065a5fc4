import { nearPieces } from '../../math/curves.js';
import type { Vec3 } from '../../math/vec3.js';
import type { Ink, PathNode, Stroke } from '../scene/scene.js';
import { type Point, polygon, polyline } from '../scene/shapes.js';
import { project, type View } from './view.js';

/** Draws what lies on the near side of a ball that is looked at from somewhere. */
export interface Pen {
  readonly middle: Point;
  readonly radius: number;
  /** Positive on the near side. */
  readonly depth: (u_B: Vec3) => number;
  readonly place: (u_B: Vec3) => Point;
  /** A line along the near pieces of a curve. */
  readonly curve: (points: readonly Vec3[], stroke: Stroke) => PathNode;
  /** The near pieces of a closed curve, filled. */
  readonly area: (points: readonly Vec3[], fill: Ink, stroke: Stroke) => PathNode;
}

/**
 * A pen for one picture: every place is the orthographic projection of its unit vector.
 *
 * @param middle  of the ball in the scene, pt
 * @param radius  of the ball in the scene, pt
 */
export function penFor(view: View, middle: Point, radius: number): Pen {
  const depth = (u_B: Vec3): number => project(view, u_B).depth;
  const place = (u_B: Vec3): Point => {
    const { x, y } = project(view, u_B);
    return [middle[0] + radius * x, middle[1] - radius * y];
  };
  const pieces = (points: readonly Vec3[], shape: (piece: readonly Point[]) => string): string =>
    nearPieces(points, depth)
      .map((piece) => shape(piece.map(place)))
      .join('');
  return {
    middle,
    radius,
    depth,
    place,
    curve: (points, stroke) => ({ kind: 'path', d: pieces(points, polyline), stroke }),
    area: (points, fill, stroke) => ({ kind: 'path', d: pieces(points, polygon), fill, stroke }),
  };
}
