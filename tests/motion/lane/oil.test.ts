import { describe, expect, test } from 'vitest';
import { BOARD, LANE_LENGTH, LANE_WIDTH } from '../../../src/base/constants.js';
import { FOOT } from '../../../src/base/units.js';
import { filmAt } from '../../../src/motion/kernel/film.js';
import { type OilPattern, oiledLane } from '../../../src/motion/lane/oil.js';
import { frictionUnder, surfaceOf } from '../../../src/motion/lane/surface.js';
import { expectWithin, seeded } from '../../support/bodies.js';
import { demoPattern } from '../../support/patterns.js';

const lane = oiledLane(demoPattern);
const only = (...zones: OilPattern['zones']) => oiledLane({ ...demoPattern, zones });
const whole = { fromX: -LANE_WIDTH / 2, toX: LANE_WIDTH / 2 };

describe('film of an oil pattern', () => {
  test('is what the zone says, well inside it and well outside', () => {
    expectWithin(filmAt(lane, 0, 20 * FOOT), 26, 1e-9); // halfway from 40 down to 12
    expectWithin(filmAt(lane, 14 * BOARD, 16 * FOOT), 7, 1e-9); // only the wide zone lies there
    expect(filmAt(lane, 0, 45 * FOOT)).toBe(0);
  });

  test('is that of the thickest zone where zones overlap', () => {
    const thin = { ...whole, fromY: 0, toY: LANE_LENGTH, film: 5, filmEnd: 5 };
    const thick = { ...thin, film: 9, filmEnd: 9 };
    expectWithin(filmAt(only(thin, thick, thin), 0.1, 7), 9, 1e-12);
  });

  test('has no seam where two zones of the same film abut', () => {
    const near = { ...whole, fromY: 0, toY: 6, film: 20, filmEnd: 20 };
    const far = { ...near, fromY: 6, toY: 12 };
    const joined = only(near, far);
    for (let y = 5; y < 7; y += 0.01) expectWithin(filmAt(joined, 0, y), 20, 1e-12);
  });

  test('is full up to the foul line and the edges of the lane', () => {
    const all = only({ ...whole, fromY: 0, toY: LANE_LENGTH, film: 20, filmEnd: 20 });
    for (const x of [-LANE_WIDTH / 2, 0, LANE_WIDTH / 2])
      for (const y of [0, LANE_LENGTH]) expectWithin(filmAt(all, x, y), 20, 1e-12);
  });

  test('falls to half on a zone’s edge and keeps its whole amount of oil', () => {
    const length = 20 * FOOT;
    const half = only({ ...whole, fromY: 0, toY: length, film: 20, filmEnd: 20 });
    expectWithin(filmAt(half, 0, length), 10, 1e-12);
    let amount = 0;
    for (let y = 0.0005; y < 8; y += 0.001) amount += 0.001 * filmAt(half, 0, y);
    expectWithin(amount, 20 * length, 0.02); // the sum's own step
  });

  test('places an edge that misses the grid to a hundredth of its smear', () => {
    for (const length of [6, 6.04, 6.08]) {
      const half = only({ ...whole, fromY: 0, toY: length, film: 20, filmEnd: 20 });
      let y = 5;
      while (filmAt(half, 0, y) > 10) y += 0.001;
      expectWithin(y, length, demoPattern.edgeLength / 100);
    }
  });

  test('changes as smoothly as a zone’s edges move: by no more than a smeared edge is steep', () => {
    const { edgeLength, edgeWidth } = demoPattern;
    const film = 20;
    const byLength = (length: number): number =>
      filmAt(only({ ...whole, fromY: 0, toY: length, film, filmEnd: film }), 0, 6);
    const byWidth = (edge: number): number =>
      filmAt(only({ fromX: edge, toX: 0.4, fromY: 0, toY: LANE_LENGTH, film, filmEnd: film }), 0, 6);
    const [alongBy, acrossBy] = [edgeLength / 200, edgeWidth / 200];
    for (let i = -100; i < 100; i++) {
      const [along, across] = [6 + i * alongBy, i * acrossBy];
      expectWithin(byLength(along + alongBy), byLength(along), film / 200 + 1e-9);
      expectWithin(byWidth(across + acrossBy), byWidth(across), film / 200 + 1e-9);
    }
  });

  test('has no jump and no kink anywhere (C1): slopes a tenth of a millimetre apart agree', () => {
    const random = seeded(8);
    const h = 1e-4;
    for (let n = 0; n < 3000; n++) {
      const x = (random() - 0.5) * LANE_WIDTH;
      const y = random() * 13;
      const slope = (at: number): number => (filmAt(lane, x, at + h) - filmAt(lane, x, at)) / h;
      // The second derivative of the spline is at most 2·40 units over a half-foot squared.
      expectWithin(slope(y + h), slope(y), (h * 4 * 40) / (FOOT / 2) ** 2);
      const across = (at: number): number => (filmAt(lane, at + h, y) - filmAt(lane, at, y)) / h;
      expectWithin(across(x + h), across(x), (h * 4 * 40) / (BOARD / 2) ** 2);
    }
  });

  test('never leaves the range of the zones’ films, and stays finite off the lane', () => {
    for (let x = -1; x <= 1; x += 0.037)
      for (let y = -2; y < 25; y += 0.173) {
        expect(filmAt(lane, x, y)).toBeGreaterThanOrEqual(0);
        expect(filmAt(lane, x, y)).toBeLessThanOrEqual(40);
      }
    expect(filmAt(lane, Number.NaN, 3)).toBeNaN();
  });
});

describe('friction under a film', () => {
  test('goes from dry to oiled, always falling, a factor e in each film scale', () => {
    expectWithin(frictionUnder(lane.stretches[0], 0), 0.2, 1e-15);
    expectWithin(frictionUnder(lane.stretches[0], 8), 0.04 + 0.16 / Math.E, 1e-15);
    expectWithin(frictionUnder(lane.stretches[0], 1000), 0.04, 1e-15);
    for (let film = 0; film < 60; film++)
      expect(frictionUnder(lane.stretches[0], film + 1)).toBeLessThan(frictionUnder(lane.stretches[0], film));
  });

  test('can be changed without laying the oil anew', () => {
    const other = surfaceOf(lane.film, { oiled: 0.03, dry: 0.25, filmScale: 10 });
    expect(other.film).toBe(lane.film);
    expectWithin(frictionUnder(other.stretches[0], 10), 0.03 + 0.22 / Math.E, 1e-15);
  });
});
