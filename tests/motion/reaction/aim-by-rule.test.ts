import { describe, expect, test } from 'vitest';
import { LANE_LENGTH } from '../../../src/base/constants.js';
import { aimAt } from '../../../src/motion/reaction/aim.js';
import { ON_TARGET, reAim } from '../../../src/motion/reaction/re-aim.js';
import type { LeanShot } from '../../../src/motion/shot/shot.js';
import { expectWithin } from '../../support/bodies.js';
import { endingAt } from '../../support/drawn-shot.js';

const STEEPEST = 0.15;

/** Aims at the middle from the middle with a ball that ends where a rule says, and tells what was tried. */
function aimed(rule: (angle: number) => LeanShot, { first = 0.01, steepest = STEEPEST } = {}) {
  const tried: number[] = [];
  const roll = (angle: number): LeanShot => {
    tried.push(angle);
    return rule(angle);
  };
  return { ...aimAt(0, 0, steepest, roll, first), tried };
}

describe('aimAt, with balls that end where a rule says', () => {
  test('a first shot within a tenth of a millimetre is the only one', () => {
    for (const miss of [0, 1e-4, -1e-4]) {
      const { found, shots, launch } = aimed(() => endingAt(miss));
      expect({ found, shots, launch }).toEqual({ found: true, shots: 1, launch: { x: 0, angle: 0.01 } });
    }
    expect(aimed(() => endingAt(1.01e-4)).shots).toBeGreaterThan(1);
  });

  test('a straight ball needs a bracket and one shot more: false position is exact on a line', () => {
    const { found, shots, launch } = aimed((angle) => endingAt(LANE_LENGTH * (angle - 0.003)));
    expect([found, shots]).toEqual([true, 3]);
    expectWithin(launch.angle, 0.003, 1e-12);
  });

  test('a rule that bends strongly is solved in few shots, for the end that stays counts less and less', () => {
    // false position without halving closes in on this one from one side only
    const { found, shots, launch } = aimed((angle) => endingAt(5000 * (angle + 0.06) ** 3 - 0.05), {
      first: -0.03,
    });
    expect(found).toBe(true);
    expectWithin(launch.angle, Math.cbrt(0.05 / 5000) - 0.06, 1e-4);
    expect(shots).toBeLessThanOrEqual(12);
    const mirrored = aimed((angle) => endingAt(0.05 - 5000 * (0.06 - angle) ** 3), { first: 0.03 });
    expect(mirrored.shots).toBe(shots);
    expectWithin(mirrored.launch.angle, -launch.angle, 1e-12);
  });

  test('gutters on both sides of the target: halves the bracket until shots get through', () => {
    const rule = (angle: number): LeanShot =>
      Math.abs(angle - 0.003) < 0.004
        ? endingAt(LANE_LENGTH * (angle - 0.003))
        : endingAt(angle - 0.003, 'gutter');
    const { found, launch, shots } = aimed(rule, { first: 0.04 });
    expect(found).toBe(true);
    expect(shots).toBeLessThanOrEqual(10);
    expectWithin(launch.angle, 0.003, 1e-5);
  });

  test('nothing but gutters: gives back the first angle, at the steepest or after the last shot', () => {
    const right = aimed(() => endingAt(1, 'gutter'));
    expect(right).toMatchObject({ found: false, launch: { angle: 0.01 } });
    // 0.02 a step from 0.01 to the steepest to the left, 0.15; never the same angle twice
    expect(right.shots).toBe(9);
    expect(right.tried.at(-1)).toBe(-STEEPEST);
    expect(new Set(right.tried).size).toBe(right.shots);
    expect(aimed(() => endingAt(-1, 'gutter'), { steepest: 10 }).shots).toBe(20);
  });

  test('a shot that never arrives ends the search, wherever it comes', () => {
    expect(aimed(() => endingAt(0, 'stopped')).shots).toBe(1);
    expect(aimed(() => endingAt(0, 'stopped')).found).toBe(false);
    const second = aimed((angle) => (angle === 0.01 ? endingAt(0.2) : endingAt(0, 'stopped')));
    expect(second).toMatchObject({ found: false, shots: 2, launch: { angle: 0.01 } });
    const third = aimed((angle) =>
      angle === 0.01 ? endingAt(0.2) : angle < 0 ? endingAt(-0.4) : endingAt(0, 'stopped'),
    );
    expect(third).toMatchObject({ found: false, shots: 3, launch: { angle: 0.01 } });
  });

  test('a target that no angle reaches between two that pass it: shots until these two lie 0.1 mm apart, and the nearest of them', () => {
    const { found, shots, launch, tried } = aimed((angle) => endingAt(angle < 0.003 ? -0.02 : 0.03));
    expect([found, shots]).toEqual([false, 13]);
    const below = Math.max(...tried.filter((angle) => angle < 0.003));
    const above = Math.min(...tried.filter((angle) => angle >= 0.003));
    expect((above - below) * LANE_LENGTH).toBeLessThan(1e-4);
    expect(launch.angle).toBe(tried.find((angle) => angle < 0.003));
  });

  test('a jump that is a hundred times farther to one side: the bracket closes too slowly, and the twentieth shot is the last', () => {
    const { found, shots } = aimed((angle) => endingAt(angle < 0.003 ? -0.02 : 2));
    expect([found, shots]).toEqual([false, 20]);
  });
});

