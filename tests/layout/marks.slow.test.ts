import fc from 'fast-check';
import { test } from 'vitest';
import { bothNotationsAgree, orderOfMarksIsFree, readsBack } from './marks-hold.js';

const MANY = { numRuns: 100_000 };

test('a layout is read back off the ball as it was put on', () => fc.assert(readsBack, MANY));

test('the order of marks changes nothing', () => fc.assert(orderOfMarksIsFree, MANY));

test('angles and distances are the same layout', () => fc.assert(bothNotationsAgree, MANY));
