import { expect, test } from 'vitest';
import type { AnyTrial, Trial } from '../../src/simulate/evaluator.js';
import { SHARE, takeShare } from '../../src/simulate/shares.js';
import type { Outcome } from '../../src/simulate/simulator.js';

const trials = Array.from({ length: 3 * SHARE + 1 }, (_, world) => ({ world }) as Trial);
const roll = (trial: AnyTrial): Outcome => ({ ringClearance: (trial as Trial).world }) as unknown as Outcome;

test('two that take turns roll every trial once, each knows where its own belong, and then nothing is left', () => {
  const taken = new Int32Array(new SharedArrayBuffer(4));
  const places: number[] = [];
  for (let share = takeShare({ trials, taken }, roll); share; share = takeShare({ trials, taken }, roll))
    share.outcomes.forEach((outcome, i) => {
      expect(outcome.ringClearance).toBe(share!.from + i);
      places.push(share!.from + i);
    });
  expect(places).toEqual([...trials.keys()]);
  expect(takeShare({ trials, taken }, roll)).toBe(null);
});
