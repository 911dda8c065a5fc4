import { expect, test } from 'vitest';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { bowlerSchema } from '../../../src/records/schemas/bowler.js';
import { parseDistances } from '../../../src/records/text/distances-text.js';
import { parseLayout } from '../../../src/records/text/layout-text.js';
import { numberHint } from '../../../src/records/text/number-hint.js';
import { inputErrorOf } from '../../support/faults-of.js';
import { bowler } from '../../support/plain-records.js';
import { readBowlerList } from '../../support/read-bowler-list.js';

const ZERO = 'cannot be divided by 0';

test.each(['17', '4 1/2', 'fast', '', '1/10', '1/0.5'])('numberHint: nothing is said of %j', (text) =>
  expect(numberHint(text)).toBeNull(),
);

test('a decimal comma in a list with semicolons is read; a division by 0 is named as such', () => {
  const list = (up: string): string =>
    'name;hand;thumbHole;speedMph;revRateRpm;axisTiltDeg;axisRotationDeg;papOverIn;papUpIn\n' +
    `Kim;right;yes;17,5;320;13;48;4 7/8;${up}`;
  expect(readBowlerList(list('1/4'), 'club.csv')).toMatchObject([{ speedMph: 17.5, pap: { upIn: 0.25 } }]);
  const { faults } = inputErrorOf(() => readBowlerList(list('1/0'), 'club.csv'));
  expect(faults).toMatchObject([
    { field: 'row 2 (Kim): pap.upIn', got: '"1/0"', hint: expect.stringContaining(ZERO) },
  ]);
});

test('in layouts, of both notations, and in records', () => {
  const hints = (read: () => unknown) => inputErrorOf(read).faults.map(({ hint }) => hint);
  expect(parseLayout('70 x 4,5 x 30').pinToPapIn).toBe(4.5);
  expect(hints(() => parseLayout('70 x 4 1/0 x 30'))).toEqual([expect.stringContaining(ZERO)]);
  expect(hints(() => parseLayout('70 x 4-5 x 30'))).toEqual([expect.stringContaining('no range')]);
  expect(hints(() => parseDistances('4,5 x 3 3/0 x 2'))).toEqual([expect.stringContaining(ZERO)]);
  expect(parseRecord(bowlerSchema, { ...bowler, speedMph: '17,5' }, 'x').speedMph).toBe(17.5);
  expect(hints(() => parseRecord(bowlerSchema, { ...bowler, speedMph: '17 kg' }, 'x'))).toEqual([
    expect.stringContaining('kg is no unit of a speed'),
  ]);
});
