import fc from 'fast-check';
import { test } from 'vitest';
import { nothingIsLost, orderOfDrillingIsFree, shellAndCoreMakeTheBall, turnsAsOne } from './balls-hold.js';

/* A handful of the balls of `random-balls.test.ts`, quick enough to be asked of every mutant. */
const FEW = { numRuns: 25 };

test('a few random balls: turned as one, put together of shell and core, weighed in parts, drilled in any order', () => {
  fc.assert(turnsAsOne, FEW);
  fc.assert(shellAndCoreMakeTheBall, FEW);
  fc.assert(nothingIsLost, FEW);
  fc.assert(orderOfDrillingIsFree, FEW);
});
