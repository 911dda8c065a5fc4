import { atan2 } from '../../math/atan.js';
import { hypot } from '../../math/hypot.js';
import { determinant, mulVec, transpose } from '../../math/mat3.js';
import type { Loop, PlanePoint } from '../../math/polygon.js';
import { cos, sin } from '../../math/sin-cos.js';
import { add, addScaled, cross, dot, scale, sub, unit, type Vec3 } from '../../math/vec3.js';
import type { Part, UnitShape } from '../solid/part.js';
import { crossShape, type Interval } from '../solid/ray-interval.js';
import { normalOf, type SectionPlane, seenOn } from './section-plane.js';

/** A solid under an affine map, of any density. */
type Placed = Pick<Part, 'shape' | 'A' | 'c'>;

/** Directions in which the outline is traced: a polygon of 240 corners leaves out 0.011 % of a circle's area. */
const DIRECTIONS = 240;

/**
 * The outline in which a plane cuts a solid, m; null where it passes by.
 *
 * Every corner lies on the solid's surface to rounding: rays from a point inside are cut in closed form in the frame of the unit
 * shape. The corners where a flat end meets its wall are included. The outline of a box has only its own corners.
 */
export function convexSection(solid: Placed, plane: SectionPlane): Loop | null {
  const { shape, A, c } = solid;
  const normal = normalOf(plane);
  const cut: UnitCut = {
    n: mulVec(transpose(A), normal),
    b: dot(normal, sub(plane.origin_C, c)),
  };
  const onPlane = (q: Vec3): PlanePoint => seenOn(plane, add(mulVec(A, q), c));
  if (shape.kind === 'box') return around(boxCorners(cut).map(onPlane));

  const inside = pointInside(shape, cut);
  if (!inside) return null;
  const d = alongMirror(cut);
  const e = unit(cross(cut.n, d));
  const angles = [
    ...Array.from({ length: DIRECTIONS }, (_, i) => -Math.PI + (2 * Math.PI * i) / DIRECTIONS),
    ...rimCorners(shape, cut)
      .map((corner) => sub(corner, inside))
      .map((way) => atan2(dot(way, e), dot(way, d))),
  ].sort((one, other) => one - other);
  const hit: Interval = { enter: 0, leave: 0 };
  const outline = angles.map((angle) => {
    const way = add(scale(cos(angle), d), scale(sin(angle), e));
    crossShape(hit, shape, ...inside, ...way);
    return onPlane(addScaled(inside, Math.max(0, hit.leave), way)); // a plane that only just touches may be missed
  });
  return determinant(A) < 0 ? outline.reverse() : outline; // a mirrored solid would be gone around the wrong way
}

/** The plane n·q = b in the frame of a unit shape. */
interface UnitCut {
  readonly n: Vec3;
  readonly b: number;
}

/** The unit vector in the plane along which a section of a shape round about z is its own mirror image. */
function alongMirror({ n }: UnitCut): Vec3 {
  const across = hypot(n[0], n[1]);
  return across > 0 ? unit([(-n[2] * n[0]) / across, (-n[2] * n[1]) / across, across]) : [1, 0, 0];
}

/** A point of the plane inside a shape that is round about z: the middle of the longest chord that is its own mirror image; null without one. */
function pointInside(shape: UnitShape, cut: UnitCut): Vec3 | null {
  const d = alongMirror(cut);
  const foot = scale(cut.b / dot(cut.n, cut.n), cut.n);
  const chord: Interval = { enter: 0, leave: 0 };
  crossShape(chord, shape, ...foot, ...d);
  return chord.leave > chord.enter ? addScaled(foot, (chord.enter + chord.leave) / 2, d) : null;
}

/** Where the plane meets the edges between the wall and the flat ends of a cylinder or a cone. */
function rimCorners(shape: UnitShape, { n, b }: UnitCut): Vec3[] {
  if (shape.kind !== 'cylinder' && shape.kind !== 'cone') return [];
  const across = hypot(n[0], n[1]);
  const [x, y] = [n[0] / across, n[1] / across];
  return [-1, 1].flatMap((z): Vec3[] => {
    const radius = shape.kind === 'cone' && z > 0 ? shape.top : 1;
    const near = (b - n[2] * z) / across;
    const aside = Math.sqrt(radius * radius - near * near);
    return aside > 0
      ? [-aside, aside].map((side): Vec3 => [near * x - side * y, near * y + side * x, z])
      : []; // NaN where the plane keeps clear of the rim or lies along it
  });
}

const SIDES = [-1, 1] as const;

/** Where the plane meets the edges of a box. */
const boxCorners = ({ n, b }: UnitCut): Vec3[] =>
  [0, 1, 2].flatMap((axis) =>
    SIDES.flatMap((one) =>
      SIDES.flatMap((other): Vec3[] => {
        const [i, j] = [(axis + 1) % 3, (axis + 2) % 3];
        const at = (b - n[i] * one - n[j] * other) / n[axis];
        if (!(Math.abs(at) <= 1)) return []; // also NaN, for an edge along the plane
        const q = [0, 0, 0];
        [q[axis], q[i], q[j]] = [at, one, other];
        return [[q[0], q[1], q[2]]];
      }),
    ),
  );

/** Corners of a convex outline in their order; null for fewer than three. */
function around(corners: readonly PlanePoint[]): Loop | null {
  if (corners.length < 3) return null;
  const middle = [0, 1].map((i) => corners.reduce((sum, corner) => sum + corner[i], 0) / corners.length);
  const angleOf = ([u, v]: PlanePoint): number => atan2(v - middle[1], u - middle[0]);
  return [...corners].sort((a, b) => angleOf(a) - angleOf(b));
}