describe('reAim, with balls that end where a rule says', () => {
  const near = { x: 0.1, angle: 0.02 };
  const by = (rule: (angle: number, shots: number) => LeanShot, slope = 10, steepest = STEEPEST) => {
    let shots = 0;
    const found = reAim(0, steepest, near, slope, (launch) => ({
      launch,
      shot: rule(launch.angle, ++shots),
    }));
    return { found, shots };
  };

  test('a straight response that is known needs one shot more, one that is not needs two', () => {
    const line = (angle: number): LeanShot => endingAt(10 * (angle - 0.012));
    const known = by(line);
    expect(known.shots).toBe(2);
    expectWithin(known.found?.launch.angle ?? Number.NaN, 0.012, 1e-12);
    const guessed = by(line, 15);
    expect(guessed.shots).toBe(3);
    expectWithin(guessed.found?.launch.angle ?? Number.NaN, 0.012, 1e-12);
    expect(guessed.found?.launch.x).toBe(0.1);
  });

  test('six shots and no more: null where the sixth is not on target, the sixth where it is', () => {
    // each step halves what is left
    const halving = (_: number, shots: number): LeanShot => endingAt(0.01 / 2 ** shots);
    expect(by(halving)).toMatchObject({ shots: 5, found: { shot: { outcome: 'pins' } } });
    const slower = (_: number, shots: number): LeanShot => endingAt(0.04 / 2 ** shots);
    expect(by(slower).shots).toBe(6);
    expect(by(slower).found).toBeNull();
    // each step goes half as far again as it should
    const overshooting = (_: number, shots: number): LeanShot => endingAt(0.04 * (-0.5) ** shots);
    expect(by(overshooting)).toEqual({ found: null, shots: 6 });
    const lastOn = (_: number, shots: number): LeanShot =>
      endingAt(shots < 6 ? 0.04 / 2 ** shots : ON_TARGET);
    expect(by(lastOn).found).not.toBeNull();
  });

  test('goes astray: a step that is too long, an angle too steep, no response, the wrong one, no arrival', () => {
    expect(by(() => endingAt(0.6))).toEqual({ found: null, shots: 1 }); // 0.06 rad at 10 m/rad
    expect(by(() => endingAt(-0.4), 10, 0.05)).toEqual({ found: null, shots: 1 }); // 0.06 rad is steeper than 0.05
    expect(by(() => endingAt(-0.2))).toEqual({ found: null, shots: 2 }); // the angle does not move it
    expect(by((angle) => endingAt(0.1 - 5 * (angle - 0.02)))).toEqual({ found: null, shots: 2 });
    expect(by(() => endingAt(0, 'gutter'))).toEqual({ found: null, shots: 1 });
  });
});
