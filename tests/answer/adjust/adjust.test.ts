import { isDeepStrictEqual } from 'node:util';
import { beforeAll, describe, expect, test } from 'vitest';
import { type AdjustInputs, adjust } from '../../../src/answer/adjust/adjust.js';
import { nightDid } from '../../../src/answer/adjust/night-did.js';
import { pluggedBall } from '../../../src/answer/adjust/plugged-ball.js';
import { compare } from '../../../src/answer/compare.js';
import { boardToX, xToBoard } from '../../../src/motion/lane/boards.js';
import { aimAt } from '../../../src/motion/reaction/aim.js';
import { ballProblem } from '../../../src/prepare/ball-problem.js';
import { layoutOnBall } from '../../../src/prepare/layout-on-ball.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import { type AdjustAnswer, adjustAnswerSchema } from '../../../src/records/answers/adjust-answer.js';
import type { Adjustment } from '../../../src/records/answers/statements/adjustments.js';
import { COMPARED_IDS } from '../../../src/records/schemas/reaction-numbers.js';
import type { Night } from '../../../src/records/schemas/shot-log.js';
import { readLayout } from '../../../src/records/text/written-layout.js';
import { withSentences } from '../../../src/report/wording/with-sentences.js';
import { unaimedProblem } from '../../../src/simulate/shot-problem.js';
import { simulator } from '../../../src/simulate/simulator.js';
import { arrowsBoard } from '../../../src/simulate/usual-line.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';
import { SMALL_BUDGET } from '../../support/small-budget.js';

const options = { seed: 1, workers: 1, pinSide: 'above' as const, budget: SMALL_BUDGET };
const LAYOUT = { drillingAngleDeg: 70, pinToPapIn: 4.5, valAngleDeg: 30 };
const INPUTS: AdjustInputs = {
  bowler: averageBowler,
  kept: { id: 'first', ball: plainBall, layout: LAYOUT },
  lane: houseLane,
  asked: { hookStart: { text: '3 ft later', asked: { is: 'more', by: 3 } } },
  told: { hookStartFt: 36 },
  night: null,
  others: [{ id: 'second', ball: { ...plainBall, name: 'Second', surfaceGrit: 4000 }, layout: LAYOUT }],
  lesson: null,
};

const rowOf = (answer: AdjustAnswer, code: Adjustment['code'], params: object = {}) => {
  const found = answer.remedies.find(
    ({ remedy }) => remedy.code === code && isDeepStrictEqual({ ...remedy.params, ...params }, remedy.params),
  );
  if (!found) throw new Error(`no ${code}`);
  return found;
};

