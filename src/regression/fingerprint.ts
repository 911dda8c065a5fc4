import { createHash } from 'node:crypto';
import { designShots } from './design.js';
import { observe } from './observe.js';
import { TARGETS } from './targets.js';

/** What the physics engine does with a few shots: fitted numbers are stale when it does something else. */
export interface Fingerprint {
  /** Short name: changes with the sixth digit of any of the numbers. */
  readonly hash: string;
  /** Reaction numbers (SI) of the probe shots, one after the other. */
  readonly numbers: readonly number[];
}

/** Seed and lanes of the probes; far from any that is fitted on. */
export const PROBE_SEED = 1001;
const PROBE_LANES = 2;

/** Change of a probe's number that counts as another physics: this share of the regression's own error. */
const SAME = 0.1;

/** Rolls the probe shots. Some tens of milliseconds. */
export function fingerprint(): Fingerprint {
  const shots = Array.from({ length: PROBE_LANES }, (_, lane) => designShots(PROBE_SEED, lane)).flat();
  const out = new Float64Array(TARGETS.length * shots.length);
  for (const [i, shot] of shots.entries()) observe(out, TARGETS.length * i, shot);
  const numbers = Array.from(out, (value) => Number(value.toPrecision(9)));
  const digits = numbers.map((value) => value.toPrecision(6)).join(' ');
  return { hash: createHash('sha256').update(digits).digest('hex').slice(0, 12), numbers };
}

/**
 * Whether a model was fitted to this physics. A change ten times smaller than what the model errs by anyway, such as
 * another integrator's rounding, is not worth a fit.
 *
 * @param rmse  of the model by answer, SI
 */
export const isSamePhysics = (a: Fingerprint, b: Fingerprint, rmse: readonly number[]): boolean =>
  a.numbers.length === b.numbers.length &&
  a.numbers.every((value, i) => Math.abs(value - b.numbers[i]) <= SAME * rmse[i % rmse.length]);
