import { createHash } from 'node:crypto';
import { designShots } from './design.js';
import { observe } from './observe.js';
import { TARGETS } from './targets.js';

/** The physics engine's results for a few probe shots. A model fitted to other results is stale. */
export interface Fingerprint {
  /** Short name: changes with the sixth digit of any of the numbers. */
  readonly hash: string;
  /** Reaction numbers (SI) of the probe shots, one after the other. */
  readonly numbers: readonly number[];
}

/** Seed and number of lanes of the probe shots; no fit uses this seed. */
export const PROBE_SEED = 1001;
const PROBE_LANES = 2;

/** A probe's number may change by this share of the regression's own error before the physics counts as different. */
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
 * Whether a model was fitted to this physics. A change ten times smaller than the model's own error, such as
 * another integrator's rounding, is not worth a new fit.
 *
 * @param rmse  of the model by answer, SI
 */
export const isSamePhysics = (a: Fingerprint, b: Fingerprint, rmse: readonly number[]): boolean =>
  a.numbers.length === b.numbers.length &&
  a.numbers.every((value, i) => Math.abs(value - b.numbers[i]) <= SAME * rmse[i % rmse.length]);
