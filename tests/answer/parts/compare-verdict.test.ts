import { describe, expect, test } from 'vitest';
import { compareVerdict } from '../../../src/answer/parts/compare-verdict.js';
import { COMPARED_IDS } from '../../../src/records/schemas/reaction-numbers.js';

const WORLDS = 64;

/** What is compared, as far as the verdict reads it, with its score in each world. */
function row(name: string, scoreIn: (world: number) => number) {
  const scored = { outcomes: [], scores: Array.from({ length: WORLDS }, (_, world) => scoreIn(world)) };
  const answer = { objections: [], legality: { legal: true, findings: [] } };
  return { name, weighed: scored, physics: scored, answer } as never;
}

const scatter = Object.fromEntries(COMPARED_IDS.map((id) => [id, 1])) as never;

describe('compareVerdict', () => {
  // of even pairs, 38 worlds or more come by luck in 8.4 of 100, 40 or more in 3.0 (binomial distribution)
  test.each([
    [36, 'none-comes-nearer'],
    [38, 'none-comes-nearer'],
    [40, 'comes-nearest'],
    [50, 'comes-nearest'],
  ])('ahead in %i of 64 worlds: %s', (wins, code) => {
    const rows = [row('A', (world) => (world < wins ? 1 : -1)), row('B', () => 0)];
    expect(compareVerdict(rows, scatter, { hasWish: true, worlds: WORLDS }).at(-1)).toEqual({
      code,
      params: { name: 'A', over: 'B', ahead: wins / WORLDS, worlds: WORLDS },
    });
  });
});
