import { quantile } from 'simple-statistics';
import type { ModelCard } from '../../src/regression/card.js';
import { FEATURES } from '../../src/regression/features.js';
import { openModel } from '../../src/regression/reaction-model.js';
import { TARGETS } from '../../src/regression/targets.js';
import { type Errors, errorsOf } from './errors.js';
import type { Rows } from './rows.js';

/** How a fitted file answers for shots that it was not fitted on. */
interface Appraisal {
  /** By answer, in the units people read. */
  readonly errors: Errors[];
  readonly regions: ModelCard['regions'];
}

/** @param basis  numbers its answers are linear in */
export async function appraise(heldOut: Rows, file: Uint8Array, basis: number): Promise<Appraisal> {
  const model = await openModel(file, basis, TARGETS.length);
  const answered = await model.answer({ dims: [heldOut.count, FEATURES.length], values: heldOut.features });
  await model.close();
  return { errors: errorsBetween(answered, heldOut.answers), regions: regionsOf(heldOut, answered) };
}

/** Errors by answer; both row by row, SI. */
export const errorsBetween = (answered: Float32Array, observed: Float32Array): Errors[] =>
  TARGETS.map(({ si }, j) => errorsOf(columnOf(answered, j, si), columnOf(observed, j, si)));

/** One answer of all rows, in a unit. */
const columnOf = (rows: Float32Array, j: number, unit: number): number[] =>
  Array.from({ length: rows.length / TARGETS.length }, (_, i) => rows[TARGETS.length * i + j] / unit);

/** Inputs; errors are given for the thirds of each. */
const REGIONS = [
  'speed',
  'surface speed Rω',
  'axis tilt',
  'axis rotation',
  'friction dry',
  'carried share',
  'most film met',
  'plain hook',
  'oil met again',
];

function regionsOf(heldOut: Rows, answered: Float32Array): ModelCard['regions'] {
  return REGIONS.flatMap((input) => {
    const j = FEATURES.findIndex(({ name }) => name === input);
    const values = Array.from({ length: heldOut.count }, (_, i) => heldOut.features[FEATURES.length * i + j]);
    const cuts = [0, 1 / 3, 2 / 3, 1].map((p) => quantile(values, p));
    return [0, 1, 2].map((third) => {
      const inside = (i: number): boolean => values[i] >= cuts[third] && values[i] <= cuts[third + 1];
      const pick = (rows: Float32Array, k: number, si: number): number[] =>
        columnOf(rows, k, si).filter((_, i) => inside(i));
      return {
        input,
        from: cuts[third],
        to: cuts[third + 1],
        rmse: TARGETS.map(({ si }, k) => errorsOf(pick(answered, k, si), pick(heldOut.answers, k, si)).rmse),
      };
    });
  });
}
