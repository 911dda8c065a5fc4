import type { BallBody } from '../drill/ball-body.js';

/** Least difference in one trait: of a length, m, and of a density, as a share. */
const LEAST_LENGTH = 0.001;
const LEAST_SHARE = 0.01;

/**
 * Whether two bodies of one family differ: by more than 1 mm in the cover's thickness, or in a part's place or half
 * axes, or by more than 1 % in a density.
 */
export const differ = (a: BallBody, b: BallBody): boolean =>
  isApart(a.coverThickness, b.coverThickness) ||
  isUnlike(a.coverDensity, b.coverDensity) ||
  isUnlike(a.fillerDensity, b.fillerDensity) ||
  a.core.some(({ A, c, excess }, i) => {
    const other = b.core[i];
    return (
      isUnlike(excess, other.excess) ||
      c.some((x, j) => isApart(x, other.c[j])) ||
      A.some((row, j) => row.some((x, k) => isApart(x, other.A[j][k])))
    );
  });

const isApart = (x: number, y: number): boolean => Math.abs(x - y) > LEAST_LENGTH;
const isUnlike = (x: number, y: number): boolean => Math.abs(x / y - 1) > LEAST_SHARE;
