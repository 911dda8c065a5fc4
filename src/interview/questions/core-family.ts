import { type CoreFamily, familiesWith } from '../../records/schemas/core-families.js';
import type { Answers } from './answers.js';

/** The families that a ball's intermediate differential leaves open; as if it were 0 before it is answered. */
export const openFamilies = ({ intermediateDifferentialIn }: Answers): readonly CoreFamily[] =>
  familiesWith(undefined, intermediateDifferentialIn ?? 0);

/** The family of a ball's core: by its numbers, else as answered; undefined where neither decides. */
export function answeredFamily(answers: Answers): CoreFamily | undefined {
  const [family, ...others] = openFamilies(answers);
  return others.length === 0 ? family : answers.coreShape;
}
