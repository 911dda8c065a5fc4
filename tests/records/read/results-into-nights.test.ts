import { expect, test } from 'vitest';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { drilledLayoutSchema } from '../../../src/records/schemas/drilled-layout.js';

const layout = { name: 'first', bowler: 'kim', ball: 'new', layout: '70 x 4 1/2 x 30' };
const migrated = (results: unknown) =>
  parseRecord(drilledLayoutSchema, { schema: 'flarewise/layout/1', ...layout, results }, 'first.json');

test('a layout of version 1 keeps all that was logged: results of one day and lane are shots of one night', () => {
  const seen = { hookStartFt: 38, totalHookBoards: 22, breakpointBoard: 8, entryAngleDeg: 5, flareIn: 4 };
  expect(
    migrated([
      { on: '2026-03-31', lane: 'dry', ...seen, note: 'late' },
      { on: '2026-03-31', lane: 'dry', totalHookBoards: 24 },
      { lane: 'long', breakpointBoard: 11 },
      { on: '2026-03-31', lane: 'dry', flareIn: 4.5 },
    ]),
  ).toEqual({
    schema: 'flarewise/layout/2',
    ...layout,
    nights: [
      { on: '2026-03-31', lane: 'dry', shots: [{ ...seen, note: 'late' }, { totalHookBoards: 24 }] },
      { lane: 'long', shots: [{ breakpointBoard: 11 }] },
      { on: '2026-03-31', lane: 'dry', shots: [{ flareIn: 4.5 }] },
    ],
  });
});

test('a layout of version 1 without results has no nights', () => {
  expect(migrated(undefined)).toMatchObject({ schema: 'flarewise/layout/2', nights: [] });
});

test.each([
  { results: 'none', says: 'nights must be a list' },
  { results: [{ lane: 'dry', flareIn: 99 }], says: 'nights[0].shots[0].flareIn must be 0 to 9 in; got 99' },
  { results: [3], says: 'shots[0].shot must not be there' },
  { results: [{ flareIn: 5 }], says: 'nights[0].lane must be a text' },
])('a damaged result is refused and named: $says', ({ results, says }) => {
  expect(() => migrated(results)).toThrow(says);
});

test('numbers of shots may be typed with their units', () => {
  const shots = [{ flareIn: '95 mm', displaySpeedMph: '28 km/h', pinsBoard: '17½' }];
  const record = { schema: 'flarewise/layout/2', ...layout, nights: [{ lane: 'dry', shots }] };
  const [shot] = parseRecord(drilledLayoutSchema, record, 'x').nights[0].shots;
  expect(shot.flareIn).toBeCloseTo(95 / 25.4, 12);
  expect(shot.displaySpeedMph).toBeCloseTo(28 / 1.609344, 12);
  expect(shot.pinsBoard).toBe(17.5);
});
