import { describe, expect, test } from 'vitest';
import type { Headline } from '../../../../src/records/answers/statements/headlines.js';
import { sizeOfGain, verdictText } from '../../../../src/report/screens/judge-report.js';
import { UNITS } from '../../../../src/report/text/display-units.js';
import { say } from '../../../../src/report/wording/say.js';
import { scatterText, sizeText } from '../../../../src/report/wording/statements/size-text.js';
import { judgeAnswer } from '../../../support/judge-answer.js';
import { differs, scatter } from '../../../support/recommend-answer.js';

const params = {
  layout: '70 x 4 1/2 x 30',
  usual: '50 x 4 1/2 x 35',
  ahead: 0.87,
  worlds: 200,
  readings: ['hookStartFt' as const, 'totalHookBoards' as const],
  difference: differs(1, 'barely', 0.6), // weighed 1.3 ft, practice 0.6 ft
  scatter,
  ties: 14,
  of: 212,
};
const sentence = (
  code: Exclude<Headline['code'], 'is-the-usual' | 'nothing-asked' | 'usual-arrives-more'>,
  units = UNITS.trade,
): string => say({ code, params }, units);

describe('headlines: the size before the certainty, in the units asked for', () => {
  test('as good as the usual: by how little, beside the bowler’s own scatter, and what may decide', () => {
    expect(sentence('usual-as-good')).toBe(
      'The usual 50 x 4 1/2 x 35 is as good: you would not see the difference. This one is ahead of it in 87 of 100 simulated tries, but ' +
        'only 1.3 ft later, 0.7 boards less; your shots vary by ±1.5 ft and ±2.1 boards. ' +
        '14 of 212 layouts tie: choose one that is easy to mark, keeps clear of the holes or has worked for you.',
    );
  });

  test('as good as the usual, with a difference too small to show: that is said', () => {
    const small = { ...params, difference: differs(0.001, 'unseen', 0) };
    expect(say({ code: 'usual-as-good', params: small }, UNITS.trade)).toContain(
      'simulated tries, but only in what is too small to show; your shots vary',
    );
  });

  test('seen by practice alone: both sizes, each under its name', () => {
    expect(sentence('practice-sees-more')).toBe(
      'Ahead of the usual 50 x 4 1/2 x 35 in 87 of 100 simulated tries. By physics you would not see the difference (1.0 ft later, ' +
        '0.5 boards less; your shots vary by ±1.5 ft and ±2.1 boards). If practice is right, it is 0.6 ft later, 0.3 boards less.',
    );
  });

  test('physics and practice that pull apart: both sizes, and that the sum could not be seen', () => {
    expect(sentence('pull-apart')).toBe(
      'Physics and practice disagree. Compared with the usual 50 x 4 1/2 x 35 it is 1.0 ft later, 0.5 boards less by physics, 0.6 ft later, ' +
        '0.3 boards less by practice; with both combined you would not see the difference. ' +
        'It is ahead in 87 of 100 simulated tries; your shots vary by ±1.5 ft and ±2.1 boards.',
    );
  });

  test('barely seen, seen and sure, seen and not sure: the size with both combined', () => {
    expect(sentence('barely-seen')).toMatch(/87 of 100 simulated tries: 1\.3 ft later/);
    expect(sentence('barely-seen')).toContain('You would need a night of shots with each to see that');
    expect(sentence('seen-and-sure')).toMatch(/: 1\.3 ft later.*\. You would see it in a game with each/);
    expect(sentence('seen-not-sure')).toMatch(
      /^Compared with the usual .*: 1\.3 ft later, .*, which you would see in a game with each\. It is ahead in 87 of 100/,
    );
    const seldom = say({ code: 'seen-not-sure', params: { ...params, ahead: 0.6 } }, UNITS.trade);
    expect(seldom).toContain('It is ahead in only 60 of 100');
  });

  test('in metres where a person reads metres', () => {
    for (const code of [
      'usual-as-good',
      'practice-sees-more',
      'pull-apart',
      'barely-seen',
      'seen-and-sure',
      'seen-not-sure',
    ] as const) {
      const text = sentence(code, UNITS.metric);
      expect(text).toMatch(/0\.\d+ m later/);
      expect(text).toMatch(/±0\.\d+ m/);
      expect(text).not.toMatch(/\bft\b/);
    }
  });

  test('the usual layout, where what is ahead of it finds the gutter more often', () => {
    const params = {
      usual: '50 x 4 1/2 x 35',
      usualGutterShare: 0.0625,
      layout: '20 x 2 3/4 x 20',
      ahead: 1,
      gutterShare: 0.1171875,
    };
    expect(say({ code: 'usual-arrives-more', params }, UNITS.trade)).toBe(
      'Drill the usual 50 x 4 1/2 x 35: 20 x 2 3/4 x 20 is ahead of it in 100 of 100 simulated tries, but does not reach ' +
        'the pins in 12 of 100; the usual does not in 6.',
    );
  });

  test('the usual layout where nothing was asked for', () => {
    expect(say({ code: 'nothing-asked', params: { usual: '50 x 4 1/2 x 35' } }, UNITS.trade)).toBe(
      'Drill the usual 50 x 4 1/2 x 35: you asked for no particular reaction, and no layout enters the pocket at a clearly better angle. ' +
        'Say how the ball should hook, and layouts differ.',
    );
  });

  test('the usual layout itself', () => {
    const text = say(
      { code: 'is-the-usual', params: { usual: '50 x 4 1/2 x 35', ties: 14, of: 212 } },
      UNITS.trade,
    );
    expect(text).toMatch(
      /^Drill the usual 50 x 4 1\/2 x 35: no other layout is ahead of it in most simulated tries\. 14 of 212/,
    );
  });
});

