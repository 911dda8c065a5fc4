import { hypot } from '../../math/hypot.js';
import { disjointSets, joinSets, setOf } from './disjoint-sets.js';

/** Corners that meet, made one point each. */
interface Welded {
  /** x, y, z of every point; those that others were welded to no longer occur in `cornerPoints`. */
  readonly points: Float32Array;
  /** The point of each corner. */
  readonly cornerPoints: Uint32Array;
  /** Points closer than this were taken for one; in the unit of the corners. */
  readonly grain: number;
}

/** Eight float32 steps at the largest coordinate: programs that round each triangle on its own differ by one or two. */
const GRAIN = 8 * 2 ** -23;

/**
 * Makes corners that lie at one place one point. STL repeats every vertex in each triangle around it; whether
 * a surface is closed is known only once they are merged again.
 *
 * First corners equal to the bit, through a hash table; then points closer than the grain. Points are taken
 * for one along chains, so detail as fine as the grain is lost.
 */
export function weld(corners: Float32Array): Welded {
  const { points, cornerPoints } = weldEqual(corners);
  let largest = 0;
  for (const x of points) largest = Math.max(largest, Math.abs(x));
  const grain = GRAIN * largest;
  const first = firstOfNear(points, grain);
  for (let i = 0; i < cornerPoints.length; i++) cornerPoints[i] = first[cornerPoints[i]];
  return { points, cornerPoints, grain };
}

function weldEqual(corners: Float32Array): Pick<Welded, 'points' | 'cornerPoints'> {
  const count = corners.length / 3;
  const points = corners.map((x) => x + 0); // −0 becomes 0
  const bits = new Int32Array(points.buffer);
  const cornerPoints = new Uint32Array(count);
  const mask = 2 ** (32 - Math.clz32(Math.max(1, 2 * count - 1))) - 1; // also of no corners a small one
  const table = new Int32Array(mask + 1).fill(-1); // open addressing, at most half full
  let used = 0;
  for (let corner = 0; corner < count; corner++) {
    const [x, y, z] = [bits[3 * corner], bits[3 * corner + 1], bits[3 * corner + 2]];
    let slot = mixed(x, y, z) & mask;
    let point = table[slot];
    while (point >= 0 && (bits[3 * point] !== x || bits[3 * point + 1] !== y || bits[3 * point + 2] !== z)) {
      slot = (slot + 1) & mask;
      point = table[slot];
    }
    if (point < 0) {
      point = used++;
      table[slot] = point;
      bits.copyWithin(3 * point, 3 * corner, 3 * corner + 3); // points gather at the front, behind the corners read
    }
    cornerPoints[corner] = point;
  }
  return { points: points.slice(0, 3 * used), cornerPoints };
}

/** A hash of three words: multiply and fold, with odd constants of no pattern. */
function mixed(x: number, y: number, z: number): number {
  let h = Math.imul(x, 0x9e3779b1) ^ Math.imul(y, 0x85ebca77) ^ Math.imul(z, 0xc2b2ae3d);
  h = Math.imul(h ^ (h >>> 15), 0x2c1b3c6d);
  return h ^ (h >>> 13);
}

/**
 * A direction, of length just below 1, along which few points of a mesh lie level, so that a sweep meets few at a time. Two points
 * differ along it by no more than they are apart.
 */
const OBLIQUE = [0.5377, 0.6219, 0.5693];

/** For every point, the one that represents its chain of points within `grain` of one another. */
function firstOfNear(points: Float32Array, grain: number): Uint32Array {
  const count = points.length / 3;
  const level = new Float64Array(count);
  for (let i = 0; i < count; i++)
    level[i] = OBLIQUE[0] * points[3 * i] + OBLIQUE[1] * points[3 * i + 1] + OBLIQUE[2] * points[3 * i + 2];
  const order = disjointSets(count).sort((i, j) => level[i] - level[j]);
  const first = disjointSets(count);
  for (let n = 0; n < count; n++) {
    const i = order[n];
    for (let m = n + 1; m < count && level[order[m]] - level[i] <= grain; m++) {
      const j = order[m];
      const apart = hypot(
        points[3 * i] - points[3 * j],
        points[3 * i + 1] - points[3 * j + 1],
        points[3 * i + 2] - points[3 * j + 2],
      );
      if (apart <= grain) joinSets(first, i, j);
    }
  }
  for (let i = 0; i < count; i++) first[i] = setOf(first, i);
  return first;
}
