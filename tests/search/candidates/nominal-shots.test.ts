import { describe, expect, test } from 'vitest';
import { DEGREE } from '../../../src/base/units.js';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import { rejectByMarks } from '../../../src/search/candidates/constraints.js';
import { drilledGrid } from '../../../src/search/candidates/drilled-grid.js';
import { nominalShots } from '../../../src/search/candidates/nominal-shots.js';
import { madeUpSetting } from '../../support/made-up-setting.js';

const USUAL = MIDDLE_LAYOUT;
const BESIDE = { ...MIDDLE_LAYOUT, drillingAngleDeg: MIDDLE_LAYOUT.drillingAngleDeg + 10 };
const LATER = { ...MIDDLE_LAYOUT, drillingAngleDeg: MIDDLE_LAYOUT.drillingAngleDeg + 20 };

describe('nominalShots', () => {
  /** 70° misses the pins. */
  const shotOf = ({ drillingAngleDeg }: { drillingAngleDeg: number }) =>
    drillingAngleDeg === 70 ? { shot: 'gutter' as const } : {};
  const at = (drillingAngleDeg: number) => ({ ...USUAL, drillingAngleDeg });

  test('roll each layout once, on its own line in the nominal world, and none whose marks bar it', async () => {
    const { setting, trials } = madeUpSetting(shotOf);
    const shots = nominalShots(setting);
    const barred = drilledGrid({ arcIn: 0.5, angleDeg: 10 }, setting).find(
      (layout) => rejectByMarks(layout, setting.ball, setting.practice) !== null,
    )!;
    let done = 0;
    await shots.roll([at(50), at(70), at(50), barred], (count) => {
      done += count;
    });
    await shots.roll([at(50), at(60), barred]);
    expect(trials.map(({ world, launch }) => [world, launch])).toEqual(
      [0, 0, 0].map((world) => [world, undefined]),
    );
    expect(trials.map(({ layout }) => Math.round(layout.drillingAngle / DEGREE))).toEqual([50, 70, 60]);
    expect([done, shots.shots()]).toEqual([2, 3]);
    expect(shots.allowed().map(({ layout }) => layout)).toEqual([at(50), at(60)]);
    expect(shots.get(at(50))).toMatchObject({ layout: at(50), outcome: { shot: 'pins' } });
    expect([shots.get(at(70)), shots.get(barred), shots.get(at(40))]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect([at(50), at(70), barred, at(40)].map(shots.isRejected)).toEqual([false, true, true, false]);
    await shots.roll([{ ...at(70), pinToPapIn: 5 }]);
    expect(shots.rejected()).toEqual([
      { why: { code: 'ball-goes-into-gutter', params: {} }, count: 2 },
      { why: rejectByMarks(barred, setting.ball, setting.practice), count: 1 },
    ]);
  });
});

describe('nominalShots that go on apart', () => {
  test('see what was rolled before they parted, not what the other rolls after, and nothing is rolled twice', async () => {
    const { setting, trials } = madeUpSetting(() => ({}));
    const shots = nominalShots(setting);
    await shots.roll([USUAL]);
    const [one, other] = [shots.apart(), shots.apart()];
    await Promise.all([one.roll([BESIDE, LATER]), other.roll([LATER])]);
    expect(trials).toHaveLength(3);
    const seen = (view: typeof one) => [USUAL, BESIDE, LATER].map((layout) => view.get(layout)?.layout);
    expect(seen(shots)).toEqual([USUAL, undefined, undefined]);
    expect(seen(one)).toEqual([USUAL, BESIDE, LATER]);
    expect(seen(other)).toEqual([USUAL, undefined, LATER]);
    expect(other.get(LATER)).toBe(one.get(LATER));
    expect([shots, one, other].map((view) => view.shots())).toEqual([3, 3, 3]);
  });
});
