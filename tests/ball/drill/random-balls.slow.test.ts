import fc from 'fast-check';
import { test } from 'vitest';
import { nothingIsLost, orderOfDrillingIsFree, shellAndCoreMakeTheBall, turnsAsOne } from './balls-hold.js';

/** Some minutes each on one core. */
const MANY = { numRuns: 100_000 };

test('turning core, plugs and holes together turns the drilled ball', () => fc.assert(turnsAsOne, MANY));

test('a drilled ball is its drilled shell and its drilled core', () =>
  fc.assert(shellAndCoreMakeTheBall, MANY));

test('mass, centre and inertia of a drilled ball are those of the whole, less the holes, with the plugs', () =>
  fc.assert(nothingIsLost, MANY));

test('the order of drilling changes nothing where holes keep apart', () =>
  fc.assert(orderOfDrillingIsFree, MANY));
