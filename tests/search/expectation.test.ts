import { describe, expect, test } from 'vitest';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { expectation } from '../../src/search/expectation.js';
import { krige } from '../../src/search/scoring/krige.js';
import { layoutAt, rowOf } from '../support/outcomes.js';

const WORLDS = 12;
const luck = (world: number): number => 9 * Math.sin(5 * world);
const truth = ({ drillingAngleDeg, pinToPapIn }: LayoutNumbers): number =>
  70 - ((drillingAngleDeg - 40) / 15) ** 2 - 4 * (pinToPapIn - 4) ** 2;

const LAYOUTS = [10, 25, 40, 55, 70, 85].flatMap((angle) => [3, 4, 5].map((pin) => layoutAt(angle, pin, 40)));
const BETWEEN = [layoutAt(33, 3.4, 40), layoutAt(62, 4.6, 40), layoutAt(18, 4.2, 40)];
const rolled = (layouts: readonly LayoutNumbers[], score = truth) =>
  layouts.map((layout) =>
    rowOf(
      layout,
      Array.from({ length: WORLDS }, (_, world) => score(layout) + luck(world)),
    ),
  );
const cacheOf = (rows: ReturnType<typeof rolled>) => ({ known: () => rows });
const meanLuck = Array.from({ length: WORLDS }, (_, world) => luck(world)).reduce((a, b) => a + b) / WORLDS;
const surveyBy = (expected: (layout: LayoutNumbers) => number | undefined) => ({
  expected,
  scores: () => undefined,
});

describe('expectation', () => {
  const rows = rolled(LAYOUTS);
  const plain = expectation(cacheOf(rows), null);

  test('by physics alone is the leader’s mean score and, smoothed over layouts, what others lack to it', () => {
    const smooth = krige(
      rows.map(({ layout, worlds }) => ({ layout, value: worlds.meanScore - (70 + meanLuck), variance: 0 })),
    );
    for (const layout of [...LAYOUTS, ...BETWEEN])
      expect(plain(layout)).toBeCloseTo(70 + meanLuck + smooth(layout), 8);
    for (const layout of BETWEEN) expect(Math.abs(plain(layout) - truth(layout) - meanLuck)).toBeLessThan(2);
  });

  test('a regression that is right but for what it says of all alike is believed everywhere', () => {
    const by = expectation(
      cacheOf(rows),
      surveyBy((layout) => truth(layout) + 17),
    );
    for (const layout of [...LAYOUTS, ...BETWEEN, layoutAt(90, 6, 70)])
      expect(by(layout)).toBeCloseTo(truth(layout) + meanLuck, 6);
  });

  test('what it errs by, smoothly, is put right near layouts that were rolled', () => {
    const by = expectation(
      cacheOf(rows),
      surveyBy((layout) => truth(layout) + 0.05 * layout.drillingAngleDeg),
    );
    for (const layout of BETWEEN) expect(Math.abs(by(layout) - truth(layout) - meanLuck)).toBeLessThan(0.3);
  });

  test('one that errs by more than layouts differ is not believed, nor one that does not know the leader', () => {
    const wrong = expectation(
      cacheOf(rows),
      surveyBy((layout) => -2 * truth(layout)),
    );
    const blind = expectation(
      cacheOf(rows),
      surveyBy((layout) => (truth(layout) === 70 ? undefined : truth(layout))),
    );
    for (const layout of BETWEEN) {
      expect(wrong(layout)).toBe(plain(layout));
      expect(blind(layout)).toBe(plain(layout));
    }
  });

  test('a layout that it does not know is taken for one like the leader', () => {
    const unknown = layoutAt(90, 6, 70);
    const by = expectation(
      cacheOf(rows),
      surveyBy((layout) => (layout === unknown ? undefined : truth(layout))),
    );
    expect(by(unknown)).toBeCloseTo(70 + meanLuck, 6);
  });

  test('what it says of single worlds takes luck out of what met few of them', () => {
    const own = (layout: LayoutNumbers, world: number): number =>
      6 * Math.cos(3 * world + layout.drillingAngleDeg + 7 * layout.pinToPapIn);
    const all = (layout: LayoutNumbers) =>
      Array.from({ length: WORLDS }, (_, world) => truth(layout) + luck(world) + own(layout, world));
    const few = LAYOUTS.map((layout, i) => rowOf(layout, i === 7 ? all(layout) : all(layout).slice(0, 3)));
    const by = (scores: (layout: LayoutNumbers) => readonly number[] | undefined) =>
      expectation(cacheOf(few), { expected: () => undefined, scores });
    const errorOf = (expects: (layout: LayoutNumbers) => number): number =>
      LAYOUTS.reduce((sum, layout) => {
        const mean = all(layout).reduce((a, b) => a + b) / WORLDS;
        return sum + Math.abs(expects(layout) - mean) / LAYOUTS.length;
      }, 0);
    expect(errorOf(by(all))).toBeLessThan(errorOf(by(() => undefined)) / 3);
  });
});
