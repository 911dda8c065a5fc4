import { beforeAll, describe, expect, test } from 'vitest';
import { USUAL_BUDGET } from '../../src/prepare/budget.js';
import { recommendAnswerSchema } from '../../src/records/answers/recommend-answer.js';
import { type Ended, runSmall } from '../support/run-cli.js';
import { demoAnswer } from '../support/shared-answer.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

describe('flarewise with no terminal attached', () => {
  let whole: Ended;
  let small: Ended;
  beforeAll(async () => {
    whole = await demoAnswer();
    small = await runSmall(['--json', '--workers', '1']);
  });

  test('answers for the demo records, says so on stderr, and exits 0', () => {
    for (const { code, err } of [whole, small]) {
      expect(code).toBe(0);
      expect(err).toContain('demo records');
      expect(err).toContain('flarewise recommend');
    }
  });

  test('--json is one JSON document of the published schema', () => {
    for (const { out } of [whole, small]) {
      const answer = recommendAnswerSchema.parse(JSON.parse(out));
      expect(answer.layouts.length).toBeGreaterThan(0);
      expect(answer.cautions.length).toBeGreaterThan(0);
      expect(out).toMatch(/^\{\n {2}"[\s\S]*\n\}\n$/);
    }
  });

  test('one thread and two give the same bytes', async () => {
    const pooled = await runSmall(['--json', '--workers', '2']);
    expect(pooled.code).toBe(0);
    expect(pooled.out).toBe(small.out);
  });

  test('a smaller budget answers with fewer worlds and the same inputs', () => {
    const [usual, less] = [whole, small].map(({ out }) => recommendAnswerSchema.parse(JSON.parse(out)));
    expect(usual!.layouts[0]!.confidence.worlds).toBe(USUAL_BUDGET.worlds);
    expect(less!.layouts[0]!.confidence.worlds).toBe(SMALL_BUDGET.worlds);
    expect(less!.search.candidates).toBeLessThan(usual!.search.candidates);
    expect(less!.search.shots).toBeLessThan(usual!.search.shots / 5);
    for (const key of ['inputs', 'cautions'] as const) expect(less![key]).toEqual(usual![key]);
  });

  test('in words it is the same answer, without colour, and the same twice', async () => {
    const [once, twice] = [await runSmall([]), await runSmall([])];
    expect(once.code).toBe(0);
    expect(twice.out).toBe(once.out);
    expect(once.out).toContain(JSON.parse(small.out).layouts[0].text);
    expect(once.out).not.toContain('\u001b');
    for (const line of once.out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
  });
});
