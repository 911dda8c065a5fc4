import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { layoutsApart } from '../../src/search/candidates/pick-differing.js';
import { inOrder, type OrderRules, sizeBetween } from '../../src/search/order.js';
import { shareAbove } from '../../src/search/scoring/world-statistics.js';
import type { LayoutOutcomes } from '../../src/search/simulate-layouts.js';
import { layoutAt, type MadeUp, rowOf } from '../support/outcomes.js';

const rules: OrderRules = {
  ids: ['hookStartFt'],
  hasWish: true,
  scatter: { hookStartFt: 1, sharpnessDegPerFt: 1, totalHookBoards: 1 },
  byPractice: () => 0,
  clearanceIn: () => 1,
};

/** Far enough from one another to count as different, whichever. */
const LAYOUTS = [10, 40, 70].flatMap((angle) => [2.5, 3.5, 5.5].map((pin) => layoutAt(angle, pin, 50)));
const usual = (scores: readonly (number | null)[], madeUp: MadeUp = {}): LayoutOutcomes =>
  rowOf(MIDDLE_LAYOUT, scores, madeUp);
const evenly = (score: number, worlds = 20): number[] => Array.from({ length: worlds }, () => score);
const namesOf = (order: readonly LayoutOutcomes[], rows: Readonly<Record<string, LayoutOutcomes>>): string =>
  order.map((row) => Object.entries(rows).find(([, each]) => each === row)![0]).join(' ');

describe('sizeBetween', () => {
  test('is the mean difference over the worlds in which both reach the pins, in the units of answers', () => {
    const a = rowOf(LAYOUTS[0], [1, null, 1, 1], { hookStartFt: 39, totalHookBoards: 10 });
    const b = rowOf(LAYOUTS[1], [1, 1, null, 1], { hookStartFt: 37.5, totalHookBoards: 12 });
    const size = sizeBetween(a, b);
    expect(size.hookStartFt).toBeCloseTo(1.5, 12);
    expect(size.totalHookBoards).toBeCloseTo(-2, 12);
    expect(size.sharpnessDegPerFt).toBeCloseTo(0, 12);
  });
});

