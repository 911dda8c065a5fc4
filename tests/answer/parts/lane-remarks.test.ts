import { describe, expect, test } from 'vitest';
import { laneRemarks } from '../../../src/answer/parts/lane-remarks.js';
import { houseLane } from '../../support/problems.js';
import { said as inWords } from '../../support/said.js';

type Facts = Parameters<typeof laneRemarks>[0];

/** What is said of a lane with these facts. */
const said = (given: {
  patternFt?: number;
  oil?: Partial<Facts['oil']>;
  wear?: Partial<NonNullable<Facts['wear']>>;
}): string =>
  inWords(
    laneRemarks({
      lane: { ...houseLane, patternFt: given.patternFt ?? 40 },
      hand: 'right',
      oil: {
        total: 3000,
        meanUnits: { own: 10, middle: 30, far: 10 },
        middleToOwn: 3,
        middleToFar: 3,
        endsByFoot: [
          { toFt: 15, share: 0.5 },
          { toFt: 30, share: 0.9 },
          { toFt: 60, share: 1 },
        ],
        ...given.oil,
      },
      wear: given.wear
        ? {
            games: 12,
            wornSide: 'right',
            takenFromTrack: 0.5,
            takenOfAll: 0.2,
            carriedDown: 0.05,
            carriedOff: 0.15,
            ...given.wear,
          }
        : null,
    }),
  );

test.each([
  [30, /\bshort\b/],
  [35, /\bshort\b/],
  [36, /medium/],
  [42, /medium/],
  [43, /\blong\b/],
])('a pattern of %s ft is %s', (patternFt, word) => {
  const text = said({ patternFt });
  for (const each of [/\bshort\b/, /medium/, /\blong\b/])
    expect(each.test(text), String(each)).toBe(String(each) === String(word));
});

test.each([
  [40, 9],
  [45, 14],
  [34, 3], // the length less 31, by common practice
  [33, 3], // but no path keeps nearer the gutter
])('on %s ft the breakpoint is near board %s', (patternFt, board) => {
  expect(said({ patternFt })).toMatch(new RegExp(`board.{0,4} ?${board}\\b`));
});

describe('oil in the middle over oil outside', () => {
  const FORGIVING = /forgiving/;
  const HELPS = /forgives a miss a little/;
  const EVEN = /forgives no miss/;
  const STAYS_OUT = /stays out/;
  test.each([
    [10, FORGIVING],
    [4, FORGIVING],
    [3.99, HELPS],
    [2.01, HELPS],
    [2, EVEN],
    [1, EVEN],
    [0.87, EVEN], // 1/1.15 is 0.8696
    [0.869, STAYS_OUT],
    [0.3, STAYS_OUT],
  ])('%s times: %s', (middleToOwn, word) => {
    const text = said({ oil: { middleToOwn, middleToFar: middleToOwn } });
    for (const each of [FORGIVING, HELPS, EVEN, STAYS_OUT])
      expect(each.test(text), String(each)).toBe(each === word);
  });

  test.each([
    [3, 3, true],
    [3, 3.44, true],
    [3.44, 3, true],
    [3, 3.46, false],
    [3.46, 3, false],
  ])('%s to the one side, %s to the other: alike is %s (within 1.15)', (middleToOwn, middleToFar, alike) => {
    expect(/alike/.test(said({ oil: { middleToOwn, middleToFar } }))).toBe(alike);
  });
});

describe('wear', () => {
  test('shares are told in whole per cent, those under a tenth with one digit more', () => {
    const text = said({
      wear: { takenFromTrack: 0.514, takenOfAll: 0.1, carriedOff: 0.0949, carriedDown: 0.0051 },
    });
    for (const share of ['51 %', '10 %', '9.5 %', '0.5 %']) expect(text).toContain(share);
    for (const share of ['51.4 %', '10.0 %', '0.51 %']) expect(text).not.toContain(share);
  });
  test('is not told where nothing was bowled', () => expect(said({})).not.toMatch(/games/));
});
