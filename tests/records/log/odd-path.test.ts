import { describe, expect, test } from 'vitest';
import { oddShot } from '../../../src/records/log/odd-shot.js';
import { shotFromOtherSide } from '../../../src/records/log/other-side.js';
import { readLine } from '../../../src/records/log/read-line.js';
import type { LoggedShot } from '../../../src/records/schemas/shot-log.js';

const odd = (line: string, more: LoggedShot = {}) =>
  oddShot({ ...readLine(line.split(' ')), ...more }, { targetBoard: 14 }, null);

describe('paths that balls take are not odd', () => {
  test.each([
    { what: 'a hook on a house shot', line: '20 14 8 17.5' },
    { what: 'a two-handed one', line: '33 19 9 17.5' },
    { what: 'a straight ball sent inward', line: '10 12 - 17.5' },
    { what: 'up the second arrow', line: '12 10 8 17' },
    { what: 'one that missed to the outside', line: '20 12 3 g' },
    { what: 'one that hooked past', line: '20 14 9 29' },
    { what: 'one that did not come back', line: '20 14 6 7' },
    { what: 'nothing but the pins', line: '- - - 17' },
    { what: 'boards far down', line: '20 14 8 17', more: { breakpointFt: 42, boardAt50Ft: 10.5 } },
  ])('$what', ({ line, more }) =>
    expect(odd(line, more)).toEqual({ oddities: [], fitsFromOtherSide: false }),
  );
});

describe('paths that no ball takes are', () => {
  test.each([
    { what: 'all boards from the wrong side', line: '20 26 32 23', codes: ['bends-outward'], fits: true },
    {
      what: 'a mild hook from the wrong side',
      line: '28 28.5 32 23',
      codes: ['breakpoint-not-outermost'],
      fits: true,
    },
    { what: 'a breakpoint inside the pocket', line: '20 14 21 17', codes: ['breakpoint-not-outermost'] },
    { what: 'laydown and breakpoint exchanged', line: '8 14 20 17', codes: ['bends-outward'], fits: true },
    { what: 'farther out than it was sent', line: '20 19 2 17', codes: ['breakpoint-past-line'] },
    { what: 'more angle than anyone has', line: '38 12 5 17', codes: ['sent-too-far'] },
    { what: 'a gutter ball from the middle', line: '20 14 15 g', codes: ['gutter-from-inside'] },
    {
      what: 'a turn beside the pins',
      line: '20 14 5 17',
      more: { breakpointFt: 58 },
      codes: ['turns-too-much'],
    },
  ])('$what', ({ line, more, codes, fits = false }) => {
    const { oddities, fitsFromOtherSide } = odd(line, more);
    expect(oddities.map(({ code }) => code)).toEqual(codes);
    expect(fitsFromOtherSide).toBe(fits);
  });

  test('but not once the person has said that it was so', () => {
    expect(odd('20 26 32 23', { confirmed: true }).oddities).toEqual([]);
  });

  test('nor where they say that their readings are that far off', () => {
    const shot = readLine('20 19 2 17'.split(' '));
    expect(oddShot(shot, { readingErrors: { arrowsReadOffBoards: 4 } }, null).oddities).toEqual([]);
  });
});

test('a board counted from the other side and back is the same', () => {
  const shot = { ...readLine('20 14.5 8 g'.split(' ')), boardAt50Ft: 12, flareIn: 5 };
  expect(shotFromOtherSide(shotFromOtherSide(shot))).toEqual(shot);
  expect(shotFromOtherSide(shot)).toMatchObject({
    laydownBoard: 20,
    arrowsBoard: 25.5,
    boardAt50Ft: 28,
    gutter: true,
  });
});
