import { expect, test } from 'vitest';
import { from, INCH } from '../../src/base/units.js';
import { markClearanceIn } from '../../src/search/candidates/candidates.js';
import { orderRules } from '../../src/search/order-rules.js';
import { madeUpSetting } from '../support/made-up-setting.js';
import { layoutAt, rowOf } from '../support/outcomes.js';

const { setting } = madeUpSetting(() => ({}));
const scatter = { hookStartFt: 1, sharpnessDegPerFt: 1, totalHookBoards: 1 };
const voices = { beliefs: { byPractice: () => 42 } } as unknown as NonNullable<
  Parameters<typeof orderRules>[2]
>;

test('practice orders where it has weight, and where it was asked at all', () => {
  const by = (weight: number, asked: typeof voices | null) =>
    orderRules({}, scatter, asked, { ...setting, practiceWeight: weight }).byPractice(layoutAt(50));
  expect([by(1, voices), by(0.01, voices), by(0, voices), by(1, null)]).toEqual([42, 42, 0, 0]);
});

test('clearance is that of the pin or of the rings, whichever is less', () => {
  const { clearanceIn, ids } = orderRules({ totalHook: 3 }, scatter, null, setting);
  const row = rowOf(layoutAt(60, 4, 40), [50]);
  const { pin } = markClearanceIn(row.layout, setting.ball);
  const ringed = (inches: number) => ({
    ...row,
    nominal: { ...row.nominal, ringClearance: from(inches, INCH) },
  });
  expect(clearanceIn(ringed(pin + 1))).toBe(pin);
  expect(clearanceIn(ringed(pin - 0.1))).toBeCloseTo(pin - 0.1, 12);
  expect(ids).toEqual(['totalHookBoards']);
});
