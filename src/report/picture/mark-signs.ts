import type { Ink, PathNode } from '../scene/scene.js';
import { circle, type Point, polygon, polyline } from '../scene/shapes.js';

/*
 * Our signs for marks. Each differs in shape, so that none needs colour: a full dot for the pin, a ring with a cross in
 * it for the PAP, a full triangle for the marker, an open square for the PSA, a plain cross for the grip centre.
 */

export type MarkKind = 'grip centre' | 'PAP' | 'pin' | 'marker' | 'PSA';

/** Half the width of a sign, pt. */
const SIZE = 4;

const stroke = (ink: Ink, width = 1.2) => ({ ink, width });

/** The sign of a mark at a point of the scene. */
export function markSign(kind: MarkKind, [x, y]: Point): PathNode[] {
  const at = (dx: number, dy: number): Point => [x + SIZE * dx, y + SIZE * dy];
  const cross = (reach: number): string =>
    polyline([at(-reach, 0), at(reach, 0)]) + polyline([at(0, -reach), at(0, reach)]);
  switch (kind) {
    case 'pin':
      return [{ kind: 'path', d: circle([x, y], 0.8 * SIZE), fill: 'pin' }];
    case 'PAP':
      return [
        { kind: 'path', d: circle([x, y], SIZE), stroke: stroke('pap'), fill: 'paper' },
        { kind: 'path', d: cross(1), stroke: stroke('pap', 0.8) },
      ];
    case 'marker':
      return [{ kind: 'path', d: polygon([at(0, -1.1), at(0.95, 0.55), at(-0.95, 0.55)]), fill: 'marker' }];
    case 'PSA':
      return [
        {
          kind: 'path',
          d: polygon([at(-0.8, -0.8), at(0.8, -0.8), at(0.8, 0.8), at(-0.8, 0.8)]),
          stroke: stroke('ink', 1),
          fill: 'paper',
        },
      ];
    case 'grip centre':
      return [{ kind: 'path', d: cross(1.4), stroke: stroke('ink', 1.4) }];
  }
}
