import { describe, expect, test } from 'vitest';
import { nightMeans, weighedMean } from '../../src/learn/night-means.js';
import type { Night } from '../../src/records/schemas/shot-log.js';

const night = (shots: Night['shots'], more: Partial<Night> = {}): Night => ({
  lane: 'house',
  shots,
  ...more,
});

describe('weighedMean', () => {
  test('readings near one another count alike', () => {
    expect(weighedMean([9, 10, 11], 1)).toEqual({ mean: 10, count: 3 });
  });

  test('a wild reading moves the mean by less than its share, and counts as less than a shot', () => {
    const { mean, count } = weighedMean([17, 17.5, 18, 17, 18, 35], 0.5);
    expect(mean).toBeLessThan(18.2); // 20.4 if all counted alike
    expect(count).toBeGreaterThan(5);
    expect(count).toBeLessThan(5.2);
  });
});

describe('nightMeans', () => {
  test('a night without shots has no reading and no share of gutters', () => {
    expect(nightMeans(night([]))).toMatchObject({ readings: [], gutterShare: 0 });
  });

  test('only readings that were taken, each with the shots of which it was', () => {
    const { readings, together, gutterShare, unread } = nightMeans(
      night([
        { laydownBoard: 20, arrowsBoard: 12, pinsBoard: 17 },
        { laydownBoard: 20, pinsBoard: 18 },
        { laydownBoard: 20, arrowsBoard: 10, gutter: true },
      ]),
    );
    expect(readings.map(({ id, mean, count }) => [id, mean, count])).toEqual([
      ['laydownBoard', 20, 3],
      ['arrowsBoard', 11, 2],
      ['pinsBoard', 17.5, 2],
    ]);
    expect(together[1][2]).toBe(1);
    expect(gutterShare).toBeCloseTo(1 / 3, 12);
    expect(unread).toEqual([0, 0, 1]);
  });

  test('the arrows read off without a target err alike all night; against one, from shot to shot', () => {
    const shots = [{ arrowsBoard: 10 }, { arrowsBoard: 11 }];
    const errorsOf = ({ readings: [{ ofShot, ofNight }] }: ReturnType<typeof nightMeans>) => [
      ofShot,
      ofNight,
    ];
    expect(errorsOf(nightMeans(night(shots)))).toEqual([0, 1]);
    expect(errorsOf(nightMeans(night(shots, { targetBoard: 10 })))[0]).toBe(0.5);
    expect(nightMeans(night(shots)).isReadOff).toBe(true);
  });

  test('a target stands for a board at the arrows that was not read, and errs more', () => {
    const { readings } = nightMeans(night([{ pinsBoard: 17 }], { targetBoard: 10 }));
    expect(readings[0]).toMatchObject({ id: 'arrowsBoard', mean: 10, ofNight: 1 });
  });
});
