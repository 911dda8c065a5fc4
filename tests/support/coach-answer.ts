import type { ReactionAnswer } from '../../src/records/answers/answer.js';
import type { CoachPair } from '../../src/records/answers/coach-answer.js';
import { reaction } from './recommend-answer.js';

/** A made-up line of a coach's table, with some reaction numbers of its best layout. */
export const coachPairOf = (ball: string, numbers: Partial<ReactionAnswer> = {}): CoachPair => ({
  schema: 'flarewise/coach-pair/2',
  bowler: 'Kim',
  ball,
  lane: 'House',
  want: { totalHook: 4 },
  best: {
    layout: '45 x 4 x 43',
    score: 97,
    reaction: { ...reaction, ...numbers },
    beatsMiddle: 0.8,
    meanScore: 96,
  },
  middle: { layout: '50 x 4 1/2 x 35', score: 91, reaction },
  levers: [],
  advice: 'layout',
  says: { code: 'something-helps', params: { ways: [{ layout: '45 x 4 x 43', gain: 6 }] } },
});
