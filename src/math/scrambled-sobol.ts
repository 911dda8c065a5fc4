/*
 * Points that fill the unit cube evenly: any first 2^k of them put one in each of 2^k even intervals of every coordinate. Sobol's
 * sequence (Bratley & Fox, ACM Trans. Math. Softw. 14, 1988, algorithm 659) with the direction numbers of Joe & Kuo, SIAM J. Sci.
 * Comput. 30, 2635 (2008), scrambled after Owen by a hash of nested digits (Laine & Karras, Comput. Graph. Forum 30, 2011; Burley, J.
 * Comput. Graph. Tech. 9(4), 2020), so that each seed gives other points, each of them evenly distributed over the cube.
 */

/** One coordinate's primitive polynomial over GF(2), inner coefficients as bits of `a`, and its first direction numbers. */
interface Direction {
  readonly a: number;
  readonly m: readonly number[];
}

/** Coordinates 2 and on; the degree is the number of direction numbers given. */
const DIRECTIONS: readonly Direction[] = [
  { a: 0, m: [1] },
  { a: 1, m: [1, 3] },
  { a: 1, m: [1, 3, 1] },
  { a: 2, m: [1, 1, 1] },
  { a: 1, m: [1, 1, 3, 3] },
  { a: 4, m: [1, 3, 5, 13] },
  { a: 2, m: [1, 1, 5, 5, 17] },
  { a: 4, m: [1, 1, 5, 5, 5] },
  { a: 7, m: [1, 1, 7, 11, 19] },
  { a: 11, m: [1, 1, 5, 1, 1] },
  { a: 13, m: [1, 1, 1, 3, 11] },
  { a: 14, m: [1, 3, 5, 5, 31] },
  { a: 1, m: [1, 3, 3, 9, 7, 49] },
  { a: 13, m: [1, 1, 1, 15, 21, 21] },
  { a: 16, m: [1, 3, 1, 13, 27, 49] },
  { a: 19, m: [1, 1, 1, 15, 7, 5] },
  { a: 22, m: [1, 3, 1, 15, 13, 25] },
  { a: 25, m: [1, 1, 5, 5, 19, 61] },
  { a: 1, m: [1, 3, 7, 11, 23, 15, 103] },
  { a: 4, m: [1, 3, 7, 13, 13, 15, 69] },
  { a: 7, m: [1, 1, 3, 13, 7, 35, 63] },
  { a: 8, m: [1, 3, 5, 9, 1, 25, 53] },
  { a: 14, m: [1, 3, 1, 13, 9, 35, 107] },
  { a: 19, m: [1, 3, 1, 5, 27, 61, 31] },
  { a: 21, m: [1, 1, 5, 11, 19, 41, 61] },
  { a: 28, m: [1, 3, 5, 3, 3, 13, 69] },
  { a: 31, m: [1, 1, 7, 13, 1, 19, 1] },
  { a: 32, m: [1, 3, 7, 5, 13, 19, 59] },
  { a: 37, m: [1, 1, 3, 9, 25, 29, 41] },
  { a: 41, m: [1, 3, 5, 13, 23, 1, 55] },
  { a: 42, m: [1, 3, 7, 3, 13, 59, 17] },
  { a: 50, m: [1, 3, 1, 3, 5, 53, 69] },
  { a: 55, m: [1, 1, 5, 5, 23, 33, 13] },
  { a: 56, m: [1, 1, 7, 7, 1, 61, 123] },
  { a: 59, m: [1, 1, 7, 9, 13, 61, 49] },
  { a: 62, m: [1, 3, 3, 5, 3, 55, 33] },
  { a: 14, m: [1, 3, 1, 15, 31, 13, 49, 245] },
  { a: 21, m: [1, 3, 5, 15, 31, 59, 63, 97] },
  { a: 22, m: [1, 3, 1, 11, 11, 11, 77, 249] },
  { a: 38, m: [1, 3, 1, 11, 27, 43, 71, 9] },
  { a: 47, m: [1, 1, 7, 15, 21, 11, 81, 45] },
  { a: 49, m: [1, 3, 7, 3, 25, 31, 65, 79] },
  { a: 50, m: [1, 3, 1, 1, 19, 11, 3, 205] },
  { a: 52, m: [1, 1, 5, 9, 19, 21, 29, 157] },
  { a: 56, m: [1, 3, 7, 11, 1, 33, 89, 185] },
  { a: 67, m: [1, 3, 3, 3, 15, 9, 79, 71] },
  { a: 70, m: [1, 3, 7, 11, 15, 39, 119, 27] },
];

