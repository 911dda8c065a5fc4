import { FEATURES } from '../../src/regression/features.js';
import { TARGETS } from '../../src/regression/targets.js';
import { ROW } from './shot-rows.js';

/** Rows of the data run, taken apart: one row of features, and one of answers, a shot. */
export interface Rows {
  readonly count: number;
  readonly features: Float32Array;
  readonly answers: Float32Array;
}

/** Every tenth lane of the design is held out whole: nothing about it is seen in fitting. */
const HELD_OUT_EVERY = 10;

export const isHeldOut = (lane: number): boolean => lane % HELD_OUT_EVERY === HELD_OUT_EVERY - 1;

/** Takes the rows whose lane passes. */
export function takeRows(rows: Float32Array, passes: (lane: number) => boolean): Rows {
  const kept: number[] = [];
  for (let at = 0; at < rows.length; at += ROW) if (passes(rows[at + ROW - 1])) kept.push(at);
  const part = (from: number, width: number): Float32Array => {
    const out = new Float32Array(width * kept.length);
    kept.forEach((at, i) => {
      out.set(rows.subarray(at + from, at + from + width), width * i);
    });
    return out;
  };
  return {
    count: kept.length,
    features: part(0, FEATURES.length),
    answers: part(FEATURES.length, TARGETS.length),
  };
}
