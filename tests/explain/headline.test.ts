import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { headline } from '../../src/explain/headline.js';
import type { LayoutDifference } from '../../src/records/answers/answer.js';
import { VISIBILITIES } from '../../src/records/schemas/visibilities.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { say } from '../../src/report/wording/say.js';
import { differs, scatter } from '../support/recommend-answer.js';

type Visibility = LayoutDifference['weighed']['visibility'];

const differenceOf = (weighed: Visibility, physics: Visibility, practice: Visibility): LayoutDifference => {
  const each = differs(1, weighed);
  return {
    ...each,
    physics: { ...each.physics, visibility: physics },
    practice: { ...each.practice, visibility: practice },
  };
};

const factsWith = (difference: LayoutDifference | null, ahead: number) => ({
  layout: '70 x 4 1/2 x 30',
  usual: '50 x 4 1/2 x 35',
  ahead,
  worlds: 128,
  readings: ['hookStartFt' as const, 'totalHookBoards' as const],
  difference,
  rival: null,
  hasWish: true,
  scatter,
  ties: 12,
  of: 300,
});

describe('headline', () => {
  test.each([
    { weighed: 'unseen', physics: 'unseen', practice: 'unseen', ahead: 0.99, weight: 0.5, code: 'usual-as-good' },
    { weighed: 'seen', physics: 'unseen', practice: 'unseen', ahead: 0.99, weight: 0.5, code: 'usual-as-good' },
    { weighed: 'barely', physics: 'unseen', practice: 'barely', ahead: 0.99, weight: 0.5, code: 'practice-sees-more' },
    { weighed: 'seen', physics: 'unseen', practice: 'seen', ahead: 0.6, weight: 0.5, code: 'practice-sees-more' },
    { weighed: 'unseen', physics: 'unseen', practice: 'seen', ahead: 0.99, weight: 0, code: 'usual-as-good' },
    { weighed: 'unseen', physics: 'barely', practice: 'seen', ahead: 0.99, weight: 0.5, code: 'pull-apart' },
    { weighed: 'unseen', physics: 'seen', practice: 'unseen', ahead: 0.6, weight: 0.5, code: 'pull-apart' },
    { weighed: 'barely', physics: 'barely', practice: 'seen', ahead: 0.99, weight: 0.5, code: 'barely-seen' },
    { weighed: 'barely', physics: 'seen', practice: 'unseen', ahead: 0.6, weight: 0.5, code: 'barely-seen' },
    { weighed: 'seen', physics: 'barely', practice: 'barely', ahead: 0.9, weight: 0.5, code: 'seen-and-sure' },
    { weighed: 'seen', physics: 'seen', practice: 'unseen', ahead: 0.9, weight: 0, code: 'seen-and-sure' },
    { weighed: 'seen', physics: 'seen', practice: 'seen', ahead: 0.89, weight: 0.5, code: 'seen-not-sure' },
  ] as const)(
    'weighed $weighed, by physics $physics, by practice $practice, ahead in $ahead, weight $weight: $code',
    ({ weighed, physics, practice, ahead, weight, code }) => {
      const { rival, hasWish, ...facts } = factsWith(differenceOf(weighed, physics, practice), ahead);
      expect(headline({ ...facts, rival, hasWish }, weight)).toEqual({ code, params: facts });
    },
  ); // biome-ignore format: one row a case

  test('the usual layout that is first since what is ahead of it finds the gutter more often: that is said', () => {
    const rival = { layout: '20 x 3 x 44', ahead: 1, gutterShare: 0.12, usualGutterShare: 0.06 };
    expect(headline({ ...factsWith(null, 0.5), rival }, 0.5)).toEqual({
      code: 'usual-arrives-more',
      params: { usual: '50 x 4 1/2 x 35', ...rival },
    });
    const difference = differenceOf('seen', 'seen', 'unseen');
    expect(headline({ ...factsWith(difference, 0.95), rival }, 0.5).code).toBe('seen-and-sure');
  });

  test('the usual layout itself is said to be just that, with how many tie with it', () => {
    expect(headline(factsWith(null, 0.5), 0.5)).toEqual({
      code: 'is-the-usual',
      params: { usual: '50 x 4 1/2 x 35', ties: 12, of: 300 },
    });
  });

  test('the usual layout where nothing was asked for: that is said, and what to do', () => {
    expect(headline({ ...factsWith(null, 0.5), hasWish: false }, 0.5)).toEqual({
      code: 'nothing-asked',
      params: { usual: '50 x 4 1/2 x 35' },
    });
    const difference = differenceOf('seen', 'seen', 'unseen');
    expect(headline({ ...factsWith(difference, 0.95), hasWish: false }, 0.5).code).toBe('seen-and-sure');
  });

  const any = fc.constantFrom(...VISIBILITIES);

  test('by physics alone nothing is said of practice', () => {
    fc.assert(
      fc.property(any, any, any, fc.double({ min: 0.5, max: 1, noNaN: true }), (a, b, c, ahead) => {
        const { code } = headline(factsWith(differenceOf(a, b, c), ahead), 0);
        expect(code).not.toBe('practice-sees-more');
      }),
    );
  });

  test('what would not be seen is never said to be shown by a game, nor is it sure', () => {
    fc.assert(
      fc.property(any, any, any, fc.double({ min: 0.5, max: 1, noNaN: true }), (a, b, c, ahead) => {
        for (const units of [UNITS.trade, UNITS.metric]) {
          const text = say(headline(factsWith(differenceOf(a, b, c), ahead), 0.5), units);
          if (/would not see/.test(text)) expect(text).not.toMatch(/game shows|clearly/);
          if (/game shows/.test(text)) expect(a).toBe('seen');
        }
      }),
    );
  });
});
