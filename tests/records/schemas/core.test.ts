import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { readBall } from '../../../src/records/read/read-ball.js';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { ballSchemaFor, hasOwnCore } from '../../../src/records/schemas/ball.js';
import { coreSchema } from '../../../src/records/schemas/core.js';
import { scratchFolder } from '../../support/demo-files.js';
import { inputErrorOf } from '../../support/faults-of.js';

const core = {
  schema: 'flarewise/core/1',
  name: 'Test core',
  unit: 'in',
  cover: { thickness: 0.8, densityGcc: 1.18 },
  parts: [
    { shape: 'ellipsoid', radii: [1.7, 2.1, 2.9], densityGcc: 2.85 },
    { shape: 'cone', bottomRadius: 1, topRadius: 0, height: 2, densityGcc: 3, tiltDeg: 20 },
    { shape: 'mesh', file: 'block.stl', unit: 'mm', densityGcc: 3 },
  ],
};
const ball = { schema: 'flarewise/ball/1', name: 'Test ball', weightLb: 15, core: 'cores/core.json' };

const faultsIn = (value: unknown) => inputErrorOf(() => parseRecord(coreSchema, value, 'core.json')).faults;
const part = (change: object) => ({ ...core, parts: [{ ...core.parts[0], ...change }] });

describe('coreSchema', () => {
  test('lets a sound core through as it is', () =>
    expect(parseRecord(coreSchema, core, 'core.json')).toEqual(core));

  test('a density may be typed with its unit, in the cover and in parts of any shape', () => {
    const { cover, parts, fillerDensityGcc } = parseRecord(
      coreSchema,
      {
        ...core,
        cover: { thickness: 0.8, densityGcc: '1180 kg/m³' },
        fillerDensityGcc: '0.95',
        parts: core.parts.map((each, i) => ({
          ...each,
          densityGcc: ['2.85 g/cc', '3,0 g/cm3', '3 g/cm³'][i],
        })),
      },
      'core.json',
    );
    expect([cover.densityGcc, fillerDensityGcc]).toEqual([1.18, 0.95]);
    expect(parts.map(({ densityGcc }) => densityGcc)).toEqual([2.85, 3, 3]);
  });

  // biome-ignore format: one spoilt record a line
  test.each([
    { name: 'an unknown unit', value: { ...core, unit: 'ft' }, field: 'unit', rule: 'must be "in" or "mm" or "cm"', got: '"ft"' },
    { name: 'a shape nobody knows', value: part({ shape: 'blob' }), field: 'parts[0].shape', rule: 'must be "ellipsoid" or', got: '"blob"' },
    { name: 'a part without a shape', value: part({ shape: undefined }), field: 'parts[0].shape', rule: 'must be "ellipsoid" or', got: 'nothing: it is missing' },
    { name: 'two radii for three', value: part({ radii: [1, 2] }), field: 'parts[0].radii', rule: 'must be three radii', got: '[1,2]' },
    { name: 'a negative radius', value: part({ radii: [1, -2, 1] }), field: 'parts[0].radii[1]', rule: 'must be at least 0.001', got: '-2' },
    { name: 'a radius of next to nothing', value: part({ radii: [1, 5e-324, 1] }), field: 'parts[0].radii[1]', rule: 'must be at least 0.001', got: '5e-324', hint: 'What belongs there: Radius' },
    { name: 'a pin too short to have a direction', value: { ...core, pin: [0, 0, 5e-324] }, field: 'pin', rule: 'its length must be at least 0.001', got: '[0,0,5e-324]' },
    { name: 'a density in kg/m³', value: part({ densityGcc: 2850 }), field: 'parts[0].densityGcc', rule: 'must be 0.05 to 20 g/cc', got: '2850', hint: 'divided by 1000' },
    { name: 'a field of another shape', value: part({ height: 2 }), field: 'parts[0].height', rule: 'no such field', got: '2', hint: 'radii' },
    { name: 'a misspelt field of a part', value: part({ titlDeg: 2 }), field: 'parts[0].titlDeg', rule: 'no such field', got: '2', hint: 'Did you mean "tiltDeg"?' },
    { name: 'a capsule shorter than its ends', value: { ...core, parts: [{ shape: 'capsule', radius: 1, height: 1.5, densityGcc: 3 }] }, field: 'parts[0].height', rule: 'at least twice the radius, 2', got: '1.5' },
    { name: 'a density in pounds', value: part({ densityGcc: '2.85 lb' }), field: 'parts[0].densityGcc', rule: 'must be a number, 0.05 to 20 g/cc', got: '"2.85 lb"', hint: 'lb is no unit of a density; known: g/cc, kg/m3.' },
    { name: 'a pin of no direction', value: { ...core, pin: [0, 0, 0] }, field: 'pin', rule: 'must not be [0, 0, 0]: its length must be at least 0.001', got: '[0,0,0]' },
    { name: 'a marker along the pin', value: { ...core, marker: [0, 0, -2] }, field: 'marker', rule: 'must not lie along the pin', got: '[0,0,-2]' },
    { name: 'no parts', value: { ...core, parts: [] }, field: 'parts', rule: 'at least one part', got: '[]' },
  ])('refuses $name', ({ value, field, rule, got, hint }) => {
    const [fault] = faultsIn(value);
    expect(fault.field).toBe(field);
    expect(fault.rule).toContain(rule);
    expect(fault.got).toBe(got);
    if (hint) expect(fault.hint).toContain(hint);
  });

  test('faults in several parts are told at once', () =>
    expect(
      faultsIn({
        ...core,
        cover: undefined,
        parts: [{ ...core.parts[0], densityGcc: 0 }, { shape: 'x' }],
      }).map(({ field }) => field),
    ).toEqual(['cover', 'parts[0].densityGcc', 'parts[1].shape']));
});

describe('a ball that names a core', () => {
  const folder = scratchFolder();
  afterAll(() => folder.remove());

  test('may leave its published numbers out, and is told what else is wrong with it', () => {
    const spoilt = { ...ball, weightLb: 150, rgIn: 25 };
    const { faults } = inputErrorOf(() => parseRecord(ballSchemaFor, spoilt, 'ball.json'));
    expect(faults.map(({ field }) => field)).toEqual(['weightLb', 'rgIn']);
  });

  test('comes with its core and the bytes of its meshes, each seen from the file that names it', () => {
    mkdirSync(join(folder.path, 'cores'));
    folder.write('cores/core.json', core);
    folder.write('cores/block.stl', 'solid block');
    const read = readBall(folder.write('ball.json', ball));
    if (!hasOwnCore(read)) throw new Error('the core was lost');
    expect(read.coreFile.core).toEqual(core);
    expect(read.coreFile.path).toBe(join(folder.path, 'cores/core.json'));
    expect(new TextDecoder().decode(read.coreFile.meshes.get('block.stl')?.bytes)).toBe('solid block');
  });

  test('of which a mesh is lost: the error names that file', () => {
    const lost = { ...core, parts: [{ ...core.parts[2], file: 'lost.stl' }] };
    folder.write('lost.json', lost);
    const path = folder.write('lost-ball.json', { ...ball, core: 'lost.json' });
    const error = inputErrorOf(() => readBall(path));
    expect(error.code).toBe('no-such-file');
    expect(error.source).toBe(join(folder.path, 'lost.stl'));
  });

  test('given where a ball is meant, a core says what to do with it', () => {
    const error = inputErrorOf(() => parseRecord(ballSchemaFor, core, 'core.json'));
    expect(error.code).toBe('wrong-kind');
    expect(error.faults[0].hint).toContain('a ball record names it');
  });
});
