import { beforeAll, describe, expect, test } from 'vitest';
import { type CompareInputs, compare } from '../../src/answer/compare.js';
import { judge } from '../../src/answer/judge.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import type { JudgeAnswer } from '../../src/records/answers/answer.js';
import { type CompareAnswer, compareAnswerSchema } from '../../src/records/answers/compare-answer.js';
import { COMPARED_IDS, WISHED_IDS } from '../../src/records/schemas/reaction-numbers.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

const options = { seed: 1, workers: 1, pinSide: 'above' as const, budget: SMALL_BUDGET };
const WANT = { hookStart: 5, totalHook: 4 };
const OTHER = { drillingAngleDeg: 10, pinToPapIn: 3.375, valAngleDeg: 50 };
const NEAR_HOLE = { drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 110 };

const compared = (inputs: Pick<CompareInputs, 'varies' | 'entrants'> & Partial<CompareInputs>) =>
  compare({ bowler: averageBowler, lane: houseLane, want: {}, ...inputs }, options);
const layouts = (...all: CompareInputs['entrants'][number]['layout'][]) => ({
  varies: 'layout' as const,
  entrants: all.map((layout) => ({ ball: plainBall, layout })),
});

describe('compare', () => {
  let two: CompareAnswer;
  let judged: JudgeAnswer;
  beforeAll(async () => {
    two = await compared({ ...layouts(MIDDLE_LAYOUT, OTHER), want: WANT });
    judged = await judge(
      { bowler: averageBowler, ball: plainBall, lane: houseLane, want: WANT, layout: OTHER },
      { ...options, top: 4 },
    );
  });

  test('keeps its schema; only the first has no differences', () => {
    expect(compareAnswerSchema.parse(withSentences(two))).toEqual(withSentences(two));
    expect(two.rows.map(({ fromFirst }) => fromFirst === null)).toEqual([true, false]);
    expect(two.worlds).toBe(SMALL_BUDGET.worlds);
  });

  test('a layout beside the usual one differs as `judge` says, by each voice, without its search', () => {
    const { fromFirst, reaction, score, drilled } = two.rows[1];
    const { overMiddle, beatsMiddle, byPhysics } = judged.confidence;
    for (const voice of ['weighed', 'physics', 'practice'] as const)
      for (const id of WISHED_IDS)
        expect(fromFirst![voice].size[id], `${voice} ${id}`).toBeCloseTo(overMiddle[voice].size[id], 9);
    expect(fromFirst!.ahead).toBe(beatsMiddle);
    expect(fromFirst!.aheadByPhysics).toBe(byPhysics.beatsMiddle);
    expect(reaction).toEqual(judged.layout.reaction);
    expect(score).toBeCloseTo(judged.layout.score, 9);
    expect(drilled).toEqual(judged.layout.drilled);
    expect(two.scatter).toEqual(judged.scatter);
    expect(two.targets).toEqual(judged.targets);
  });

  test('turned round, every difference turns its sign, and the shares of tries add up to one', async () => {
    const turned = await compared({ ...layouts(OTHER, MIDDLE_LAYOUT), want: WANT });
    const [own, other] = [two.rows[1].fromFirst!, turned.rows[1].fromFirst!];
    for (const id of COMPARED_IDS) {
      expect(other.physics.size[id], id).toBeCloseTo(-own.physics.size[id], 9);
      expect(other.physics.visibility[id]).toBe(own.physics.visibility[id]);
    }
    expect(own.ahead! + other.ahead!).toBeCloseTo(1, 9);
  });

  test('without a wish nothing is ahead; what may not be drilled is said first, with the reason', async () => {
    const answer = await compared(layouts(MIDDLE_LAYOUT, NEAR_HOLE));
    expect(answer.rows[1].fromFirst).toMatchObject({ ahead: null, aheadByPhysics: null });
    expect(answer.targets).toEqual([]);
    expect(answer.verdict.map(({ code }) => code)).not.toContain('comes-nearest');
    expect(answer.verdict[0]).toMatchObject({
      code: 'not-to-be-drilled',
      params: { barred: [{ name: answer.rows[1].name, why: answer.rows[1].objections[0] }] },
    });
  });

  test('what may not be drilled is never best for the wish', async () => {
    const all = await compared({ ...layouts(MIDDLE_LAYOUT, NEAR_HOLE, OTHER), want: WANT });
    const [, barred] = all.rows;
    const nearest = all.verdict.find(({ code }) => code === 'comes-nearest' || code === 'none-comes-nearer');
    expect(Object.values(nearest!.params)).not.toContain(barred.name);
    const one = await compared({ ...layouts(MIDDLE_LAYOUT, NEAR_HOLE), want: WANT });
    expect(one.verdict.map(({ code }) => code)).toEqual(['not-to-be-drilled', expect.any(String)]);
  });

  test('the same ball under another name does the same: no difference is seen', async () => {
    const answer = await compared({
      varies: 'ball',
      want: { totalHook: 4 },
      entrants: ['One', 'Two'].map((name) => ({ ball: { ...plainBall, name }, layout: MIDDLE_LAYOUT })),
    });
    const { fromFirst } = answer.rows[1];
    for (const id of COMPARED_IDS) expect(fromFirst!.physics.size[id], id).toBeCloseTo(0, 9);
    expect(fromFirst!.ahead).toBeCloseTo(0.5, 9);
    expect(answer.verdict).toEqual([
      { code: 'all-look-alike', params: { names: ['One', 'Two'] } },
      { code: 'none-comes-nearer', params: { name: 'One', over: 'Two', ahead: 0.5, worlds: 16 } },
    ]);
  });

  test('a coarser finish hooks earlier and more, by physics and by practice, and that is seen', async () => {
    const answer = await compared({
      varies: 'finish',
      entrants: [4000, 500].map((surfaceGrit) => ({
        ball: { ...plainBall, surfaceGrit },
        layout: MIDDLE_LAYOUT,
      })),
    });
    const { physics, practice } = answer.rows[1].fromFirst!;
    for (const { size } of [physics, practice]) {
      expect(size.hookStartFt).toBeLessThan(0);
      expect(size.totalHookBoards).toBeGreaterThan(0);
    }
    expect(physics.visibility.totalHookBoards).toBe('seen');
    expect(answer.verdict[0]).toMatchObject({
      code: 'looks-beside-first',
      params: { first: '4000 grit', others: [{ name: '500 grit', visibility: 'seen' }] },
    });
  });
});