/** Number of coordinates that have direction numbers. */
export const MOST_COORDINATES = DIRECTIONS.length + 1;

const BITS = 32;

/** Each coordinate's direction numbers as fractions of 2^32. */
const COLUMNS: readonly Uint32Array[] = [
  Uint32Array.from({ length: BITS }, (_, k) => 2 ** (BITS - 1 - k)), // van der Corput
  ...DIRECTIONS.map(columnsOf),
];

/** m_k = 2 a_1 m_(k−1) ⊕ … ⊕ 2^(s−1) a_(s−1) m_(k−s+1) ⊕ 2^s m_(k−s) ⊕ m_(k−s), each shifted to its digit. */
function columnsOf({ a, m }: Direction): Uint32Array {
  const degree = m.length;
  const v = new Uint32Array(BITS);
  for (let k = 0; k < BITS; k++) {
    if (k < degree) v[k] = m[k] * 2 ** (BITS - 1 - k);
    else {
      v[k] = v[k - degree] ^ (v[k - degree] >>> degree);
      for (let i = 1; i < degree; i++) if ((a >>> (degree - 1 - i)) & 1) v[k] ^= v[k - i];
    }
  }
  return v;
}

/**
 * One coordinate of one point of the sequence, as 32 bits, unscrambled.
 *
 * @param n  which point, from 0
 */
export function sobolBits(n: number, coordinate: number): number {
  const v = COLUMNS[coordinate];
  let bits = 0;
  for (let k = 0, rest = n; rest !== 0; k++, rest >>>= 1) if (rest & 1) bits ^= v[k];
  return bits >>> 0;
}

/**
 * One coordinate of one point of the scrambled sequence, inside (0, 1).
 *
 * @param n     which point, from 0, below 2^32
 * @param coordinate  below `MOST_COORDINATES`
 * @param seed  any integer; coordinates are scrambled independently
 */
export const scrambledSobol = (n: number, coordinate: number, seed: number): number =>
  (nestedScramble(sobolBits(n, coordinate), hash(seed, coordinate)) + 0.5) / 2 ** BITS;

/** Flips each binary digit, or not, by all digits before it, as a random tree would. */
function nestedScramble(bits: number, seed: number): number {
  let x = reversed(bits);
  // multiplying by an even number lets digits act on higher ones only, which in reversed order are those that follow
  x = (x + seed) | 0;
  x ^= Math.imul(x, 0x6c50b47c);
  x ^= Math.imul(x, 0xb82f1e52);
  x ^= Math.imul(x, 0xc7afe638);
  x ^= Math.imul(x, 0x8d22f6e6);
  return reversed(x);
}

/** The 32 binary digits in opposite order. */
function reversed(bits: number): number {
  let x = bits;
  x = ((x >>> 1) & 0x55555555) | ((x & 0x55555555) << 1);
  x = ((x >>> 2) & 0x33333333) | ((x & 0x33333333) << 2);
  x = ((x >>> 4) & 0x0f0f0f0f) | ((x & 0x0f0f0f0f) << 4);
  x = ((x >>> 8) & 0x00ff00ff) | ((x & 0x00ff00ff) << 8);
  return ((x >>> 16) | (x << 16)) >>> 0;
}

/** 32 well-mixed bits of two integers (the finaliser of MurmurHash3, Appleby, public domain; from memory). */
function hash(seed: number, coordinate: number): number {
  let x = (seed ^ Math.imul(coordinate + 1, 0x9e3779b1)) | 0;
  x = Math.imul(x ^ (x >>> 16), 0x85ebca6b);
  x = Math.imul(x ^ (x >>> 13), 0xc2b2ae35);
  return (x ^ (x >>> 16)) >>> 0;
}
