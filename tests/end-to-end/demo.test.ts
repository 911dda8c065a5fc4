import { beforeAll, describe, expect, test } from 'vitest';
import { recommendAnswerSchema } from '../../src/records/answers/recommend-answer.js';
import { type Ended, runCli } from '../support/run-cli.js';

describe('flarewise with no terminal attached', () => {
  let alone: Ended;
  let pooled: Ended;
  beforeAll(async () => {
    alone = await runCli(['--json', '--workers', '1']);
    pooled = await runCli(['--json', '--workers', '2']);
  });

  test('answers for the demo records, says so on stderr, and exits 0', () => {
    expect(alone.code).toBe(0);
    expect(alone.err).toContain('demo records');
    expect(alone.err).toContain('flarewise recommend');
  });

  test('--json is one JSON document of the published schema', () => {
    const answer = recommendAnswerSchema.parse(JSON.parse(alone.out));
    expect(answer.layouts.length).toBeGreaterThan(0);
    expect(answer.cautions.length).toBeGreaterThan(0);
    expect(alone.out).toMatch(/^\{\n {2}"[\s\S]*\n\}\n$/);
  });

  test('one thread and two give the same bytes', () => {
    expect(pooled.code).toBe(0);
    expect(pooled.out).toBe(alone.out);
  });

  test('in words it is the same answer, without colour, and the same twice', async () => {
    const [once, twice] = [await runCli([]), await runCli([])];
    expect(once.code).toBe(0);
    expect(twice.out).toBe(once.out);
    expect(once.out).toContain(JSON.parse(alone.out).layouts[0].text);
    expect(once.out).not.toContain('\u001b');
    for (const line of once.out.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
  });
});
