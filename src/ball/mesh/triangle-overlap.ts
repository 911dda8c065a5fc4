import { add, addScaled, cross, dot, scale, sub, unit, type Vec3 } from '../../math/vec3.js';

/** Three corners, counterclockwise seen from outside, and the outward unit normal (zero without area). */
export interface Triangle {
  readonly corners: readonly [Vec3, Vec3, Vec3];
  readonly normal: Vec3;
}

/**
 * A place where two triangles cut one another, or where one covers the other facing the same way; null when
 * they are apart, only touch, or lie back to back. What is no deeper than `grain` (m) is touching.
 *
 * Each plane cuts the other triangle in a piece of the line where both planes meet; the triangles cut one
 * another along what those pieces have in common (Möller, J. Graphics Tools 2(2), 1997; from memory).
 */
export function overlapPlace(a: Triangle, b: Triangle, grain: number): Vec3 | null {
  const bFromA = heights(b, a);
  if (bFromA.every((h) => Math.abs(h) <= grain)) return flatOverlapPlace(a, b, grain);
  const aFromB = heights(a, b);
  if (!straddles(aFromB, grain) || !straddles(bFromA, grain)) return null;
  const line = unit(cross(a.normal, b.normal));
  const [aLow, aHigh] = pieceOn(line, a, aFromB);
  const [bLow, bHigh] = pieceOn(line, b, bFromA);
  const low = dot(line, aLow) > dot(line, bLow) ? aLow : bLow;
  const high = dot(line, aHigh) < dot(line, bHigh) ? aHigh : bHigh;
  return dot(line, sub(high, low)) > grain ? middle(low, high) : null;
}

type Three = readonly [number, number, number];

/** Heights of a triangle's corners above another's plane. */
const heights = ({ corners }: Triangle, { corners: [p], normal }: Triangle): Three => [
  dot(normal, sub(corners[0], p)),
  dot(normal, sub(corners[1], p)),
  dot(normal, sub(corners[2], p)),
];

const straddles = (h: Three, grain: number): boolean => Math.max(...h) > grain && Math.min(...h) < -grain;

/** Ends of what a plane cuts from a triangle with corners at heights `h` above and below it, in order along `line`. */
function pieceOn(line: Vec3, { corners }: Triangle, h: Three): readonly [Vec3, Vec3] {
  const up = h.map((x) => x >= 0);
  const lone = up[0] === up[1] ? 2 : up[0] === up[2] ? 1 : 0;
  const cut = (other: number): Vec3 =>
    addScaled(corners[lone], h[lone] / (h[lone] - h[other]), sub(corners[other], corners[lone]));
  const p = cut((lone + 1) % 3);
  const q = cut((lone + 2) % 3);
  return dot(line, p) < dot(line, q) ? [p, q] : [q, p];
}

/** The same for triangles in one plane: they are apart when one lies all beyond an edge of the other. */
function flatOverlapPlace(a: Triangle, b: Triangle, grain: number): Vec3 | null {
  if (!(dot(a.normal, b.normal) > 0)) return null;
  if (liesBeyondAnEdge(b, a, grain) || liesBeyondAnEdge(a, b, grain)) return null;
  return middle(centroid(a), centroid(b));
}

const liesBeyondAnEdge = (other: Triangle, { corners, normal }: Triangle, grain: number): boolean =>
  corners.some((p, i) => {
    const inward = unit(cross(normal, sub(corners[(i + 1) % 3], p)));
    return other.corners.every((q) => dot(inward, sub(q, p)) <= grain);
  });

const middle = (p: Vec3, q: Vec3): Vec3 => scale(0.5, add(p, q));
const centroid = ({ corners: [p, q, r] }: Triangle): Vec3 => scale(1 / 3, add(p, add(q, r)));
