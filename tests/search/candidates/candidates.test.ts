import { describe, expect, test } from 'vitest';
import { DEGREE, INCH } from '../../../src/base/units.js';
import { mouthRadius } from '../../../src/layout/hole.js';
import { placeLayout } from '../../../src/layout/placement.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import type { Practice } from '../../../src/records/shared/shared-data.js';
import {
  type Candidate,
  gridCandidates,
  isDrilledByTrade,
  keyOf,
  layoutOf,
  markClearanceIn,
  steps,
} from '../../../src/search/candidates/candidates.js';
import { drilledGrid } from '../../../src/search/candidates/drilled-grid.js';
import { madeUpSetting } from '../../support/made-up-setting.js';
import { layoutAt } from '../../support/outcomes.js';

const RADIUS = 4.297 * INCH;
const practice = {
  drillingAngleDeg: { least: 10, most: 90 },
  valAngleDeg: { least: 20, most: 70 },
  pinToPapIn: { least: 2, most: 6 },
} as Practice;

/** Of a right-angled triangle on a sphere: sin(buffer) = sin(pin to PAP) · sin(VAL angle). */
const bufferIn = (pinToPapIn: number, valAngleDeg: number): number =>
  (Math.asin(Math.sin((pinToPapIn * INCH) / RADIUS) * Math.sin(valAngleDeg * DEGREE)) * RADIUS) / INCH;

describe('layoutOf', () => {
  const candidate = {
    pinToPapIn: 4.5,
    pinBufferIn: bufferIn(4.5, 35.2),
    drillingAngleDeg: 50,
    side: 'above',
  } as const;

  test('has the VAL angle of the buffer, to the whole degree, below the VAL on the other side of it', () => {
    expect(layoutOf(candidate, practice, RADIUS)).toEqual(layoutAt(50, 4.5, 35));
    expect(layoutOf({ ...candidate, side: 'below' }, practice, RADIUS)).toEqual(layoutAt(50, 4.5, 145));
  });

  test('is none where no pin can lie so, or the trade does not drill it', () => {
    expect(layoutOf({ ...candidate, pinBufferIn: 4.6 }, practice, RADIUS)).toBeNull();
    expect(layoutOf({ ...candidate, drillingAngleDeg: 95 }, practice, RADIUS)).toBeNull();
    expect(layoutOf({ ...candidate, pinBufferIn: 0.5 }, practice, RADIUS)).toBeNull();
  });
});

test.each([
  { layout: layoutAt(10, 2, 20), is: true },
  { layout: layoutAt(90, 6, 70), is: true },
  { layout: layoutAt(50, 4, 160), is: true }, // 20° on the other side
  { layout: layoutAt(50, 4, 110), is: true },
  { layout: layoutAt(9, 4, 35), is: false },
  { layout: layoutAt(91, 4, 35), is: false },
  { layout: layoutAt(50, 1.9, 35), is: false },
  { layout: layoutAt(50, 6.1, 35), is: false },
  { layout: layoutAt(50, 4, 19), is: false },
  { layout: layoutAt(50, 4, 71), is: false },
  { layout: layoutAt(50, 4, 109), is: false },
  { layout: layoutAt(50, 4, 161), is: false },
])('isDrilledByTrade: $layout is within the ranges: $is', ({ layout, is }) => {
  expect(isDrilledByTrade(layout, practice)).toBe(is);
});

test('steps go from least to most, evenly, though tenths do not add up', () => {
  expect(steps({ least: 2, most: 3 }, 0.25)).toEqual([2, 2.25, 2.5, 2.75, 3]);
  expect(steps({ least: 2, most: 3.1 }, 0.5)).toEqual([2, 2.5, 3]);
  expect(steps({ least: 0, most: 0.3 }, 0.1)).toHaveLength(4);
  expect(steps({ least: 5, most: 5 }, 1)).toEqual([5]);
});

