import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { rollAnswer } from '../../src/answer/roll-answer.js';
import { noLine } from '../../src/explain/no-line.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { rollAnswerSchema } from '../../src/records/answers/roll-answer.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { findLine } from '../../src/simulate/line.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { said } from '../support/said.js';

/** From board 10 a strong hook crosses past the pocket, or is sent into the gutter. */
const outside: Bowler = { ...averageBowler, revRateRpm: 440, axisRotationDeg: 62, laydownBoard: 10 };
const ball = ballProblem(plainBall, outside, 'moment');
const layout = toLayout(MIDDLE_LAYOUT, ball.published.radius);

describe('when no line reaches the pocket', () => {
  const answer = noLine({ bowler: outside, ball: plainBall, lane: houseLane }, ball, layout);

  test('it says why and what comes nearest', () => {
    expect(answer.why).toBe('hooks-past');
    expect(answer.nearest.laydownBoard).toBe(10);
    expect(answer.nearest.pinsBoard).toBeGreaterThan(18.5);
    expect(said([answer.says])).toMatch(/hooks too much.*board 10.*gutter/);
  });

  test('every remedy it names does bring the ball to the pocket', () => {
    expect(said(answer.remedies.slice(0, 1))).toMatch(/^Another laydown board: a line from board \d+/);
    const { laydownBoard: _own, ...anywhere } = outside;
    expect(findLine(unaimedProblem(houseLane, anywhere, plainBall, ball), layout).reachesPocket).toBe(true);
    for (const remedy of answer.remedies.slice(1)) {
      const grit = /(\d+) grit instead/.exec(said([remedy]))?.[1];
      const faster = /^(\d) mph faster/.exec(said([remedy]))?.[1];
      const changed = findLine(
        unaimedProblem(
          houseLane,
          { ...outside, speedMph: outside.speedMph + Number(faster ?? 0) },
          grit ? { ...plainBall, surfaceGrit: Number(grit) } : plainBall,
          ball,
        ),
        layout,
      );
      expect(changed.reachesPocket, said([remedy])).toBe(true);
    }
  });

  test('roll says so in its answer, which keeps its schema', () => {
    const rolled = rollAnswer({ bowler: outside, ball: plainBall, lane: houseLane, layout: MIDDLE_LAYOUT });
    expect(rollAnswerSchema.parse(withSentences(rolled))).toEqual(withSentences(rolled));
    expect(rolled.noLine).toEqual(answer);
    expect(rolled.line.reachesPocket).toBe(false);
    expect(rolled.missRoom).toBeNull();
  });
});

test('where a line exists nothing is said of none', () => {
  const rolled = rollAnswer({
    bowler: averageBowler,
    ball: plainBall,
    lane: houseLane,
    layout: MIDDLE_LAYOUT,
  });
  expect(rolled.noLine).toBeNull();
  expect(rolled.line.reachesPocket).toBe(true);
  expect(rolled.line.pocketBoard).toBe(17.5);
  // at 15 ft the ball is where its direction leads, but for what friction can have done in the time it took:
  // at most half μ g t², and only to the hook side
  const { laydownBoard, launchAngleDeg, arrowsBoard } = rolled.line;
  const straightOn = laydownBoard - (180 * Math.tan((launchAngleDeg * Math.PI) / 180)) / (41.5 / 39);
  const { timeS } = rolled.path[15];
  const most = (0.5 * 0.05 * 9.81 * timeS ** 2) / (0.0254 * (41.5 / 39));
  expect(arrowsBoard! - straightOn).toBeGreaterThan(0);
  expect(arrowsBoard! - straightOn).toBeLessThan(most);
  expect(rolled.missRoom!.laydownBoards.outside).toBeGreaterThan(0.1);
});

test('a slow, light ball whose mean over how it is turned at release lies beside the pocket has the line it was aimed on', () => {
  const records = { ball: 'plain-twelve', lane: 'house-easy', bowler: 'youth-twelve' };
  const read = (kind: keyof typeof records) =>
    JSON.parse(readFileSync(new URL(`../../data/${kind}s/${records[kind]}.json`, import.meta.url), 'utf8'));
  const rolled = rollAnswer({
    bowler: { ...read('bowler'), speedMph: 8, revRateRpm: 60, axisRotationDeg: 40 },
    ball: read('ball'),
    lane: read('lane'),
    layout: MIDDLE_LAYOUT,
  });
  expect(rolled.reaction.pinsBoard).toBeGreaterThan(18.5);
  expect(rolled.path.at(-1)!.board).toBeCloseTo(17.5, 1); // the path is that of the shot that was aimed
  expect(rolled.line.reachesPocket).toBe(true);
  expect(rolled.noLine).toBeNull();
  expect(rolled.missRoom).not.toBeNull();
});
