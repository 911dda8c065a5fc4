import { mean, sampleVariance } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { controlVariates } from '../../../src/search/scoring/control-variates.js';

const layout = (drillingAngleDeg: number) => ({ drillingAngleDeg, pinToPapIn: 4, valAngleDeg: 40 });
/** Over the worlds in which it reached the pins. */
const meanOf = (scores: readonly (number | null)[]): number => mean(scores.filter((score) => score !== null));
const arrivesOf = (scores: readonly (number | null)[]): number =>
  scores.filter((score) => score !== null).length / scores.length;
const met = (angle: number, scores: readonly (number | null)[]) => ({
  layout: layout(angle),
  worlds: { outcomes: [], scores, meanScore: meanOf(scores), arrives: arrivesOf(scores) },
});
const luck = (world: number): number => 20 * Math.sin(3.7 * world);
const worlds = (count: number, score: (world: number) => number): number[] =>
  Array.from({ length: count }, (_, world) => score(world));

describe('controlVariates', () => {
  test('luck that takes all alike drops out, however many worlds each has met', () => {
    const { leader, rows } = controlVariates([
      met(
        10,
        worlds(3, (w) => 55 + luck(w)),
      ),
      met(
        20,
        worlds(12, (w) => 60 + luck(w)),
      ),
      met(
        30,
        worlds(7, (w) => 52 + luck(w)),
      ),
    ]);
    expect(leader.layout).toEqual(layout(20));
    [-5, 0, -8].forEach((value, i) => {
      expect(rows[i].value).toBeCloseTo(value, 10);
      expect(rows[i].variance).toBeCloseTo(0, 10);
    });
  });

  test('the leader is the best of those that met most worlds, not a lucky one that met few', () => {
    const { leader } = controlVariates([met(10, [99]), met(20, [60, 62]), met(30, [61, 63])]);
    expect(leader.layout).toEqual(layout(30));
  });

  test('what a cheaper engine sees of luck in the worlds not met is taken out', () => {
    // physics = twice the cheaper engine's difference from the leader, and a constant; two worlds of fifty met
    const own = worlds(50, (w) => 5 * Math.cos(2.1 * w));
    const cheap = new Map([
      [10, own.map((value) => 30 + value / 2)],
      [20, own.map(() => 30)],
    ]);
    const rolled = [
      met(
        10,
        own.slice(0, 4).map((value) => 40 + 0.4 * value),
      ),
      met(
        20,
        own.map(() => 50),
      ),
    ];
    const plain = controlVariates(rolled).rows[0];
    const controlled = controlVariates(rolled, ({ drillingAngleDeg }) => cheap.get(drillingAngleDeg)).rows[0];
    const exact = -10 + 0.4 * mean(own);
    expect(controlled.value).toBeCloseTo(exact, 10);
    expect(Math.abs(plain.value - exact)).toBeGreaterThan(0.2);
    expect(controlled.variance).toBeLessThan(1e-12);
  });

  test('a cheaper engine that knows nothing of luck changes nothing', () => {
    const own = [3, -1, -3, 1];
    const unrelated = [1, 3, -1, -3]; // orthogonal to the above, both of mean 0
    const rolled = [met(10, own), met(20, [10, 10, 10, 10])];
    const controlScores = ({ drillingAngleDeg }: { drillingAngleDeg: number }) =>
      drillingAngleDeg === 10 ? unrelated : [0, 0, 0, 0];
    const [row] = controlVariates(rolled, controlScores).rows;
    expect(row.value).toBeCloseTo(-10, 12);
    expect(row).toEqual(controlVariates(rolled).rows[0]);
  });

  test('the variance is that of a mean, drawn toward what is usual as for four more worlds', () => {
    const [a, b] = [
      [1, 5, 3, 7],
      [2, 2, 4, 4],
    ];
    const zero = [20, 20, 20, 20];
    const { rows } = controlVariates([met(10, a), met(20, b), met(30, zero)]);
    const squares = [a, b].map((values) => 3 * sampleVariance(values));
    const usual = (squares[0] + squares[1]) / 9;
    expect(rows[0].variance).toBeCloseTo((4 * usual + squares[0]) / 7 / 4, 12);
    expect(rows[1].variance).toBeCloseTo((4 * usual + squares[1]) / 7 / 4, 12);
  });

  test('worlds in which either ball misses the pins do not count', () => {
    const { leader, rows } = controlVariates([met(10, [50, null, 30, 70]), met(20, [60, 90, null, 70])]);
    expect(leader.layout).toEqual(layout(20)); // 73 1/3 against 50
    expect(rows.map(({ value }) => value)).toEqual([-5, 0]); // −10 and 0 in the first and the last
    // squares of 50 about the mean over two worlds; three worlds in all are free to vary, the leader's two among them
    expect(rows[0].variance).toBeCloseTo((4 * (50 / 3) + 50) / 5 / 2, 12);
  });

  test('the leader is none that got to the pins in few worlds, however well it did there', () => {
    const { leader } = controlVariates([met(10, [null, 99, null, null]), met(20, [60, 62, 61, 60])]);
    expect(leader.layout).toEqual(layout(20));
  });

  test('a layout that never reaches the pins where the leader does lacks the whole score, and is no nearer for its luck', () => {
    const { rows } = controlVariates([
      met(10, [null, null, 90]),
      met(20, [60, 62, null]),
      met(30, [50, 52, null]),
    ]);
    expect(rows[0].value).toBe(-100);
    expect(Number.isFinite(rows[0].variance)).toBe(true);
    expect(rows[2].value).toBeCloseTo(-10, 12);
  });

  test('the cheaper engine is compared in the worlds that count, and stands for all of them', () => {
    const own = worlds(12, (w) => 5 * Math.cos(2.1 * w));
    const cheap = new Map([
      [10, own.map((value) => 30 + value / 2)],
      [20, own.map(() => 30)],
    ]);
    const lost = (list: readonly number[], ...at: number[]): (number | null)[] =>
      list.map((value, w) => (at.includes(w) ? null : value));
    const rolled = [
      met(
        10,
        lost(
          own.slice(0, 7).map((value) => 40 + 0.4 * value),
          1,
          4,
        ),
      ),
      met(
        20,
        lost(
          own.map(() => 50),
          2,
        ),
      ),
    ];
    const [row] = controlVariates(rolled, ({ drillingAngleDeg }) => cheap.get(drillingAngleDeg)).rows;
    expect(row.value).toBeCloseTo(-10 + 0.4 * mean(own), 10);
    expect(row.variance).toBeLessThan(1e-12);
  });

  describe('of a cheaper engine', () => {
    const own = worlds(24, (w) => 5 * Math.cos(2.1 * w));
    const common = worlds(24, (w) => 30 + luck(w));
    const cheap =
      (of: readonly (readonly number[])[]) =>
      ({ drillingAngleDeg }: { drillingAngleDeg: number }) =>
        of[drillingAngleDeg / 10 - 1];
    const leading = met(
      20,
      common.map((score) => score + 20),
    );

    test('only differences from the leader count: luck that takes both alike drops out', () => {
      const other = met(
        10,
        common.slice(0, 6).map((score, w) => score + 10 + 0.4 * own[w]),
      );
      const seen = cheap([common.map((score, w) => score + own[w] / 2), common]);
      const [row] = controlVariates([other, leading], seen).rows;
      expect(row.value).toBeCloseTo(-10 + 0.4 * mean(own), 10);
      expect(row.variance).toBeLessThan(1e-12);
    });

    test('it takes luck out of a layout that met all of its worlds too, and says nothing of more worlds than it has', () => {
      const other = met(
        10,
        common.map((score, w) => score + 10 + 0.4 * own[w]),
      );
      const of = (count: number) =>
        cheap([common.slice(0, count).map((score, w) => score + own[w] / 2), common.slice(0, count)]);
      const plain = controlVariates([other, leading]).rows[0];
      const all = controlVariates([other, leading], of(24)).rows[0];
      expect(all.value).toBeCloseTo(plain.value, 10);
      expect(plain.variance).toBeGreaterThan(0.01);
      expect(all.variance).toBeLessThan(1e-12);
      expect(controlVariates([other, leading], of(23)).rows[0]).toEqual(plain);
    });

    test('one that sees the same difference in every world changes nothing', () => {
      const other = met(
        10,
        common.slice(0, 6).map((score, w) => score + 10 + 0.4 * own[w]),
      );
      const seen = cheap([common.map(() => 37), common.map(() => 30)]);
      expect(controlVariates([other, leading], seen).rows).toEqual(controlVariates([other, leading]).rows);
    });

    test('a layout that never reaches the pins where the leader does stands for nothing in the factor', () => {
      const other = met(
        10,
        common.slice(0, 6).map((score, w) => score + 10 + 0.4 * own[w]),
      );
      const lost = { ...met(30, [1]), worlds: { ...met(30, [1]).worlds, scores: [null, null] } };
      const lists = [common.map((score, w) => score + own[w] / 2), common, common.map(() => 5)];
      const [row, , gone] = controlVariates([other, leading, lost], cheap(lists)).rows;
      expect(row.value).toBeCloseTo(-10 + 0.4 * mean(own), 10);
      expect(gone.value).toBe(-100);
    });
  });

  test('one that reaches the pins in just nine tenths of the worlds may lead; of two alike the first leads', () => {
    const nine = [null, ...worlds(9, () => 70)];
    const ten = worlds(10, () => 60);
    expect(controlVariates([met(10, ten), met(20, nine)]).leader.layout).toEqual(layout(20));
    expect(controlVariates([met(10, ten), met(20, ten)]).leader.layout).toEqual(layout(10));
  });
});
