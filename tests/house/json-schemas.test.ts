import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { printedCoachLine } from '../../src/report/wording/coach-lines.js';
import { coachPairOf, eightStudents } from '../support/coach-answer.js';
import { ball, bowler, lane } from '../support/plain-records.js';
import { published, SCHEMAS, validator, wrongBy } from '../support/schema-validator.js';
import { jsonSchemas } from './json-schemas.js';

describe('shared/schemas', () => {
  test('holds exactly what `npm run schemas` writes', () => {
    expect(readdirSync(SCHEMAS).sort()).toEqual(
      jsonSchemas()
        .map(([name]) => name)
        .sort(),
    );
    for (const [name, text] of jsonSchemas()) expect(published(name), name).toBe(text);
  });

  test.each(jsonSchemas().map(([name]) => name))('%s is accepted by an independent validator', (name) => {
    expect(validator(name.replace('.schema.json', ''))).toBeTypeOf('function');
  });

  test.each(
    (['bowler', 'ball', 'core', 'lane'] as const).flatMap((kind) =>
      readdirSync(new URL(`../../data/${kind}s/`, import.meta.url))
        .filter((file) => file.endsWith('.json'))
        .map((file) => ({ kind, file })),
    ),
  )('data/$kind: $file is valid by the $kind schema', ({ kind, file }) => {
    const record = JSON.parse(readFileSync(new URL(`../../data/${kind}s/${file}`, import.meta.url), 'utf8'));
    const validate = validator(kind);
    expect(validate(record), JSON.stringify(validate.errors)).toBe(true);
  });

  // biome-ignore format: one spoilt record a line
  test.each([
    { name: 'a rev rate of 4500', kind: 'bowler', record: { ...bowler, revRateRpm: 4500 }, path: '/revRateRpm' },
    { name: 'a PAP of 45 in', kind: 'bowler', record: { ...bowler, pap: { overIn: 45, upIn: 0 } }, path: '/pap/overIn' },
    { name: 'an unknown field', kind: 'ball', record: { ...ball, shine: 3 }, path: '' },
    { name: 'a ball for a bowler', kind: 'bowler', record: ball, path: '/schema' },
    { name: 'a board outside the lane', kind: 'lane', record: { ...lane, zones: [{ ...lane.zones[0], toBoard: 40 }] }, path: '/zones/0/toBoard' },
    { name: 'a sixth step', kind: 'want', record: { hookStart: 6 }, path: '/hookStart' },
  ])('the independent validator refuses $name', ({ kind, record, path }) => {
    const validate = validator(kind);
    expect(validate(record)).toBe(false);
    expect(validate.errors?.map(({ instancePath }) => instancePath)).toContain(path);
  });

  test('a coach’s lines are valid as they are printed, and a line with another field is not', () => {
    for (const line of eightStudents) expect(wrongBy('coach-line', printedCoachLine(line))).toEqual([]);
    expect(wrongBy('coach-line', { ...coachPairOf('x'), shine: 3 })).not.toEqual([]);
  });
});