describe('gridCandidates', () => {
  const step = { arcIn: 0.5, angleDeg: 20 };
  const layouts = (sides: readonly Candidate['side'][]) =>
    gridCandidates(practice, RADIUS, step, sides).map((candidate) => layoutOf(candidate, practice, RADIUS)!);

  test('are all layouts of the grid that the trade drills, each once', () => {
    const found = layouts(['above']);
    const keys = new Set(found.map(keyOf));
    expect(keys.size).toBe(found.length);
    for (const layout of found) expect(isDrilledByTrade(layout, practice)).toBe(true);
    // by the sphere's triangle, from the angles
    let wanted = 0;
    for (let pin = 2; pin <= 6; pin += 0.5)
      for (let buffer = 0; buffer <= pin; buffer += 0.5) {
        const sine = Math.sin((buffer * INCH) / RADIUS) / Math.sin((pin * INCH) / RADIUS);
        const angle = Math.round(Math.asin(Math.min(1, sine)) / DEGREE);
        if (angle >= 20 && angle <= 70) wanted += 5; // 10, 30, 50, 70, 90°
      }
    expect(found).toHaveLength(wanted);
  });

  test('on both sides of the VAL are mirrored about it', () => {
    const [above, below, both] = [layouts(['above']), layouts(['below']), layouts(['above', 'below'])];
    const mirrored = above.map((layout) => keyOf({ ...layout, valAngleDeg: 180 - layout.valAngleDeg }));
    expect(below.map(keyOf)).toEqual(mirrored);
    expect(both).toEqual([...above, ...below]);
  });

  test('in steps so fine that several are written alike keep the first of those', () => {
    const fine = gridCandidates(
      { ...practice, drillingAngleDeg: { least: 50, most: 50 }, pinToPapIn: { least: 4, most: 4 } },
      RADIUS,
      { arcIn: 1 / 64, angleDeg: 5 },
      ['above'],
    );
    const written = fine.map((candidate) => layoutOf(candidate, practice, RADIUS)!.valAngleDeg);
    expect(written).toEqual(Array.from({ length: 51 }, (_, i) => 20 + i));
    const first = fine[10].pinBufferIn;
    expect(first).toBeLessThanOrEqual(bufferIn(4, 30));
    expect(first).toBeGreaterThan(bufferIn(4, 29.5) - 1e-9);
    expect(first).toBeLessThan(bufferIn(4, 29.5) + 1 / 64);
  });
});

test('keys of layouts are theirs alone', () => {
  const keys = [layoutAt(50, 4.5, 35), layoutAt(35, 4.5, 50), layoutAt(50, 4, 35), layoutAt(50, 4.5, 36)].map(
    keyOf,
  );
  expect(new Set(keys).size).toBe(4);
  expect(keyOf(layoutAt(50, 4.5, 35))).toBe(keys[0]);
});

test('markClearanceIn is the arc from a mark to the nearest hole’s edge', () => {
  const { ball } = madeUpSetting(() => ({})).setting;
  const { radius } = ball.published;
  for (const layout of [layoutAt(50), layoutAt(80, 3, 60), layoutAt(20, 5.5, 25)]) {
    const marks = placeLayout(toLayout(layout, radius), ball.pap_B, ball.pinToMarker);
    const least = (u: readonly number[]): number =>
      Math.min(
        ...ball.holes.map((hole) => {
          const chord = Math.hypot(...u.map((x, i) => x - hole.mouth_B[i])); // of unit vectors: 2 sin(angle/2)
          return ((2 * Math.asin(chord / 2) - Math.asin(mouthRadius(hole) / radius)) * radius) / INCH;
        }),
      );
    const clearance = markClearanceIn(layout, ball);
    expect(clearance.pin).toBeCloseTo(least(marks.pin_B), 10);
    expect(clearance.marker).toBeCloseTo(least(marks.marker_B), 10);
    expect(clearance.pin).not.toBeCloseTo(clearance.marker, 2);
  }
});

describe('drilledGrid', () => {
  const { setting } = madeUpSetting(() => ({}));
  const step = { arcIn: 1, angleDeg: 20 };

  test('has the layouts of the candidates', () => {
    const { radius } = setting.ball.published;
    const want = gridCandidates(setting.practice, radius, step, ['above']).map((each) =>
      layoutOf(each, setting.practice, radius),
    );
    expect(want.length).toBeGreaterThan(30);
    expect(drilledGrid(step, setting)).toEqual(want);
  });

  test('of a ball on which nothing shows a direction has one drilling angle, which stands for none', () => {
    const all = drilledGrid(step, setting);
    const none = drilledGrid(step, { ...setting, ball: { ...setting.ball, marker: null } });
    expect(new Set(none.map(({ drillingAngleDeg }) => drillingAngleDeg))).toEqual(new Set([50]));
    const without = (layouts: readonly { pinToPapIn: number; valAngleDeg: number }[]) =>
      new Set(layouts.map(({ pinToPapIn, valAngleDeg }) => `${pinToPapIn} ${valAngleDeg}`));
    expect(without(none)).toEqual(without(all));
  });
});
