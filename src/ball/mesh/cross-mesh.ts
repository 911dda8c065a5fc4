import type { Vec3 } from '../../math/vec3.js';
import type { MeshTree } from './mesh-tree.js';

/**
 * Where the whole line a + t d meets a closed mesh: writes t of every crossing into `out`, ascending, and
 * returns how many there are. `out` grows as needed and keeps older numbers behind them.
 *
 * The count is always even, also for lines through edges and vertices: the mesh is seen along the line, where
 * every vertex is a point of the plane and the line is the origin; a triangle is crossed when the origin lies
 * on one side of its three edges. The frame is the one of Woop, Benthin & Wald, Watertight Ray/Triangle
 * Intersection, JCGT 2(1), 2013. Beyond it, the side of an edge is decided exactly, and an origin on an edge
 * counts as moved off it by an infinitely small step, the same for all triangles (Edelsbrunner & Mücke,
 * Simulation of Simplicity, ACM Trans. Graphics 9(1), 1990; from memory). So each crossing of the
 * surface counts for one of the triangles that meet there, and touching from outside for none or two.
 *
 * Allocates nothing. Loses digits when `a` lies many sizes of the mesh away.
 *
 * @param a      m, in C    @param d  any length but zero, in C
 * @param turns  if given, +1 beside each crossing where the line goes in, −1 where it comes out
 */
export function crossMesh(out: number[], tree: MeshTree, a: Vec3, d: Vec3, turns?: number[]): number {
  const { positions, triangles, boxes, skip, start, leafSize } = tree;
  // w: the axis the line leans to most. u, v: the others, right-handed. The plane: p_u − (d_u/d_w) p_w, and v alike.
  const w = longestOf(d);
  const u = (w + 1) % 3;
  const v = (w + 2) % 3;
  const su = withoutDust(d[u] / d[w]);
  const sv = withoutDust(d[v] / d[w]);
  const ou = withoutDust(a[u] - su * a[w]);
  const ov = withoutDust(a[v] - sv * a[w]);
  // Corner of a box that lies farthest one way in the plane: which end of w it has.
  const wu = su > 0 ? w + 3 : w;
  const wuFar = su > 0 ? w : w + 3;
  const wv = sv > 0 ? w + 3 : w;
  const wvFar = sv > 0 ? w : w + 3;

  let found = 0;
  let node = 0;
  while (node < skip.length) {
    const b = 6 * node;
    // Rounding keeps order: a box whose corner, computed so, is beyond the origin has all its vertices there.
    if (
      boxes[b + u] - su * boxes[b + wu] > ou ||
      boxes[b + u + 3] - su * boxes[b + wuFar] < ou ||
      boxes[b + v] - sv * boxes[b + wv] > ov ||
      boxes[b + v + 3] - sv * boxes[b + wvFar] < ov
    ) {
      node = skip[node];
      continue;
    }
    const end = 3 * (start[node] + leafSize[node]);
    for (let i = 3 * start[node]; i < end; i += 3) {
      const p = 3 * triangles[i];
      const q = 3 * triangles[i + 1];
      const r = 3 * triangles[i + 2];
      const pu = positions[p + u] - su * positions[p + w] - ou;
      const pv = positions[p + v] - sv * positions[p + w] - ov;
      const qu = positions[q + u] - su * positions[q + w] - ou;
      const qv = positions[q + v] - sv * positions[q + w] - ov;
      const ru = positions[r + u] - su * positions[r + w] - ou;
      const rv = positions[r + v] - sv * positions[r + w] - ov;
      const qr = qu * rv - qv * ru;
      const rp = ru * pv - rv * pu;
      const pq = pu * qv - pv * qu;
      const side = qr !== 0 ? Math.sign(qr) : sideAtZero(qu, qv, ru, rv);
      if (side === 0 || side !== (rp !== 0 ? Math.sign(rp) : sideAtZero(ru, rv, pu, pv))) continue;
      if (side !== (pq !== 0 ? Math.sign(pq) : sideAtZero(pu, pv, qu, qv))) continue;
      const all = qr + rp + pq;
      const pw = positions[p + w];
      // all = 0: the triangle is seen edge-on and its area is lost to rounding; any of its points will do
      const at = all === 0 ? pw : (qr * pw + rp * positions[q + w] + pq * positions[r + w]) / all;
      const t = (at - a[w]) / d[w];
      let place = found++;
      for (; place > 0 && out[place - 1] > t; place--) {
        out[place] = out[place - 1];
        if (turns) turns[place] = turns[place - 1];
      }
      out[place] = t;
      if (turns) turns[place] = side > 0 === d[w] > 0 ? -1 : 1;
    }
    node++;
  }
  return found;
}

const longestOf = ([x, y, z]: Vec3): 0 | 1 | 2 => {
  const [ax, ay, az] = [Math.abs(x), Math.abs(y), Math.abs(z)];
  return ax > ay && ax > az ? 0 : ay > az ? 1 : 2;
};

/** Numbers so small that their products would leave the range in which `roundedOff` is exact become 0. */
const withoutDust = (x: number): number => (Math.abs(x) < 1e-30 ? 0 : x);

/**
 * Side (±1) of the edge p → q on which the origin lies when p_u q_v and p_v q_u round to the same number; 0 when
 * the edge is a point.
 *
 * The rounding errors of the two products decide; where these are equal too, the origin counts as moved by
 * (ε, ε²). Edge q → p gives exactly the opposite. (The sign of a nonzero rounded difference is always right.)
 */
function sideAtZero(pu: number, pv: number, qu: number, qv: number): number {
  return Math.sign(roundedOff(pu, qv) - roundedOff(pv, qu)) || Math.sign(pv - qv) || Math.sign(qu - pu);
}

/** x y less its rounded value, exact (Dekker, Numer. Math. 18, 1971). */
function roundedOff(x: number, y: number): number {
  const xHigh = highHalf(x);
  const yHigh = highHalf(y);
  const xLow = x - xHigh;
  const yLow = y - yHigh;
  return xLow * yLow - (x * y - xHigh * yHigh - xLow * yHigh - xHigh * yLow);
}

/** The upper 26 bits of a number (Veltkamp's splitting). */
function highHalf(x: number): number {
  const c = (2 ** 27 + 1) * x;
  return c - (c - x);
}
