import { describe, expect, test } from 'vitest';
import { BOARD, LANE_LENGTH, LANE_WIDTH } from '../../../src/base/constants.js';
import { FOOT, from } from '../../../src/base/units.js';
import { filmAt } from '../../../src/motion/kernel/film.js';
import { boardToX } from '../../../src/motion/lane/boards.js';
import { layOil, oiledLane } from '../../../src/motion/lane/oil.js';
import type { Surface } from '../../../src/motion/lane/surface.js';
import { amountOf, burnt, type Traffic, wearOf } from '../../../src/motion/lane/wear.js';
import { expectWithin } from '../../support/bodies.js';
import { demoPattern } from '../../support/patterns.js';

const endY = from(40, FOOT);
const traffic: Traffic = {
  games: 24,
  track: [
    { y: 0, x: boardToX(20) },
    { y: endY, x: boardToX(9) },
    { y: LANE_LENGTH, x: boardToX(17.5) },
  ],
  halfWidth: 6 * BOARD,
  endY,
  carryLength: from(8, FOOT),
};
const rates = { burnPerGame: 0.015, carriedDown: 0.05 };
const used = { ...demoPattern, traffic };
const fresh = oiledLane(demoPattern);
const worn = oiledLane(used, rates);
const amountOn = (lane: Surface): number => amountOf((x, y) => filmAt(lane, x, y));

describe('wear of an oil pattern', () => {
  test('oil is neither made nor lost: what left the track was carried down or carried off', () => {
    // an even film of 20 units: taken in closed form, film × track's area × burnt
    const even = () => 20;
    const { taken, laid } = wearOf(even, traffic);
    // (1 − u²)² has the area 16/15 of its half width (exact); the track stays on the lane
    const track = 20 * endY * ((16 / 15) * traffic.halfWidth);
    expectWithin(amountOf(taken) / track, 1, 1e-4);
    expectWithin(amountOf(laid) / amountOf(taken), 1, 1e-12);
  });

  test('the oil on a lane is its film’s mean times its area: of a film that goes up straight, the film in the middle', () => {
    const film = (x: number, y: number): number => 20 + 10 * x + y;
    expectWithin(amountOf(film) / (LANE_WIDTH * LANE_LENGTH), film(0, LANE_LENGTH / 2), 1e-12);
  });

  test('what is taken is most in the middle of the track, (1 − u²)² of it to the sides, nothing past track and pattern', () => {
    const { taken, laid } = wearOf(() => 20, traffic);
    // straight between the points of the track, and on past its last as it came
    for (const [y, board] of [
      [0, 20],
      [endY / 4, 17.25],
      [endY, 9],
    ] as const) {
      const x = boardToX(board);
      expectWithin(taken(x, y), 20, 1e-9);
      for (const u of [-0.8, -0.3, 0.5])
        expectWithin(taken(x + u * traffic.halfWidth, y), 20 * (1 - u * u) ** 2, 1e-9);
      for (const u of [-1.01, 1.01]) expect(taken(x + u * traffic.halfWidth, y)).toBe(0);
      expect(laid(x, y)).toBe(0);
    }
    expect(taken(boardToX(9), endY + 0.01)).toBe(0);
  });

  test('carried oil lies in the track past the pattern, ever less, in a straight line to nothing', () => {
    const { laid } = wearOf(() => 20, traffic);
    const middle = (past: number): number => {
      const y = endY + past * traffic.carryLength;
      return laid(boardToX(9 + ((17.5 - 9) * (y - endY)) / (LANE_LENGTH - endY)), y);
    };
    const first = middle(1e-9);
    for (const past of [0.25, 0.5, 0.9]) expectWithin(middle(past) / first, 1 - past, 1e-6);
    expect([middle(1), middle(1.2)]).toEqual([0, 0]);
    expect(wearOf(() => 20, { ...traffic, carryLength: 1e-9 }).laid(0, endY)).toBe(0); // no room for any
  });

  test('a track of two points goes on in its line past both ends', () => {
    const { taken } = wearOf(() => 20, {
      ...traffic,
      endY: LANE_LENGTH,
      track: [
        { y: 4, x: 0.1 },
        { y: 8, x: -0.1 },
      ],
    });
    for (const [y, x] of [
      [2, 0.2],
      [10, -0.2],
    ] as const)
      expectWithin(taken(x, y), 20, 1e-9);
  });

  test('the film the ball meets has lost what was taken, less what was carried down', () => {
    const share = burnt(traffic, rates);
    const all = amountOn(fresh);
    const takenOff = (carriedDown: number): number =>
      all - amountOn(oiledLane(used, { ...rates, carriedDown }));
    const taken = takenOff(0);
    expect(taken).toBeGreaterThan(0.05 * all);
    expect(taken).toBeLessThan(share * all);
    // smearing at the edges moves oil over the lane's edge, at most a thousandth
    expectWithin(takenOff(0.05) / taken, 0.95, 1e-3);
    expectWithin(takenOff(1) / taken, 0, 1e-2);
  });

  test('no games leave the lane as it was, to the last bit', () => {
    const unused = oiledLane({ ...demoPattern, traffic: { ...traffic, games: 0 } }, rates);
    const bowled = oiledLane(used);
    for (let x = -0.5; x <= 0.5; x += 0.0371)
      for (let y = 0; y < LANE_LENGTH; y += 0.173) {
        expect(filmAt(unused, x, y)).toBe(filmAt(fresh, x, y));
        expect(filmAt(bowled, x, y)).toBe(filmAt(fresh, x, y));
      }
  });

  test('the track dries most in its middle, nothing happens beside it, and oil appears past the end', () => {
    const middle = { x: boardToX(14.5), y: endY / 2 };
    const left = (x: number, y: number): number => filmAt(worn, x, y) / filmAt(fresh, x, y);
    // averaging over a board and a foot and a half rounds the track's top by under 1 %
    expectWithin(left(middle.x, middle.y), 1 - burnt(traffic, rates), 0.01);
    expect(left(middle.x + 3 * BOARD, middle.y)).toBeGreaterThan(left(middle.x, middle.y));
    expectWithin(left(boardToX(30), middle.y), 1, 1e-12);
    expect(filmAt(fresh, boardToX(9.5), endY + from(3, FOOT))).toBe(0);
    expect(filmAt(worn, boardToX(9.5), endY + from(3, FOOT))).toBeGreaterThan(0.2);
    expect(filmAt(worn, boardToX(9.5), endY + from(11, FOOT))).toBe(0);
  });

  test('a game takes its share of what is left, and an endless league leaves nothing', () => {
    const one = burnt({ ...traffic, games: 1 }, rates);
    expectWithin(one, 0.015, 1e-15);
    expectWithin(1 - burnt({ ...traffic, games: 2 }, rates), (1 - one) ** 2, 1e-15);
    expectWithin(burnt({ ...traffic, games: 1e5 }, rates), 1, 1e-15);
  });

  test('the film never turns negative, however much is bowled', () => {
    for (const games of [1, 20, 300]) {
      const film = layOil({ ...used, traffic: { ...traffic, games } });
      // a spline over nodes that are not negative is not
      for (const burnPerGame of [0.0075, 0.015, 0.03])
        for (const carriedDown of [0, 0.05])
          expect(film({ burnPerGame, carriedDown }).every((units) => units >= -1e-12)).toBe(true);
    }
  });
});
