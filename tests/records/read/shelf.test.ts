import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { DEMO, demoShelf } from '../../../src/records/read/shelf.js';
import { hasOwnCore } from '../../../src/records/schemas/ball.js';

const { bowlers, balls, lanes } = demoShelf(); // reads every file through readRecord, and throws if one fails

describe('the demo shelf', () => {
  test.each([
    ['bowlers', bowlers],
    ['balls', balls],
    ['lanes', lanes],
  ])('holds every file of data/%s, each of another name', (folder, shelf) => {
    const files = readdirSync(new URL(`../../../data/${folder}/`, import.meta.url));
    expect(shelf.map(({ id }) => `${id}.json`)).toEqual(files.sort());
    expect(new Set(shelf.map(({ record }) => record.name)).size).toBe(shelf.length);
  });

  test('every record says that it is invented', () => {
    const cores = balls.flatMap(({ id, record }) =>
      hasOwnCore(record) ? [{ id: `core of ${id}`, record: record.coreFile.core }] : [],
    );
    for (const { id, record } of [...bowlers, ...balls, ...cores, ...lanes])
      expect(record.note, id).toMatch(/^Invented for flarewise; no real (person|ball|oil pattern)\./);
  });

  test('the default demo records are on it', () => {
    const ids = [bowlers, balls, lanes].map((shelf) => shelf.map(({ id }) => id));
    expect(ids[0]).toContain(DEMO.bowler);
    expect(ids[1]).toContain(DEMO.ball);
    expect(ids[2]).toContain(DEMO.lane);
  });

  test('spans the people and things it is tried on', () => {
    const has = <T>(shelf: readonly { record: T }[], claim: (record: T) => boolean) =>
      expect(shelf.some(({ record }) => claim(record))).toBe(true);
    has(bowlers, ({ hand }) => hand === 'left');
    has(bowlers, ({ thumbHole }) => !thumbHole);
    has(bowlers, ({ revRateRpm }) => revRateRpm < 200);
    has(bowlers, ({ revRateRpm }) => revRateRpm > 400);
    has(bowlers, ({ axisTiltDeg }) => axisTiltDeg > 30);
    has(balls, ({ weightLb }) => weightLb <= 12);
    for (const shape of ['plain', 'lobed', 'asymmetric'])
      has(balls, (ball) => !hasOwnCore(ball) && ball.coreShape === shape);
    has(balls, (ball) => hasOwnCore(ball) && ball.coreFile.meshes.size === 0);
    has(balls, (ball) => hasOwnCore(ball) && ball.coreFile.meshes.size > 0);
    has(lanes, ({ patternFt }) => patternFt <= 33);
    has(lanes, ({ patternFt }) => patternFt >= 45);
  });
});