describe('sizeText and scatterText', () => {
  const size = { hookStartFt: -0.44, sharpnessDegPerFt: 0.0004, totalHookBoards: 1.26 };

  test('names what is more and what is less, and leaves out what would be shown as 0', () => {
    expect(sizeText(size, ['hookStartFt', 'sharpnessDegPerFt', 'totalHookBoards'], UNITS.trade)).toBe(
      '0.4 ft earlier, 1.3 boards more',
    );
    expect(sizeText(size, ['totalHookBoards'], UNITS.trade)).toBe('1.3 boards more');
    expect(sizeText(size, ['sharpnessDegPerFt'], UNITS.trade)).toBe('no different');
    expect(sizeText({ ...size, hookStartFt: 0 }, ['hookStartFt'], UNITS.metric)).toBe('no different');
  });

  test('lists how far shots vary, the last behind an and', () => {
    expect(scatterText(scatter, ['hookStartFt'], UNITS.trade)).toBe('±1.5 ft');
    expect(scatterText(scatter, ['hookStartFt', 'sharpnessDegPerFt', 'totalHookBoards'], UNITS.trade)).toBe(
      '±1.5 ft, ±0.052 deg/ft and ±2.1 boards',
    );
  });
});

describe('verdict on two layouts', () => {
  test('what you would not see is never clearly anything', () => {
    for (const each of [
      'not-allowed',
      'clearly-worse',
      'probably-worse',
      'no-difference-seen',
      'as-good',
    ] as const) {
      const text = verdictText({ ...judgeAnswer, verdict: each });
      expect(/clearly/.test(text) && /not see/.test(text)).toBe(false);
    }
  });

  test('a second opinion says the sizes by physics and by practice', () => {
    const text = sizeOfGain(judgeAnswer, UNITS.trade);
    expect(text).toMatch(
      /^70 x 4 1\/2 x 30, the best found, is 0\.6 ft later, .* by physics, 0\.4 ft later, .* by practice; .*shots vary by ±1\.5 ft/,
    );
  });
});