describe('adjust', () => {
  let answer: AdjustAnswer;
  beforeAll(async () => {
    answer = await adjust(INPUTS, options);
  });

  test('keeps its schema, and says the same each time', async () => {
    expect(adjustAnswerSchema.parse(withSentences(answer))).toEqual(withSentences(answer));
    expect(await adjust(INPUTS, options)).toEqual(answer);
  });

  test('what a person says counts before simulation; what is left is the wanted change less the effect', () => {
    expect(answer.wished).toMatchObject([{ did: 36, from: 'told', wanted: 39, change: 3 }]);
    for (const { effect, left } of answer.remedies)
      expect(left.hookStartFt).toBeCloseTo(3 - effect.hookStartFt, 12);
  });

  test('a finish and another ball change what `compare` says of them', async () => {
    const grits = [plainBall.surfaceGrit ?? 2000, 500, 4000];
    const finishes = await compare(
      {
        bowler: averageBowler,
        lane: houseLane,
        want: {},
        varies: 'finish',
        entrants: grits.map((surfaceGrit) => ({ ball: { ...plainBall, surfaceGrit }, layout: LAYOUT })),
      },
      options,
    );
    for (const { grit, fromFirst } of finishes.rows.slice(1)) {
      const { effect, visibility } = rowOf(answer, 'refinish', { grit });
      for (const id of COMPARED_IDS) {
        expect(effect[id], `${grit} ${id}`).toBeCloseTo(fromFirst!.weighed.size[id], 9);
        expect(visibility[id]).toBe(fromFirst!.weighed.visibility[id]);
      }
    }
    const second = rowOf(answer, 'another-drilled-ball');
    for (const id of COMPARED_IDS)
      expect(second.effect[id]).toBeCloseTo(finishes.rows[2].fromFirst!.weighed.size[id], 9);
  });

  test('a redrilled ball changes what `compare` says of the plugged ball beside it as it is', async () => {
    const { remedy, effect } = rowOf(answer, 'plug-and-redrill');
    const { drillingAngleDeg, pinToPapIn, valAngleDeg } = answer.redrill!.layout;
    const layout = { drillingAngleDeg: drillingAngleDeg!, pinToPapIn, valAngleDeg };
    const redrilled = await compare(
      {
        bowler: averageBowler,
        lane: houseLane,
        want: {},
        varies: 'layout',
        entrants: [
          { ball: plainBall, layout: LAYOUT },
          { ball: pluggedBall(plainBall, LAYOUT, averageBowler)!, layout },
        ],
      },
      options,
    );
    for (const id of COMPARED_IDS)
      expect(effect[id], id).toBeCloseTo(redrilled.rows[1].fromFirst!.weighed.size[id], 9);
    expect(redrilled.rows[1].name).toBe((remedy.params as { layout: string }).layout);
    expect(answer.redrill!.redrilled.oldHoles).toBe(3);
    expect(answer.redrill!.redrilled.oldMarks.map(({ mark }) => mark)).toContain('old thumb hole');
  });

  test('a move on the lane is a line that reaches the pocket: rolled here, from its laydown over its board at the arrows', () => {
    const ball = ballProblem(plainBall, averageBowler, 'moment', undefined, SMALL_BUDGET);
    const problem = unaimedProblem(houseLane, averageBowler, plainBall, ball);
    const engine = simulator(problem);
    const layout = toLayout(LAYOUT, ball.published.radius);
    const moves = answer.remedies.flatMap(({ remedy }) =>
      remedy.code === 'move-on-lane' ? [remedy.params] : [],
    );
    expect(moves.length).toBeGreaterThan(4);
    for (const { laydownBoard, arrowsBoard: aimed, feetBoards } of moves) {
      const x = boardToX(laydownBoard);
      const roll = (angle: number) => engine.shot(layout, problem.worlds[0], { x, angle }).shot;
      // the straight line through both boards; the ball hardly hooks before the arrows
      const angle = Math.atan2(boardToX(aimed) - x, 15 * 0.3048);
      const { launch } = aimAt(boardToX(17.5), x, problem.play.steepest, roll, angle);
      const shot = roll(launch.angle);
      expect(shot.outcome).toBe('pins');
      expect(xToBoard(shot.x[shot.x.length - 1])).toBeCloseTo(17.5, 1);
      expect(arrowsBoard(shot)).toBeCloseTo(aimed, 1);
      expect(feetBoards).toBeCloseTo(laydownBoard - answer.line.laydownBoard, 9);
    }
  });

  test('what can be undone comes before a drill; only what helps is recommended, one of each kind', () => {
    const ranked = answer.remedies.filter(({ rank }) => rank !== null);
    expect(ranked.map(({ rank }) => rank)).toEqual(ranked.map((_, i) => i + 1));
    expect(ranked.every(({ verdict }) => verdict === 'helps')).toBe(true);
    expect(new Set(ranked.map(({ remedy }) => remedy.code)).size).toBe(ranked.length);
    const last = ranked.findIndex(({ isUndone }) => !isUndone);
    expect(last === -1 || last === ranked.length - 1).toBe(true);
  });

  test('a ball that does it already needs no change', async () => {
    const small = {
      ...INPUTS,
      told: {},
      asked: { hookStart: { text: '0.1 ft later', asked: { is: 'more', by: 0.1 } as const } },
    };
    const { verdict, remedies } = await adjust(small, options);
    expect(verdict.map(({ code }) => code)).toContain('does-it-already');
    expect(remedies.every(({ rank }) => rank === null)).toBe(true);
  });

  test('a step is one of what layouts of the ball attain, taken from the ball as simulated', async () => {
    const asked = { hookStart: { text: 'latest', asked: { is: 'step', step: 5 } as const } };
    const [latest] = (await adjust({ ...INPUTS, asked }, options)).wished;
    expect(latest.change).toBeGreaterThan(0);
    expect(latest.wanted).toBeCloseTo(36 + latest.change, 9);
  });

  test('the plugged ball’s old drilling is the one that was kept', () => {
    const [earlier] = pluggedBall(plainBall, LAYOUT, averageBowler)!.drilledBefore!;
    expect(layoutOnBall(readLayout(earlier.layout!), plainBall)).toEqual(LAYOUT);
    const often = { ...plainBall, drilledBefore: Array.from({ length: 5 }, () => earlier) };
    expect(pluggedBall(often, LAYOUT, averageBowler)).toBeNull();
  });
});

describe('nightDid', () => {
  const night = (shots: Night['shots'], rest: Partial<Night> = {}): Night => ({ lane: 'x', shots, ...rest });

  test('total hook is the pins board less the line through laydown and arrows, drawn on to four times their distance', () => {
    const shot = { laydownBoard: 20, arrowsBoard: 14, pinsBoard: 17 };
    const { did, laydownBoard } = nightDid(night([shot], { targetBoard: 14 }));
    expect(laydownBoard).toBe(20);
    expect(did.totalHookBoards!.value).toBeCloseTo(17 - (20 - 4 * 6), 12); // 21
    // one board at the arrows, of which it errs by half a shot and by what stays, is four at the pins
    expect(did.totalHookBoards!.deviation).toBeGreaterThan(4 * 0.5);
  });

  test('more shots make it surer, but never as sure as to nothing', () => {
    const shots = (count: number) =>
      Array.from({ length: count }, () => ({ laydownBoard: 20, arrowsBoard: 14, pinsBoard: 17 }));
    const [one, many] = [1, 100].map(
      (count) => nightDid(night(shots(count), { targetBoard: 14 })).did.totalHookBoards!,
    );
    expect(many.deviation).toBeLessThan(one.deviation);
    expect(many.deviation).toBeGreaterThan(1);
  });

  test('what was not seen is not said; a hook by eye is', () => {
    expect(nightDid(night([{ pinsBoard: 17 }])).did).toEqual({});
    expect(nightDid(night([{ hookStartFt: 36, totalHookBoards: 14 }])).did).toMatchObject({
      hookStartFt: { value: 36 },
      totalHookBoards: { value: 14 },
    });
  });
});
