import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { parseRecord, type RecordSchema, readRecord } from '../../../src/records/read/read-record.js';
import { ballSchemaFor } from '../../../src/records/schemas/ball.js';
import { bowlerSchema } from '../../../src/records/schemas/bowler.js';
import { laneSchema } from '../../../src/records/schemas/lane.js';
import { inputErrorOf } from '../../support/faults-of.js';
import { ball, bowler, lane } from '../../support/plain-records.js';

const folder = mkdtempSync(join(tmpdir(), 'flarewise-records-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const fileWith = (name: string, text: string): string => {
  const path = join(folder, name);
  writeFileSync(path, text);
  return path;
};
const faultsIn = (schema: RecordSchema<unknown>, value: unknown) =>
  inputErrorOf(() => parseRecord(schema, value, 'a file')).faults;

describe('parseRecord', () => {
  test.each([
    { kind: 'bowler', schema: bowlerSchema as RecordSchema<unknown>, record: bowler },
    { kind: 'ball', schema: ballSchemaFor as RecordSchema<unknown>, record: ball },
    { kind: 'lane', schema: laneSchema as RecordSchema<unknown>, record: lane },
  ])('a sound $kind comes back as it is', ({ schema, record }) => {
    expect(parseRecord(schema, record, 'a file')).toEqual(record);
  });

  // biome-ignore format: one fault a line
  test.each([
    { name: '4500 rpm for 450', schema: bowlerSchema, record: { ...bowler, revRateRpm: 4500 }, field: 'revRateRpm', rule: '30 to 700 rpm', got: '4500', hint: 'per minute' },
    { name: 'a speed in km/h', schema: bowlerSchema, record: { ...bowler, speedMph: 28 }, field: 'speedMph', rule: '8 to 26 mph', got: '28', hint: 'km/h' },
    { name: 'a PAP of 45 in for 4 1/2', schema: bowlerSchema, record: { ...bowler, pap: { overIn: 45, upIn: 0 } }, field: 'pap.overIn', rule: '2 to 7.5 in', got: '45', hint: '5 1/8' },
    { name: 'a word for a number', schema: bowlerSchema, record: { ...bowler, speedMph: 'fast' }, field: 'speedMph', rule: 'must be a number', got: '"fast"', hint: 'miles per hour' },
    { name: 'a number too great for a computer', schema: bowlerSchema, record: { ...bowler, speedMph: JSON.parse('1e999') }, field: 'speedMph', rule: 'must be a number', got: 'Infinity', hint: '' },
    { name: 'a hand nobody has', schema: bowlerSchema, record: { ...bowler, hand: 'both' }, field: 'hand', rule: '"right" or "left"', got: '"both"', hint: '' },
    { name: 'yes for true', schema: bowlerSchema, record: { ...bowler, thumbHole: 'yes' }, field: 'thumbHole', rule: 'true or false', got: '"yes"', hint: '' },
    { name: 'a list where an object belongs', schema: bowlerSchema, record: { ...bowler, pap: [5, 0.5] }, field: 'pap', rule: 'must be an object', got: '[5,0.5]', hint: '' },
    { name: 'an RG in centimetres', schema: ballSchemaFor, record: { ...ball, rgIn: 6.4 }, field: 'rgIn', rule: '2.4 to 2.8 in', got: '6.4', hint: 'inches' },
    { name: 'a weight in kilograms', schema: ballSchemaFor, record: { ...ball, weightLb: 6.8 }, field: 'weightLb', rule: '8 to 16 lb', got: '6.8', hint: '1 kg' },
    { name: 'differentials the wrong way round', schema: ballSchemaFor, record: { ...ball, coreShape: 'asymmetric', differentialIn: 0.01, intermediateDifferentialIn: 0.03 }, field: 'intermediateDifferentialIn', rule: 'must not exceed', got: '0.03', hint: 'swapped' },
    { name: 'a mass bias on a plain core', schema: ballSchemaFor, record: { ...ball, intermediateDifferentialIn: 0.02 }, field: 'coreShape', rule: 'must be "asymmetric"', got: '"plain"', hint: 'symmetric core' },
    { name: 'an asymmetric core without a mass bias', schema: ballSchemaFor, record: { ...ball, coreShape: 'asymmetric' }, field: 'intermediateDifferentialIn', rule: 'above 0', got: '0', hint: 'mass bias' },
    { name: 'no zone of oil', schema: laneSchema, record: { ...lane, zones: [] }, field: 'zones', rule: 'at least one zone', got: '[]', hint: '' },
    { name: 'a zone that ends before it begins', schema: laneSchema, record: { ...lane, zones: [{ ...lane.zones[0], fromFt: 30, toFt: 20 }] }, field: 'zones[0].toFt', rule: 'greater than fromFt (30)', got: '20', hint: 'foul line' },
    { name: 'oil beyond the pattern', schema: laneSchema, record: { ...lane, patternFt: 22 }, field: 'zones[0].toFt', rule: 'patternFt (22)', got: '40', hint: '' },
    { name: 'a lane more slippery dry than oiled', schema: laneSchema, record: { ...lane, frictionDry: 0.02 }, field: 'frictionDry', rule: 'greater than frictionOiled', got: '0.02', hint: '0.20 on dry' },
  ])('$name: field, rule, value and remedy are named', ({ schema, record, field, rule, got, hint }) => {
    const faults = faultsIn(schema, record);
    expect(faults.map((fault) => fault.field)).toEqual([field]);
    expect(faults[0].rule).toContain(rule);
    expect(faults[0].got).toBe(got);
    expect(faults[0].hint ?? '').toContain(hint);
  });

  test('all faults of a file are told at once', () => {
    const { speedMph: _, ...slow } = bowler;
    const faults = faultsIn(bowlerSchema, {
      ...slow,
      revRateRpm: 4500,
      pap: { overIn: 45, upIn: 0, upin: 1 },
      skill: 'godlike',
    });
    expect(faults.map(({ field }) => field).sort()).toEqual([
      'pap.overIn',
      'pap.upin',
      'revRateRpm',
      'skill',
      'speedMph',
    ]);
  });

  test('a fault across fields is told beside one of range', () => {
    const fields = faultsIn(ballSchemaFor, {
      ...ball,
      coreShape: 'asymmetric',
      weightLb: 150,
      intermediateDifferentialIn: 0.05,
    }).map(({ field }) => field);
    expect(fields).toEqual(['weightLb', 'intermediateDifferentialIn']);
  });

  test('a missing field is said to be missing', () => {
    const { topWeightOz: _, ...light } = ball;
    expect(faultsIn(ballSchemaFor, light)).toMatchObject([
      { field: 'topWeightOz', got: 'nothing: it is missing' },
    ]);
  });

  test('a misspelt field brings the one that was meant, a foreign one the list of all', () => {
    const faults = faultsIn(bowlerSchema, { ...bowler, skil: 'league', moonPhase: 'full' });
    expect(faults).toMatchObject([
      { field: 'skil', got: '"league"', hint: 'Did you mean "skill"?' },
      { field: 'moonPhase', got: '"full"', hint: expect.stringContaining('speedMph, revRateRpm') },
    ]);
  });

  test.each([' ', '\u202e'])('a field whose name shows nothing (%j) is named in quotes', (name) => {
    const error = inputErrorOf(() => parseRecord(bowlerSchema, { ...bowler, [name]: 1 }, 'me.json'));
    expect(error.faults[0].field).toBe(JSON.stringify(name).replace('\u202e', '\\u202e'));
  });

  test('a long value is shortened', () => {
    const [fault] = faultsIn(bowlerSchema, { ...bowler, name: 'x'.repeat(500) });
    expect(fault.got.length).toBeLessThanOrEqual(60);
  });

  test('a ball given as the bowler is said to be a ball, and nothing else', () => {
    const error = inputErrorOf(() => parseRecord(bowlerSchema, ball, 'mine.json'));
    expect(error).toMatchObject({ code: 'wrong-kind', source: 'mine.json' });
    expect(error.faults).toHaveLength(1);
    expect(error.message).toContain('This is a ball record');
  });

  test('a record of another version is told from one of another kind', () => {
    const messageFor = (version: number): string =>
      inputErrorOf(() => parseRecord(bowlerSchema, { ...bowler, schema: `flarewise/bowler/${version}` }, 'x'))
        .message;
    expect(messageFor(2)).toContain('A later version of flarewise wrote it');
    expect(messageFor(0)).toContain('It belongs to another version of flarewise');
    for (const version of [0, 2]) expect(messageFor(version)).not.toContain('--bowler');
  });

  test.each([null, 5, 'text', []])('%j is no record', (value) => {
    expect(faultsIn(bowlerSchema, value)).toMatchObject([{ field: 'record', rule: 'must be a JSON object' }]);
  });
});

describe('readRecord', () => {
  const read = (path: string) => readRecord(bowlerSchema, path);

  test('reads a file, one with a byte order mark too', () => {
    expect(read(fileWith('plain.json', JSON.stringify(bowler)))).toEqual(bowler);
    expect(read(fileWith('marked.json', `\uFEFF${JSON.stringify(bowler)}`))).toEqual(bowler);
  });

  test.each([
    {
      name: 'a file that is not there',
      path: join(folder, 'nowhere.json'),
      code: 'no-such-file',
      got: 'does not exist',
    },
    { name: 'a folder', path: folder, code: 'no-such-file', got: 'is a folder' },
    { name: 'an empty file', path: fileWith('empty.json', ' \n'), code: 'broken-json', got: 'an empty file' },
    {
      name: 'a file cut short',
      path: fileWith('cut.json', '{"name": "a",\n'),
      code: 'broken-json',
      got: 'ends too soon',
    },
    {
      name: 'a value left out',
      path: fileWith('gap.json', '{\n  "schema": "flarewise/bowler/1",\n  "name":\n}'),
      code: 'broken-json',
      got: 'line 4, column 1, near "}"',
    },
    {
      name: 'a comma after the last entry',
      path: fileWith('comma.json', '{\r\n  "speedMph": 17,\r\n}'),
      code: 'broken-json',
      got: 'line 3, column 1',
    },
    {
      name: 'a comma left out',
      path: fileWith('two.json', '{\n  "speedMph": 17\n  "hand": "right"\n}'),
      code: 'broken-json',
      got: 'line 3, column 3, near "\\"hand\\": \\"right\\""',
    },
    {
      name: 'a comment',
      path: fileWith('comment.json', '{\n  // mine\n}'),
      code: 'broken-json',
      got: 'line 2, column 3',
    },
  ])('$name is told by what and where it is', ({ path, code, got }) => {
    const error = inputErrorOf(() => read(path));
    expect(error).toMatchObject({ code, source: path });
    expect(error.faults[0].got).toContain(got);
    expect(error.faults[0].hint).toBeTruthy();
  });
});
