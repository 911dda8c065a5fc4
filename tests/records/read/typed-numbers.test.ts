import { describe, expect, test } from 'vitest';
import { formatBowlerList } from '../../../src/records/read/bowler-list.js';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { ballSchemaFor } from '../../../src/records/schemas/ball.js';
import { type Bowler, bowlerSchema } from '../../../src/records/schemas/bowler.js';
import { ABOUT_DEVIATION } from '../../../src/records/shared/about-deviation.js';
import { inputErrorOf } from '../../support/faults-of.js';
import { ball, bowler } from '../../support/plain-records.js';
import { readBowlerList } from '../../support/read-bowler-list.js';

const bowlerOf = (fields: object): Bowler => parseRecord(bowlerSchema, { ...bowler, ...fields }, 'x');

describe('numbers of a record typed as text', () => {
  test('are read in the field’s own unit', () => {
    expect(
      bowlerOf({ speedMph: '27,5 km/h', axisTiltDeg: '14°', pap: { overIn: '5 1/8', upIn: '3/8 down' } }),
    ).toMatchObject({ axisTiltDeg: 14, pap: { overIn: 5.125, upIn: -0.375 } });
    expect(bowlerOf({ speedMph: '27,5 km/h' }).speedMph).toBeCloseTo(27.5 / 1.609344, 12);
    const heavy = parseRecord(ballSchemaFor, { ...ball, weightLb: '15 lbs', pinToCgIn: '2¾' }, 'x');
    expect(heavy).toMatchObject({ weightLb: 15, pinToCgIn: 2.75 });
  });

  test('a range gives the middle, and half of it as uncertainty', () => {
    expect(bowlerOf({ axisRotationDeg: '40-50', pap: { overIn: '4-4 1/2', upIn: 0 } })).toMatchObject({
      axisRotationDeg: 45,
      pap: { overIn: 4.25 },
      uncertainty: { axisRotationDeg: 5, papOverIn: 0.25 },
    });
  });

  test('about so much is as wide as the data says; an exact number has no uncertainty', () => {
    expect(bowlerOf({ revRateRpm: '~325' })).toMatchObject({
      revRateRpm: 325,
      uncertainty: { revRateRpm: ABOUT_DEVIATION.revRateRpm },
    });
    expect(bowlerOf({ revRateRpm: 'about 300-310' }).uncertainty).toEqual({
      revRateRpm: ABOUT_DEVIATION.revRateRpm, // wider than the range
    });
    expect(bowlerOf({ revRateRpm: '325' }).uncertainty).toBeUndefined();
  });

  test('of a ball too, where its core is fitted to its numbers; the weight is no range', () => {
    const typed = { rgIn: '2.50-2.54', differentialIn: 'about 0.045', topWeightOz: '3' };
    expect(parseRecord(ballSchemaFor, { ...ball, ...typed }, 'x')).toMatchObject({
      rgIn: 2.52,
      differentialIn: 0.045,
      topWeightOz: 3,
      uncertainty: { rgIn: expect.closeTo(0.02, 12), differentialIn: ABOUT_DEVIATION.differentialIn },
    });
    const own = { schema: 'flarewise/ball/1', name: 'Own', weightLb: 15, core: 'x.json', rgIn: '2.50-2.54' };
    expect(inputErrorOf(() => parseRecord(ballSchemaFor, own, 'x')).faults).toMatchObject([
      { field: 'rgIn' },
    ]);
  });

  test('a range is refused where nothing says how sure a number is, or where the record says it already', () => {
    const hint = expect.stringContaining('no range');
    expect(
      inputErrorOf(() => parseRecord(ballSchemaFor, { ...ball, weightLb: '14-15' }, 'x')).faults,
    ).toMatchObject([{ field: 'weightLb', got: '"14-15"', hint }]);
    expect(
      inputErrorOf(() => bowlerOf({ speedMph: '17-18', uncertainty: { speedMph: 1 } })).faults,
    ).toMatchObject([{ field: 'speedMph', hint }]);
  });

  test('a range wider than a bowler’s number may be unsure is refused', () => {
    expect(inputErrorOf(() => bowlerOf({ speedMph: '9-25' })).faults).toMatchObject([
      { field: 'uncertainty.speedMph', rule: 'must be 0 to 5 mph' },
    ]);
  });
});

test('a list says how sure its numbers are, and reads it back', () => {
  const uncertainty = { speedMph: 1.2, papUpIn: 0.45 };
  const unsure = { ...bowler, pap: { overIn: 5, upIn: -0.25 }, uncertainty };
  const text = formatBowlerList([unsure, bowler]);
  expect(text).toContain('speedMph +/-');
  expect(readBowlerList(text, 'x')).toEqual([unsure, bowler]);
});
