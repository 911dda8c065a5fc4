import { expect, test } from 'vitest';
import {
  CORE_FAMILIES,
  CORE_FAMILY_IDS,
  type CoreFamily,
  familiesWith,
  LEAST_MASS_BIAS_IN,
} from '../../../src/records/schemas/core-families.js';

test.each<{ name: string; stated?: CoreFamily; differentialIn: number; want: readonly CoreFamily[] }>([
  { name: 'what is stated', stated: 'lobed', differentialIn: 0, want: ['lobed'] },
  {
    name: 'all symmetric families where the numbers tell no more',
    differentialIn: 0,
    want: ['plain', 'lobed'],
  },
  {
    name: 'the same up to what is scatter of manufacture',
    differentialIn: LEAST_MASS_BIAS_IN,
    want: ['plain', 'lobed'],
  },
  { name: 'those with a mass bias above that', differentialIn: 0.014, want: ['asymmetric'] },
])('familiesWith: $name', ({ stated, differentialIn, want }) =>
  expect(familiesWith(stated, differentialIn)).toEqual(want),
);

test('CORE_FAMILIES: where numbers leave several families open, a person can name each of them', () => {
  for (const hasMassBias of [true, false]) {
    const open = CORE_FAMILY_IDS.filter((id) => CORE_FAMILIES[id].hasMassBias === hasMassBias);
    expect(open.length).toBeGreaterThan(0);
    const answers = open.map((id) => CORE_FAMILIES[id].answer);
    expect(new Set(answers).size).toBe(open.length);
    if (open.length > 1) expect(answers).not.toContain(null);
  }
});
