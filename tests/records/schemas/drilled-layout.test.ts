import { expect, test } from 'vitest';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { drilledLayoutSchema } from '../../../src/records/schemas/drilled-layout.js';

const layout = {
  schema: 'flarewise/layout/2',
  name: 'first',
  bowler: 'kim',
  ball: 'new',
  layout: '70 x 4 1/2 x 30',
};
const read = (given: object) => parseRecord(drilledLayoutSchema, { ...layout, ...given }, 'first.json');

test('a drilled layout without nights has an empty log', () => {
  expect(read({})).toEqual({ ...layout, nights: [] });
});

test.each([
  { given: { nights: 'none' }, says: 'nights must be a list' },
  {
    given: { nights: [{ lane: 'dry', shots: [{ flareIn: 99 }] }] },
    says: 'nights[0].shots[0].flareIn must be 0 to 9 in; got 99',
  },
  { given: { nights: [{ lane: 'dry', shots: [{ seen: 3 }] }] }, says: 'shots[0].seen must not be there' },
  { given: { nights: [{ shots: [{ flareIn: 5 }] }] }, says: 'nights[0].lane must be a text' },
  { given: { layout: '70 x 4 1/2' }, says: 'layout must be three numbers' },
  { given: { schema: 'flarewise/layout/1' }, says: 'another version of flarewise' },
  { given: { schema: 'flarewise/layout/3' }, says: 'A later version of flarewise wrote it' },
])('$given is refused: $says', ({ given, says }) => {
  expect(() => read(given)).toThrow(says);
});

test('numbers of shots may be typed with their units', () => {
  const shots = [{ flareIn: '95 mm', displaySpeedMph: '28 km/h', pinsBoard: '17½' }];
  const [shot] = read({ nights: [{ lane: 'dry', shots }] }).nights[0].shots;
  expect(shot.flareIn).toBeCloseTo(95 / 25.4, 12);
  expect(shot.displaySpeedMph).toBeCloseTo(28 / 1.609344, 12);
  expect(shot.pinsBoard).toBe(17.5);
});
