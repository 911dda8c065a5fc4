import { expect, test } from 'vitest';
import { rollAnswer } from '../../src/answer/roll-answer.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { demoLanes } from '../../src/records/read/shelf.js';
import type { Ball } from '../../src/records/schemas/ball.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import { aimedShot } from '../../src/simulate/aimed-shot.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';

const layout = { drillingAngleDeg: 65, pinToPapIn: 4.75, valAngleDeg: 37 };

/** So much rotation on a short pattern that the line runs along the gutter. */
const wide: Bowler = {
  ...averageBowler,
  thumbHole: false,
  speedMph: 15.67,
  revRateRpm: 486,
  axisTiltDeg: 9.3,
  axisRotationDeg: 78.7,
  pap: { overIn: 4.95, upIn: -0.11 },
};

const heavyTop: Ball = {
  schema: 'flarewise/ball/1',
  name: 'Heavy top',
  weightLb: 15.2,
  rgIn: 2.552,
  differentialIn: 0.052,
  intermediateDifferentialIn: 0,
  coreShape: 'lobed',
  pinToCgIn: 2.22,
  topWeightOz: 3.4,
  surfaceGrit: 3335,
};

const short = demoLanes().find(({ id }) => id === 'short')!.record;

test('rollAnswer: a shot that half a turn of the ball later would fall into the gutter says so, another does not', () => {
  const edge = { bowler: wide, ball: heavyTop, lane: short, layout };
  const middle = { bowler: averageBowler, ball: plainBall, lane: houseLane, layout };
  const found = [edge, middle].map((inputs) => {
    const { rolled } = aimedShot(inputs, ballProblem(inputs.ball, inputs.bowler, 'moment'));
    return {
      ends: [rolled.shot.outcome, rolled.opposite?.().outcome],
      says: rollAnswer(inputs).objections.some(({ code }) => code === 'gutter-half-a-turn-on'),
    };
  });
  expect(found).toEqual([
    { ends: ['pins', 'gutter'], says: true },
    { ends: ['pins', 'pins'], says: false },
  ]);
});
