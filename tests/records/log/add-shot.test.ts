import { describe, expect, test } from 'vitest';
import { addShot, headOf, shotCount } from '../../../src/records/log/add-shot.js';
import { shotAt, withChangedShot, withoutShot, withTyped } from '../../../src/records/log/edit-shots.js';
import { lastHead } from '../../../src/records/log/last-head.js';
import type { Night } from '../../../src/records/schemas/shot-log.js';

const TONIGHT = '2026-03-31';
const before = {
  on: TONIGHT,
  lane: 'dry',
  games: 3,
  targetBoard: 14,
  patternFt: 40,
  readingErrors: { pinsBoards: 1 },
};
const shot = (pinsBoard: number) => ({ pinsBoard });

describe('headOf: what goes on from the line before', () => {
  test('all of it on the same evening', () => {
    const { head, carried } = headOf({ on: TONIGHT }, before);
    expect(head).toEqual(before);
    expect(carried).toEqual(['lane', 'games', 'targetBoard', 'patternFt', 'readingErrors']);
  });

  test('what is typed takes its place', () => {
    expect(headOf({ on: TONIGHT, games: 6 }, before).head).toEqual({ ...before, games: 6 });
  });

  test('games and pattern end with the lane', () => {
    const { games: _, patternFt: __, ...rest } = before;
    expect(headOf({ on: TONIGHT, lane: 'long' }, before).head).toEqual({ ...rest, lane: 'long' });
  });

  test('on another evening only how far off readings may be', () => {
    const { head, carried } = headOf({ on: '2026-04-07' }, before);
    expect(head).toEqual({ on: '2026-04-07', readingErrors: { pinsBoards: 1 } });
    expect(carried).toEqual(['readingErrors']);
  });

  test('reading errors add up one by one, and are taken back all at once', () => {
    const errors = (readingErrors: object) =>
      headOf({ on: TONIGHT, readingErrors }, before).head.readingErrors;
    expect(errors({ flareIn: 1 })).toEqual({ pinsBoards: 1, flareIn: 1 });
    expect(errors({})).toBeUndefined();
  });

  test('nothing where nothing was logged', () => {
    expect(headOf({ on: TONIGHT }, null)).toEqual({ head: { on: TONIGHT }, carried: [] });
  });
});

describe('lastHead', () => {
  const night = (head: object): Night => ({ lane: 'dry', shots: [shot(17)], ...head });

  test('is of this ball on the same evening', () => {
    const own = [night({ on: TONIGHT, games: 2 })];
    expect(lastHead(own, [[night({ on: TONIGHT, games: 9 })]], TONIGHT)).toMatchObject({ games: 2 });
  });

  test('is of the same evening, whatever was logged of other evenings since', () => {
    const own = [night({ on: TONIGHT, games: 2 }), night({ on: '2026-01-01' }), night({})];
    expect(lastHead(own, [], TONIGHT)).toEqual({ on: TONIGHT, lane: 'dry', games: 2 });
  });

  test('else of the other ball with which the oil had seen most games, without its target', () => {
    const others = [
      [night({ on: TONIGHT, games: 3, targetBoard: 12 })],
      [night({ on: TONIGHT, games: 6, targetBoard: 15 })],
      [night({ on: '2026-01-01', games: 50 })],
    ];
    expect(lastHead([night({ on: '2026-01-01' })], others, TONIGHT)).toEqual({
      on: TONIGHT,
      lane: 'dry',
      games: 6,
    });
  });

  test('else of this ball on another evening, else of the latest of any', () => {
    expect(lastHead([night({ on: '2026-01-01' })], [[night({ on: '2026-02-02' })]], TONIGHT)).toMatchObject({
      on: '2026-01-01',
    });
    expect(
      lastHead([], [[night({ on: '2026-01-01' })], [night({ on: '2026-02-02' })]], TONIGHT),
    ).toMatchObject({ on: '2026-02-02' });
    expect(lastHead([], [], TONIGHT)).toBeNull();
  });
});

describe('the nights of a log', () => {
  const head = { on: TONIGHT, lane: 'dry', targetBoard: 14 };
  const nights = [17, 18, 19].reduce<readonly Night[]>((all, pins) => addShot(all, head, shot(pins)), []);
  const moved = addShot(nights, { ...head, targetBoard: 15 }, shot(20));

  test('a shot joins the last night where that says the same, else it begins one', () => {
    expect(nights).toEqual([{ ...head, shots: [shot(17), shot(18), shot(19)] }]);
    expect(moved.map(({ targetBoard, shots }) => [targetBoard, shots.length])).toEqual([
      [14, 3],
      [15, 1],
    ]);
    expect(addShot(moved, head, shot(21))).toHaveLength(3); // back at the first target: order is kept
    expect(shotCount(moved)).toBe(4);
  });

  test('shots are found by their number over all nights, the last without one', () => {
    expect(shotAt(moved, 2)).toMatchObject({ number: 2, shot: shot(18) });
    expect(shotAt(moved)).toMatchObject({ number: 4, shot: shot(20), night: { targetBoard: 15 } });
  });

  test('a night goes with its last shot', () => {
    expect(withoutShot(moved, 4)).toEqual(nights);
    expect(withoutShot(moved, 1)[0].shots).toEqual([shot(18), shot(19)]);
  });

  test('a change of a shot changes what is typed of its whole night', () => {
    const [first, second] = withChangedShot(moved, 2, shot(10), { lane: 'long' });
    expect(first).toEqual({ ...head, lane: 'long', shots: [shot(17), shot(10), shot(19)] });
    expect(second).toBe(moved[1]);
  });

  test.each([0, 5, -1])('a number that no shot has is refused: %d', (number) => {
    expect(() => shotAt(moved, number)).toThrow('the shot must be one of 1 to 4');
    expect(() => withoutShot([], number)).toThrow('a log without shots');
  });

  test('withTyped: what is typed takes its place, what was not seen goes', () => {
    const old = { laydownBoard: 20, pinsBoard: 17, note: 'late', confirmed: true as const };
    expect(withTyped(old, { laydownBoard: 21 }, [])).toEqual({
      laydownBoard: 21,
      pinsBoard: 17,
      note: 'late',
    });
    expect(withTyped(old, { gutter: true }, ['laydownBoard'])).toEqual({ gutter: true, note: 'late' });
    expect(withTyped({ gutter: true }, { pinsBoard: 3 }, [])).toEqual({ pinsBoard: 3 });
  });
});
