import { describe, expect, test } from 'vitest';
import { variedUnknowns } from '../../../src/explain/surer/unknowns.js';
import type { PublishedBall } from '../../../src/records/schemas/ball.js';
import type { BallUncertainty } from '../../../src/records/schemas/ball-uncertainty.js';
import type { Bowler } from '../../../src/records/schemas/bowler.js';
import type { Lane } from '../../../src/records/schemas/lane.js';
import { BELIEFS } from '../../../src/records/shared/beliefs.js';
import { drawDeviations } from '../../../src/simulate/worlds/deviations.js';
import { REFERENCE_GRIT } from '../../../src/simulate/worlds/friction-of.js';
import { SCATTER_BY_SKILL } from '../../../src/simulate/worlds/release-scatter.js';
import { USUAL_BALLS } from '../../support/balls.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';

const unsure: Bowler = {
  ...averageBowler,
  uncertainty: {
    speedMph: 1.2,
    revRateRpm: 50,
    axisTiltDeg: 5,
    axisRotationDeg: 11,
    papOverIn: 0.4,
    papUpIn: 0.45,
  },
};

function unknownsOf(
  bowler: Bowler,
  lane: Lane = houseLane,
  surfaceGrit = 1000,
  belief = 0.5,
  cores = 3,
  uncertainty: BallUncertainty = {},
) {
  const drawn = drawDeviations({
    seed: 1,
    count: 16,
    bowler,
    published: USUAL_BALLS[0]!,
    uncertainty,
    bodyCount: cores,
  });
  const worlds = drawn.map((deviations, n) => ({
    deviations,
    beliefs: BELIEFS.map((_, b) => ((n + b) % 2) * belief),
  }));
  const coreNumbers = Array.from({ length: cores }, (_, c) => [c, c ** 2]);
  const inputs = {
    bowler,
    ball: { ...(plainBall as PublishedBall), surfaceGrit, uncertainty },
    lane,
    want: {},
  };
  return variedUnknowns(inputs, worlds, cores > 1 ? coreNumbers : []);
}

const codes = (unknowns: ReturnType<typeof unknownsOf>): string[] =>
  unknowns
    .filter(({ unknown }) => unknown.code !== 'belief-of-practice')
    .map(({ unknown, field }) => `${unknown.code} ${field}`);

describe('variedUnknowns', () => {
  test('all that a guessed bowler, a worn lane and a fitted core leave open, each with its place in the records', () => {
    const all = unknownsOf(unsure, { ...houseLane, games: 15 });
    expect(codes(all)).toEqual([
      'release-number speedMph',
      'release-number revRateRpm',
      'release-number axisTiltDeg',
      'release-number axisRotationDeg',
      'pap-place pap',
      'which-core ball',
      'ball-as-made ball',
      'lane-friction lane',
      'lane-friction lane',
      'lane-friction lane',
      'lane-friction null',
      'oil-on-rings null',
      'wear-of-games lane',
    ]);
    const beliefs = all.filter(({ unknown }) => unknown.code === 'belief-of-practice');
    expect(beliefs).toHaveLength(BELIEFS.length);
    expect(beliefs.every(({ field }) => field === null)).toBe(true);
  });

  test('what is known or has no part is left out', () => {
    const few = unknownsOf(averageBowler, houseLane, REFERENCE_GRIT, 0, 1);
    expect(codes(few)).toEqual([
      'ball-as-made ball',
      'lane-friction lane',
      'lane-friction lane',
      'lane-friction lane',
      'oil-on-rings null',
    ]);
    expect(few).toHaveLength(5); // beliefs have no weight
  });

  test('of a release number only what is not scatter can be known; of the PAP all', () => {
    const [speed, , , , pap] = unknownsOf(unsure);
    expect(speed.numbers[0].knownShare).toBeCloseTo(
      1.2 / Math.hypot(1.2, SCATTER_BY_SKILL.league.speedMph),
      12,
    );
    expect(pap.numbers.map(({ knownShare }) => knownShare)).toEqual([1, 1]);
  });

  test('guessed numbers of the ball stand by themselves; what was published is only how it was made', () => {
    const uncertainty = { rgIn: 0.03, intermediateDifferentialIn: 0.004, topWeightOz: 0.5 };
    const all = unknownsOf(averageBowler, houseLane, 1000, 0.5, 1, uncertainty);
    const ofBall = all.filter(({ field }) => field === 'ball');
    expect(ofBall.map(({ unknown, numbers }) => [unknown, numbers.length])).toEqual([
      [{ code: 'ball-as-made', params: {} }, 1],
      [{ code: 'ball-numbers', params: { guessed: Object.keys(uncertainty) } }, 3],
    ]);
  });
});