describe('inOrder', () => {
  test('where differences are seen the mean score decides', () => {
    const middle = usual(evenly(40));
    const rows = {
      a: rowOf(LAYOUTS[0], evenly(60), { hookStartFt: 39 }),
      b: rowOf(LAYOUTS[1], evenly(70), { hookStartFt: 42 }),
      c: rowOf(LAYOUTS[2], evenly(65), { hookStartFt: 45 }),
      middle,
    };
    expect(namesOf(inOrder(Object.values(rows), middle, rules), rows)).toBe('b c a middle');
  });

  test('what reaches the pins less often than the usual, by more than 3 in 100 worlds, comes after all that do', () => {
    const lost = (count: number, score: number): (number | null)[] =>
      Array.from({ length: 100 }, (_, i) => (i < count ? null : score));
    const middle = usual(lost(2, 40));
    const rows = {
      often: rowOf(LAYOUTS[0], lost(5, 50), { hookStartFt: 39 }),
      rarely: rowOf(LAYOUTS[1], lost(6, 99), { hookStartFt: 42 }),
      never: rowOf(LAYOUTS[2], lost(100, 99), { hookStartFt: 45 }),
      middle,
    };
    expect(namesOf(inOrder(Object.values(rows), middle, rules), rows)).toBe('often middle rarely never');
  });

  test('where none reaches them as often as the usual, which may not be drilled, they stand by their scores', () => {
    const rows = {
      a: rowOf(LAYOUTS[0], [50, null, null, 50], { hookStartFt: 39 }),
      b: rowOf(LAYOUTS[1], [null, null, 60, 60], { hookStartFt: 42 }),
    };
    expect(namesOf(inOrder(Object.values(rows), usual(evenly(40, 4)), rules), rows)).toBe('b a');
  });

  test('where no reaction is wished for, the usual leads if it is within a point of the best', () => {
    const ahead = (by: number) => rowOf(LAYOUTS[0], evenly(60 + by), { hookStartFt: 45 });
    const middle = usual(evenly(60), { hookStartFt: 39 });
    const first = (by: number, hasWish: boolean): LayoutOutcomes =>
      inOrder([ahead(by), middle], middle, { ...rules, hasWish })[0];
    expect(first(0.9, false)).toBe(middle);
    expect(first(1.1, false)).not.toBe(middle);
    expect(first(0.9, true)).not.toBe(middle);
    const lost = rowOf(MIDDLE_LAYOUT, [...evenly(60, 10), ...Array.from({ length: 10 }, () => null)]);
    expect(inOrder([ahead(0.9)], lost, { ...rules, hasWish: false })).toHaveLength(1);
  });

  describe('layouts that nobody could tell from the leader', () => {
    /** The usual is far behind and far off, so that it takes no part. */
    const middle = usual(evenly(10), { hookStartFt: 30 });
    const tied = (
      first: LayoutOutcomes,
      second: LayoutOutcomes,
      some: Partial<OrderRules> = {},
    ): readonly LayoutOutcomes[] => inOrder([first, second, middle], middle, { ...rules, ...some });
    const FAR = layoutAt(20, 5.5, 60);
    const NEAR = layoutAt(55, 3.5, 45);

    test('what is ahead in 55 % of worlds goes before what has the higher mean', () => {
      const leader = rowOf(FAR, [...evenly(60, 9), ...evenly(90, 11)]); // mean 76.5, ahead in 9 of 20
      const ahead = rowOf(NEAR, [...evenly(62, 9), ...evenly(88, 11)]);
      const surer = rowOf(NEAR, [...evenly(50, 9), ...evenly(91, 11)]);
      expect(tied(leader, surer)[0]).toBe(surer);
      expect(tied(leader, surer, { byPractice: ({ pinToPapIn }) => (pinToPapIn === 5.5 ? 99 : 0) })[0]).toBe(
        surer,
      );
      expect(tied(leader, ahead)[0]).toBe(leader);
    });

    test('then what is good under practice, by more than a point', () => {
      const [a, b] = [rowOf(FAR, evenly(60)), rowOf(NEAR, evenly(60))];
      const by = (points: number) => ({
        byPractice: ({ pinToPapIn }: { pinToPapIn: number }) => (pinToPapIn === 5.5 ? points : 0),
      });
      expect(tied(a, b, by(1.1))[0]).toBe(a);
      expect(tied(a, b, by(1))[0]).toBe(b); // nearer to the usual
      expect(tied(a, b, by(-1.1))[0]).toBe(b);
    });

    test('then what lies nearer to the usual', () => {
      expect(layoutsApart(NEAR, MIDDLE_LAYOUT)).toBeLessThan(layoutsApart(FAR, MIDDLE_LAYOUT) - 0.25);
      const [a, b] = [rowOf(FAR, evenly(60)), rowOf(NEAR, evenly(60))];
      expect(tied(a, b, { clearanceIn: ({ layout }) => layout.pinToPapIn })[0]).toBe(b);
    });

    test('then what keeps farther from the holes', () => {
      // as far from the usual, on either side of it
      const [a, b] = [rowOf(layoutAt(50, 3.5, 35), evenly(60)), rowOf(layoutAt(50, 5.5, 35), evenly(60))];
      expect(tied(a, b, { clearanceIn: ({ layout }) => layout.pinToPapIn })[0]).toBe(b);
      expect(tied(a, b, { clearanceIn: ({ layout }) => -layout.pinToPapIn })[0]).toBe(a);
    });

    test('last the mean score', () => {
      const half = [...evenly(60, 10), ...evenly(61, 10)];
      const [a, b] = [
        rowOf(layoutAt(50, 3.5, 35), [...evenly(61, 10), ...evenly(60, 10)]),
        rowOf(
          layoutAt(50, 5.5, 35),
          half.map((s, i) => (i === 19 ? s + 5 : s)),
        ),
      ];
      expect(tied(a, b)[0]).toBe(b);
    });

    test('one that would be seen stays behind, however near it is to the usual', () => {
      const leader = rowOf(FAR, evenly(61), { hookStartFt: 38 });
      const other = rowOf(NEAR, evenly(60), { hookStartFt: 38.5 });
      const unseen = rowOf(NEAR, evenly(60), { hookStartFt: 38.49 });
      expect(tied(leader, other)[0]).toBe(leader);
      // unseen it still is behind in every world
      expect(tied(leader, unseen)[0]).toBe(leader);
      expect(
        tied(leader, rowOf(NEAR, [...evenly(60, 10), ...evenly(61.9, 10)], { hookStartFt: 38.49 }))[0].layout,
      ).toBe(NEAR);
    });
  });

  test('a layout more than a point behind does not tie, though its difference is not seen', () => {
    const middle = usual(evenly(10), { hookStartFt: 30 });
    const leader = rowOf(layoutAt(20, 5.5, 60), evenly(60));
    // ahead of the leader in half of the worlds and good under practice, yet behind on the mean
    const behind = (by: number) =>
      rowOf(layoutAt(55, 3.5, 45), [...evenly(61, 10), ...evenly(59 - 2 * by, 10)]);
    const byPractice = ({ pinToPapIn }: { pinToPapIn: number }): number => (pinToPapIn === 3.5 ? 50 : 0);
    const order = (by: number) =>
      inOrder([leader, behind(by), middle], middle, { ...rules, byPractice }).map(({ layout }) => layout);
    expect(order(1.01).slice(0, 2)).toEqual([leader.layout, layoutAt(55, 3.5, 45)]);
    expect(order(0.99).slice(0, 2)).toEqual([layoutAt(55, 3.5, 45), leader.layout]); // tied: practice decides
  });

  test('of several that tie, those that are ahead of more of the others in most worlds stand higher', () => {
    const middle = usual(evenly(10), { hookStartFt: 30 });
    const row = (layout: LayoutNumbers, by: number) =>
      rowOf(layout, [...evenly(60 + by, 11), ...evenly(60 - (11 / 9) * by, 9)]); // one mean, ahead in 11 of 20 by what is added
    const rows = {
      a: row(LAYOUTS[0], 0.1),
      b: row(LAYOUTS[1], 0.3),
      c: row(LAYOUTS[2], 0.2),
      d: row(LAYOUTS[3], 0),
      middle,
    };
    const practiceTheOtherWay = {
      byPractice: ({ drillingAngleDeg, pinToPapIn }: LayoutNumbers) =>
        10 *
        LAYOUTS.findIndex(
          (each) => each.drillingAngleDeg === drillingAngleDeg && each.pinToPapIn === pinToPapIn,
        ),
    };
    const order = inOrder(Object.values(rows), middle, { ...rules, ...practiceTheOtherWay });
    expect(namesOf(order, rows)).toBe('b c a d middle');
  });

  test('where worlds go round in a circle the first is followed by what it is not behind, then by what it is behind', () => {
    const middle = usual([10, 22, 0], { hookStartFt: 30 });
    const rows = {
      a: rowOf(LAYOUTS[0], [30, 20, 20], { hookStartFt: 36 }), // behind b
      b: rowOf(LAYOUTS[1], [5, 21, 21], { hookStartFt: 39 }), // behind the usual, so it may not be first
      c: rowOf(LAYOUTS[2], [11, 1, 1], { hookStartFt: 42 }), // behind a, as the usual is
      middle,
    };
    expect(namesOf(inOrder(Object.values(rows), middle, rules), rows)).toBe('a middle c b');
    // none of them is sure beside a usual layout that all are behind
    const better = usual(evenly(25, 3), { hookStartFt: 30 });
    const all = { ...rows, middle: better };
    expect(namesOf(inOrder([rows.a, rows.b, rows.c, better], better, rules), all)).toBe('middle a b c');
  });

  test('only those that differ are listed, and the runner-up is among those', () => {
    const middle = usual(evenly(40), { hookStartFt: 30 });
    const [first, beside] = [layoutAt(20, 5.5, 60), layoutAt(25, 5.5, 60)];
    const rows = {
      // the runner-up that is left after the twin has gone is ahead of the leader in most worlds, though not on the mean
      leader: rowOf(first, [...evenly(60, 12), ...evenly(99, 8)], { hookStartFt: 36 }),
      twin: rowOf(beside, [...evenly(59, 12), ...evenly(98, 8)], { hookStartFt: 36.6 }),
      other: rowOf(layoutAt(70, 3.5, 50), [...evenly(65, 12), ...evenly(70, 8)], { hookStartFt: 42 }),
      middle,
    };
    expect(namesOf(inOrder(Object.values(rows), middle, rules), rows)).toBe('other leader middle');
  });

  const score = fc.option(fc.integer({ min: 0, max: 12 }), { freq: 8, nil: null });
  const made = fc.record({
    scores: fc.array(score, { minLength: 6, maxLength: 6 }),
    hook: fc.integer({ min: 0, max: 8 }),
  });
  const madeUp = fc.record({
    usual: fc.record({ scores: fc.array(fc.integer({ min: 0, max: 12 }), { minLength: 6, maxLength: 6 }) }),
    others: fc.array(made, { minLength: 1, maxLength: LAYOUTS.length }),
  });

  test('whatever worlds bring: nothing is listed twice or lost, and the first is behind neither the usual nor a runner-up that reaches the pins as often', () => {
    fc.assert(
      fc.property(madeUp, ({ usual: { scores }, others }) => {
        const middle = usual(scores);
        const rows = others.map(({ scores, hook }, i) =>
          rowOf(LAYOUTS[i], scores, { hookStartFt: 36 + hook / 4 }),
        );
        const order = inOrder([...rows, middle], middle, rules);
        expect(new Set(order).size).toBe(order.length);
        for (const row of [...rows, middle])
          expect(order.includes(row) || order.some((each) => layoutsApart(each.layout, row.layout) < 1)).toBe(
            true,
          );
        const [first, second] = order;
        const comesThrough = ({ worlds }: LayoutOutcomes): boolean =>
          worlds.arrives >= middle.worlds.arrives - 0.03;
        expect(comesThrough(first)).toBe(true);
        expect(shareAbove(first.worlds, middle.worlds)).toBeGreaterThanOrEqual(0.5);
        if (second && comesThrough(second))
          expect(shareAbove(first.worlds, second.worlds)).toBeGreaterThanOrEqual(0.5);
      }),
      { numRuns: 400, seed: 1 },
    );
  });

  test('the order does not depend on the order in which rows are given, where their scores differ', () => {
    const middle = usual(evenly(5));
    fc.assert(
      fc.property(fc.shuffledSubarray([1, 2, 3, 4, 5, 6], { minLength: 6 }), (places) => {
        const rows = [1, 2, 3, 4, 5, 6].map((i) =>
          rowOf(LAYOUTS[i], evenly(40 + i), { hookStartFt: 30 + 3 * i }),
        );
        const order = inOrder([...places.map((i) => rows[i - 1]), middle], middle, rules);
        expect(order.map(({ worlds }) => worlds.meanScore)).toEqual([46, 45, 44, 43, 42, 41, 5]);
      }),
      { numRuns: 50, seed: 1 },
    );
  });
});
