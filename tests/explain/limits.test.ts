import { describe, expect, test } from 'vitest';
import { FOOT } from '../../src/base/units.js';
import { limits } from '../../src/explain/limits.js';
import type { LeverEffect, TargetAnswer } from '../../src/records/answers/answer.js';
import type { Limit } from '../../src/records/answers/statements/limits.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { sayAll } from '../../src/report/wording/say.js';
import type { Rejected } from '../../src/search/candidates/nominal-shots.js';
import type { Target } from '../../src/search/scoring/target.js';
import { layout, reaction, simulated } from '../support/recommend-answer.js';

/** What is said, in the trade's units. */
const told = (lines: readonly Limit[]): string[] => sayAll(lines, UNITS.trade);

type Arguments = Parameters<typeof limits>;

/** A wish for 38 ft of hook start, of which layouts attain 30 to 40. */
const target: Target = { wish: 'hookStart', step: 3, value: 38 * FOOT, low: 30 * FOOT, high: 40 * FOOT };
const answered = (low: number, high: number): TargetAnswer => ({
  wish: 'hookStart',
  step: 3,
  reading: 'hookStartFt',
  value: 38,
  attainable: { low, high },
});

const result = ({
  found = 100,
  rejected = [] as readonly Rejected[],
  targets = [] as readonly Target[],
  others = [] as readonly Arguments[1][],
} = {}): Arguments[0] =>
  ({
    targets,
    found: Array.from({ length: found }, (_, i) => ({ outcome: others[i] ?? best(34) })),
    attained: [],
    rejected,
  }) as unknown as Arguments[0];

const best = (hookStartFt: number, rollsBeforePins = true): Arguments[1] =>
  ({
    shot: 'pins',
    reaction: {
      hookStart: hookStartFt * FOOT,
      sharpness: 0.1,
      totalHook: 0.4,
      entryAngle: 0.09,
      rollsBeforePins,
    },
  }) as Arguments[1];

/** Bands of the reaction in which hook start varies so far. */
const bands = (low: number, high: number): Arguments[3] => ({
  ...simulated(layout, 80, reaction).bands.reaction,
  hookStartFt: { low, high },
});
const NARROW = bands(37.9, 38.1);

test('limits: nothing is said where nothing holds the result back', () => {
  expect(limits(result({ targets: [target] }), best(38), [answered(30, 40)], NARROW, [])).toEqual([]);
});

describe('limits: a wish missed by more than 15 % of the attainable range is told, in per cent', () => {
  // ten feet are attainable, so a foot is 10 %
  test.each([39.4, 38, 36.6])('%s ft for 38: no', (feet) => {
    expect(limits(result({ targets: [target] }), best(feet), [], NARROW, [])).toEqual([]);
  });
  test.each([
    [39.6, 16],
    [36.4, 16],
    [40, 20],
    [34, 40],
  ])('%s ft for 38: yes, by %s %%', (feet, percent) => {
    const lines = told(limits(result({ targets: [target] }), best(feet), [], NARROW, []));
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/hook ?start/i);
    const share = lines[0]!.match(/-?\d+(\.\d+)?/g)!.map((text) => Math.abs(Number(text)));
    expect(share.some((each) => Math.round(each >= 1 ? each : 100 * each) === percent)).toBe(true);
  });
  test('only those missed are named', () => {
    const met: Target = { wish: 'totalHook', step: 3, value: 0.4, low: 0.2, high: 0.7 };
    const [line] = told(limits(result({ targets: [target, met] }), best(34), [], NARROW, []));
    expect(line).not.toMatch(/total ?hook/i);
  });
  test('where another layout meets every wish, only the first one misses', () => {
    const lines = limits(result({ targets: [target], others: [best(38.5)] }), best(34), [], NARROW, []);
    expect(lines.map(({ code }) => code)).toEqual(['wish-missed']);
    expect(told(lines)[0]).toMatch(/^The first layout misses the target for hook start by 4\.0 ft/);
  });
  test('where each wish is met by some layout and all by none, they cannot be had together; the miss has its sign', () => {
    const earliest: Target = { ...target, value: 30 * FOOT };
    const [line] = limits(
      result({ targets: [target, earliest], found: 2, others: [best(38), best(30)] }),
      best(34),
      [],
      NARROW,
      [],
    );
    expect(line).toMatchObject({ code: 'wishes-do-not-join' });
    const { missed } = (line as Extract<Limit, { code: 'wishes-do-not-join' }>).params;
    expect(missed.map(({ by }) => by.toFixed(6))).toEqual(['-4.000000', '4.000000']);
  });
});

