import { expect, test } from 'vitest';
import { ownBall } from '../../../src/prepare/own-core.js';
import { Refusal } from '../../../src/records/refusals/refusal.js';
import type { Core } from '../../../src/records/schemas/core.js';
import { BAR, BODY, ballAround, core } from '../../support/core-files.js';

/** Why a core makes no ball: the code, and the part or cover whose density is named. */
function faultOf(given: Partial<Core>): readonly [string, unknown] {
  try {
    ownBall(ballAround(core({ parts: [BODY, BAR] as unknown as Core['parts'], ...given })), 'right');
  } catch (error) {
    if (!(error instanceof Refusal)) throw error;
    const [{ code, params }] = error.statements as readonly [Refusal['statements'][number]];
    return [code, 'part' in params ? params.part : null];
  }
  return ['none', null];
}

const parts = (...densities: readonly number[]): Core['parts'] =>
  [BODY, BAR].map((part, i) => ({ ...part, densityGcc: densities[i] })) as unknown as Core['parts'];

test.each([
  { name: 'nothing where the weight comes out', given: {}, want: ['none', null] },
  {
    name: 'the cover, several times too dense',
    given: { cover: { thickness: 0.8, densityGcc: 9 } },
    want: ['part-density', 'cover'],
  },
  {
    name: 'the cover, a decimal place too low',
    given: { cover: { thickness: 0.8, densityGcc: 0.118 } },
    want: ['part-density', 'cover'],
  },
  {
    name: 'a part too light, though another weighs more',
    given: { parts: parts(0.3, 3) },
    want: ['part-density', 'parts[0] (body)'],
  },
  {
    name: 'a part too dense',
    given: { parts: parts(12, 3) },
    want: ['part-density', 'parts[0] (body)'],
  },
])('names $name', ({ given, want }) => expect(faultOf(given)).toEqual(want));
