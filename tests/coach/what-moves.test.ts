import { describe, expect, test } from 'vitest';
import { whatMoves } from '../../src/coach/what-moves.js';
import type { LayoutDifference, LeverEffect, ReactionAnswer } from '../../src/records/answers/answer.js';
import { coachPairOf } from '../support/coach-answer.js';
import { reaction } from '../support/recommend-answer.js';

const { scatter } = coachPairOf('ball'); // 2 boards
const rolled = (layout: string, score: number, own: ReactionAnswer = reaction) => ({
  layout,
  score,
  reaction: own,
});
const by = (totalHookBoards: number): LayoutDifference => {
  const voice = {
    size: { hookStartFt: 0, sharpnessDegPerFt: 0, totalHookBoards },
    visibility: 'unseen' as const,
  };
  return { weighed: voice, physics: voice, practice: voice };
};
const cover = (grit: number, boards: number, score: number): LeverEffect => ({
  kind: 'surface',
  change: { code: 'finish-at', params: { grit, insteadOf: 2000 } },
  score,
  reaction: { ...reaction, totalHookBoards: reaction.totalHookBoards + boards },
});
const moves = (overMiddle: LayoutDifference | null, levers: readonly LeverEffect[]) =>
  whatMoves(
    { best: rolled('45 x 4 x 43', 90), usual: rolled('50 x 4 1/2 x 35', 80), overMiddle, levers },
    scatter,
    ['totalHookBoards'],
  );

describe('whatMoves', () => {
  test('goes by the size beside the scatter, not by points of score', () => {
    const { advice, says } = moves(by(1.2), [cover(500, 6, 40), cover(1000, 3, 60)]);
    expect(advice).toBe('surface');
    expect(says).toMatchObject({
      code: 'moves-most',
      params: {
        readings: ['totalHookBoards'],
        ways: [
          {
            kind: 'surface',
            what: { lever: { params: { grit: 500 } } },
            overScatter: expect.closeTo(3, 9),
            gain: -50,
          },
          { kind: 'layout', what: { layout: '45 x 4 x 43' }, overScatter: expect.closeTo(0.6, 9), gain: 10 },
        ],
      },
    });
  });

  test('the layout is named only where nothing moves it farther', () => {
    expect(moves(by(4), [cover(500, 3.9, 95)]).advice).toBe('layout');
    expect(moves(by(-4), [cover(500, 4.1, 50)]).advice).toBe('surface');
  });

  test('what would not be seen in a night of shots moves nothing much; the usual layout does not move at all', () => {
    expect(moves(by(0.9), [cover(4000, -0.8, 92)])).toMatchObject({
      advice: 'none',
      says: { code: 'nothing-moves-much' },
    });
    expect(moves(by(1), []).advice).toBe('layout'); // half of the scatter
    expect(moves(null, [])).toMatchObject({ advice: 'none', says: { params: { ways: [] } } });
  });
});
