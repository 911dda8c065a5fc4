import { describe, expect, test } from 'vitest';
import { parseRecord, type RecordSchema } from '../../../src/records/read/read-record.js';
import { ballSchemaFor } from '../../../src/records/schemas/ball.js';
import { bowlerSchema } from '../../../src/records/schemas/bowler.js';
import { usualGrip } from '../../../src/records/schemas/grip.js';
import { parseDistances } from '../../../src/records/text/distances-text.js';
import { inputErrorOf } from '../../support/faults-of.js';
import { ball, bowler } from '../../support/plain-records.js';

const drilling = { layout: '50 x 4 x 35', hand: 'right', pap: { overIn: 5, upIn: 0.5 } };
const { layout: _, ...without } = drilling;
const used = (...drillings: unknown[]) => ({ ...ball, drilledBefore: drillings });
const vent = { into: 'thumb', diameterIn: 0.25, overIn: 1.1, upIn: -2.7 };
const vented = (...vents: unknown[]) => ({ ...bowler, grip: { ...usualGrip(true), vents } });
const faultsIn = (schema: RecordSchema<unknown>, value: unknown) =>
  inputErrorOf(() => parseRecord(schema, value, 'a file')).faults;

test.each([
  { name: 'in angles', drillings: [drilling] },
  { name: 'in distances', drillings: [{ ...without, layoutDistances: '4 x 3 1/2 x 2', pinSide: 'below' }] },
  {
    name: 'with its grip and what fills it',
    drillings: [{ ...drilling, grip: usualGrip(true), plugDensityGcc: 1.25 }],
  },
  { name: 'twice', drillings: [drilling, { ...drilling, hand: 'left' }] },
])('a sound ball that was drilled before, $name, comes back as it is', ({ drillings }) => {
  const record = used(...drillings);
  expect(parseRecord(ballSchemaFor, record, 'a file')).toEqual(record);
});

test('a sound grip with vents, and a sleeve of no stated density, comes back as it is', () => {
  const grip = usualGrip(true);
  const { densityGcc: __, ...slug } = grip.thumb?.sleeve ?? { densityGcc: 0 };
  const record = { ...vented(vent, { ...vent, into: 'ring', meetsAtIn: 1.5 }) };
  expect(parseRecord(bowlerSchema, record, 'a file')).toEqual(record);
  const bare = { ...bowler, grip: { ...grip, thumb: { ...grip.thumb, sleeve: slug } } };
  expect(parseRecord(bowlerSchema, bare, 'a file')).toEqual(bare);
});

// biome-ignore format: one fault a line
test.each([
  { name: 'a layout of two numbers', schema: ballSchemaFor as RecordSchema<unknown>, record: used({ ...drilling, layout: '50 x 4' }), field: 'drilledBefore[0].layout', rule: 'drilling angle x pin-to-PAP x VAL angle', got: '"50 x 4"', hint: 'Write it like' },
  { name: 'a pin off the ball', schema: ballSchemaFor, record: used(drilling, { ...drilling, layout: '50 x 45 x 35' }), field: 'drilledBefore[1].layout', rule: 'must be 0 to 6.75 in for pin-to-PAP', got: '"50 x 45 x 35"', hint: 'The order is' },
  { name: 'distances in words', schema: ballSchemaFor, record: used({ ...without, layoutDistances: 'four x 3 x 2' }), field: 'drilledBefore[0].layoutDistances', rule: '0 to 6.75 in for pin-to-PAP', got: '"four x 3 x 2"', hint: 'marker-to-PAP' },
  { name: 'both notations', schema: ballSchemaFor, record: used({ ...drilling, layoutDistances: '4 x 3 x 2' }), field: 'drilledBefore[0].layout', rule: 'not both', got: '"50 x 4 x 35"', hint: 'Angles' },
  { name: 'neither', schema: ballSchemaFor, record: used(without), field: 'drilledBefore[0].layout', rule: 'must be given', got: 'nothing: it is missing', hint: 'Distances' },
  { name: 'a plug of lead', schema: ballSchemaFor, record: used({ ...drilling, plugDensityGcc: 11.3 }), field: 'drilledBefore[0].plugDensityGcc', rule: '0.8 to 1.8 g/cc', got: '11.3', hint: '1.1 to 1.3' },
  { name: 'a slip of the pen', schema: ballSchemaFor, record: used({ ...drilling, plugDensity: 1.2 }), field: 'drilledBefore[0].plugDensity', rule: 'must not be there', got: '1.2', hint: 'plugDensityGcc' },
  { name: 'an old hole left open', schema: ballSchemaFor, record: used({ ...drilling, plugDensityGcc: 0 }), field: 'drilledBefore[0].plugDensityGcc', rule: '0.8 to 1.8 g/cc', got: '0', hint: '' },
  { name: 'a vent as wide as a finger', schema: bowlerSchema, record: vented({ ...vent, diameterIn: 0.75 }), field: 'grip.vents[0].diameterIn', rule: '0.0625 to 0.5 in', got: '0.75', hint: '1/4 in' },
  { name: 'a vent into nothing', schema: bowlerSchema, record: vented({ ...vent, into: 'palm' }), field: 'grip.vents[0].into', rule: '"thumb" or "middle" or "ring"', got: '"palm"', hint: '' },
])('$name: field, rule, value and remedy are named', ({ schema, record, field, rule, got, hint }) => {
  const faults = faultsIn(schema, record);
  expect(faults.map((fault) => fault.field)).toEqual([field]);
  expect(faults[0].rule).toContain(rule);
  expect(faults[0].got).toBe(got);
  expect(faults[0].hint ?? '').toContain(hint);
});

describe('parseDistances', () => {
  test.each(['4 1/2 x 3 3/8 x 2', '4.5 X 3.375 X 2', '4 1/2 in × 3-3/8 in × 2 in', '4 1/2" * 3 3/8" * 2"'])(
    'reads %s',
    (text) => expect(parseDistances(text)).toEqual({ pinToPapIn: 4.5, markerToPapIn: 3.375, pinBufferIn: 2 }),
  );

  test('names every number out of range', () =>
    expect(inputErrorOf(() => parseDistances('7 x 14 x -1')).faults.map(({ field }) => field)).toEqual([
      'layoutDistances: pin-to-PAP',
      'layoutDistances: marker-to-PAP',
      'layoutDistances: pin buffer',
    ]));
});