describe('limits: layout that moves a number less than shots, lane and core do is told with both', () => {
  test('3 ft by layout, 3.2 ft by luck', () => {
    const lines = told(limits(result(), best(38), [answered(36, 39)], bands(36.4, 39.6), []));
    expect(lines).toHaveLength(1);
    expect(lines[0]).toMatch(/hook ?start/i);
    expect(lines[0]).toMatch(/\b36\b|36\.0/);
    expect(lines[0]).toMatch(/\b39\b|39\.0/);
  });
  test('3 ft by layout, 2.8 ft by luck: no', () => {
    expect(limits(result(), best(38), [answered(36, 39)], bands(36.6, 39.4), [])).toEqual([]);
  });
});

describe('limits: what would move a number more than layout does is told only where this answer’s own trials say so', () => {
  /** A lever that starts the hook there; the best layout does at 38 ft, and all layouts reach 36 to 39. */
  const lever = (kind: LeverEffect['kind'], hookStartFt: number): LeverEffect => ({
    kind,
    change: { code: 'finish-at', params: { grit: 500, insteadOf: 2000 } },
    score: 50,
    reaction: { ...reaction, hookStartFt },
  });
  const lineOf = (...levers: readonly LeverEffect[]): string => {
    const lines = told(limits(result(), best(38), [answered(36, 39)], bands(36.4, 39.6), levers));
    expect(lines).toHaveLength(1);
    return lines[0]!;
  };
  test('nothing where nothing was tried, or where all of it moves the number less', () => {
    expect(lineOf()).not.toMatch(/move it more/);
    expect(lineOf(lever('surface', 36.6), lever('line', 40.9))).not.toMatch(/move it more/);
  });
  test('each kind over all its trials and the layout as it is', () => {
    const line = lineOf(lever('surface', 36.4), lever('surface', 39.6), lever('line', 40.9));
    expect(line).toMatch(/move it more: the cover’s finish by 3\.2 ft/);
    expect(line).not.toMatch(/the line/);
    expect(lineOf(lever('ball', 34.9))).toMatch(/move it more: another ball by 3\.1 ft/);
  });
});

describe('limits: what set aside more than a quarter of the layouts looked at is told with the count', () => {
  test.each([
    [74, 26, 1],
    [75, 25, 0], // a quarter is not more
    [80, 20, 0],
  ])('%s found, %s set aside', (found, count, lines) => {
    const said = told(
      limits(
        result({ found, rejected: [{ why: { code: 'ring-near-hole', params: {} }, count }] }),
        best(38),
        [],
        NARROW,
        [],
      ),
    );
    expect(said).toHaveLength(lines);
    for (const line of said) expect(line).toContain(String(count));
  });
  test('all reasons count among those looked at', () => {
    const rejected: Rejected[] = [
      { why: { code: 'ring-near-hole', params: {} }, count: 30 },
      { why: { code: 'pin-near-hole', params: {} }, count: 20 },
    ];
    // 30 of 100 are more than a quarter, 20 are not
    expect(limits(result({ found: 50, rejected }), best(38), [], NARROW, [])).toHaveLength(1);
  });
});

test('limits: a ball that still slides at the pins is told', () => {
  expect(limits(result(), best(38, false), [], NARROW, [])).toHaveLength(1);
});
