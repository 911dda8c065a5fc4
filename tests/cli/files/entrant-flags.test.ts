import { describe, expect, test } from 'vitest';
import { entrantFlags } from '../../../src/cli/files/entrant-flags.js';
import type { CompareOptions } from '../../../src/cli/flags/options.js';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import { fakeTerminal } from '../../support/fake-terminal.js';

const read = (options: Partial<CompareOptions>) =>
  entrantFlags({ color: false, input: false, ...options }, fakeTerminal());
const A = '50 x 4 1/2 x 35';
const B = '70 x 4 1/2 x 30';
const BALL = ['plain-medium'];

describe('entrantFlags', () => {
  test('several layouts share the ball', () => {
    const { varies, entrants } = read({ ball: BALL, layout: [A, B] });
    expect(varies).toBe('layout');
    expect(entrants.map(({ layout }) => layout.drillingAngleDeg)).toEqual([50, 70]);
    expect(entrants[1].ball).toBe(entrants[0].ball);
  });

  test('several balls share the layout, the usual one where none is given', () => {
    const { varies, entrants } = read({ ball: ['plain-medium', 'plain-high'] });
    expect(varies).toBe('ball');
    expect(entrants.map(({ layout }) => layout)).toEqual([MIDDLE_LAYOUT, MIDDLE_LAYOUT]);
    expect(new Set(entrants.map(({ ball }) => ball.name)).size).toBe(2);
  });

  test('several finishes are of one ball with one layout', () => {
    const { varies, entrants } = read({ ball: BALL, layout: [B], finish: ['500', '4000'] });
    expect(varies).toBe('finish');
    expect(entrants.map(({ ball }) => ball.surfaceGrit)).toEqual([500, 4000]);
    expect(entrants.map(({ layout }) => layout.drillingAngleDeg)).toEqual([70, 70]);
  });

  const HOW = 'Give --layout, --ball or --finish two to six times, and the others once: one thing varies.';
  test.each([
    { options: { ball: BALL, layout: [A] }, says: `--layout must be given 2 to 6 times; got one. ${HOW}` },
    { options: { ball: BALL, finish: ['500'] }, says: '--finish must be given 2 to 6 times; got one.' },
    {
      options: { ball: ['plain-medium', 'plain-high'], layout: [A, B] },
      says: '--ball must be given once where --layout is given several times; got 2 of them.',
    },
    {
      options: { ball: ['plain-medium', 'plain-high'], finish: ['500'] },
      says: '--finish must not stand beside several of --ball; got "500".',
    },
    { options: { ball: BALL, layout: [A, '50 x 4.5 x 35'] }, says: 'got "50 x 4.5 x 35" twice.' },
    {
      options: { ball: BALL, finish: ['500', '4'] },
      says: '--finish must be a whole number, 220 to 6000; got "4".',
    },
    {
      options: { ball: BALL, layout: Array.from({ length: 7 }, (_, i) => `${10 + 10 * i} x 4 x 40`) },
      says: '--layout must be given 2 to 6 times; got 7 of them.',
    },
    { options: { layout: [A, B] }, says: '--ball is missing.' },
    { options: { ball: BALL, layout: [A, '70 mb x 4 x 30'] }, says: 'other-mark' },
  ])('refuses $options', ({ options, says }) => {
    expect(() => read(options)).toThrow(says);
  });

  test('tells all faults at once', () => {
    expect(() => read({ ball: ['nope', 'plain-high'], layout: ['50 x 4'], finish: ['x', '4'] })).toThrow(
      /once.*\n.*50 x 4.*\n.*nope.*\n.*"x".*\n.*"4"/s,
    );
  });
});
