import type { Loop, PlanePoint } from '../../src/math/polygon.js';

/** Area that loops enclose, gaps taken off (the shoelace formula). */
export const areaOf = (loops: readonly Loop[]): number =>
  loops.reduce((sum, loop) => sum + pairsOf(loop).reduce((area, [a, b]) => area + crossOf(a, b) / 2, 0), 0);

/** First moments of that area: the integrals of u and of v over it. */
export function firstMomentsOf(loops: readonly Loop[]): PlanePoint {
  let [u, v] = [0, 0];
  for (const [a, b] of loops.flatMap(pairsOf)) {
    u += (crossOf(a, b) * (a[0] + b[0])) / 6;
    v += (crossOf(a, b) * (a[1] + b[1])) / 6;
  }
  return [u, v];
}

const pairsOf = (loop: Loop): (readonly [PlanePoint, PlanePoint])[] =>
  loop.map((place, i) => [place, loop[(i + 1) % loop.length] as PlanePoint]);

const crossOf = (a: PlanePoint, b: PlanePoint): number => a[0] * b[1] - b[0] * a[1];
