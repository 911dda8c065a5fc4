import { describe, expect, test } from 'vitest';
import { judge } from '../../src/answer/judge.js';
import { recommend } from '../../src/answer/recommend.js';
import { rollAnswer } from '../../src/answer/roll-answer.js';
import { sheetAnswer } from '../../src/answer/sheet-answer.js';
import { Refusal } from '../../src/records/refusals/refusal.js';
import { staysOnLane } from '../../src/simulate/stays-on-lane.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

/** 700 rpm with 2 mm of offset: d ω² is 1.1 g, more than gravity holds down. */
const bowler = { ...averageBowler, revRateRpm: 700 };
const ball = { ...plainBall, topWeightOz: 6, pinToCgIn: 6 };
const inputs = { bowler, ball, lane: houseLane };
const layout = { drillingAngleDeg: 70, pinToPapIn: 6, valAngleDeg: 70 };
const options = {
  seed: 1,
  top: 3,
  workers: 1,
  pinSide: 'above',
  models: null,
  budget: SMALL_BUDGET,
} as const;

const codeOf = async (run: () => unknown): Promise<string> => {
  try {
    await run();
  } catch (error) {
    if (error instanceof Refusal) return error.statements.map(({ code }) => code).join();
    throw error;
  }
  return 'an answer';
};

describe('a ball that would hop off the lane', () => {
  test.each([
    ['roll', () => rollAnswer({ ...inputs, layout })],
    ['sheet', () => sheetAnswer({ ...inputs, layout }, { seed: 1, date: '2026-11-26', ounce: 'moment' })],
  ] as const)(
    '%s says so in one error that names the rev rate, and prints no number that is none',
    async (_, run) => {
      expect(await codeOf(run)).toBe('ball-would-hop');
    },
  );

  test('judge says so, or that no layout is left to compare with', async () => {
    expect(['ball-would-hop', 'no-layout']).toContain(
      await codeOf(() => judge({ ...inputs, want: {}, layout }, options)),
    );
  });

  test('recommend leaves out layouts with which it would hop, or says so of all', async () => {
    expect(['ball-would-hop', 'no-layout']).toContain(
      await codeOf(() =>
        recommend({ ...inputs, bowler: { ...bowler, revRateRpm: 700, speedMph: 12 }, want: {} }, options),
      ),
    );
  });

  test('any other end of a shot is told as it is', () => {
    for (const outcome of ['pins', 'gutter', 'stopped'] as const) expect(staysOnLane(outcome)).toBe(outcome);
  });
});
