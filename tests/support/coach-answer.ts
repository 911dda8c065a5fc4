import type { LayoutDifference, ReactionAnswer } from '../../src/records/answers/answer.js';
import type { CoachBag, CoachPair } from '../../src/records/answers/coach-answer.js';
import { reaction } from './recommend-answer.js';

const size = (totalHookBoards: number) => ({ hookStartFt: 0.2, sharpnessDegPerFt: 0.004, totalHookBoards });

/** So many boards more over the usual layout. */
const hooksMore = (
  boards: number,
  visibility: LayoutDifference['weighed']['visibility'],
): LayoutDifference => ({
  weighed: { size: size(boards), visibility },
  physics: { size: size(boards), visibility },
  practice: { size: size(0), visibility: 'unseen' },
});

/** A made-up line of a coach's table, with some reaction numbers of its best layout and other fields of its own. */
export const coachPairOf = (
  ball: string,
  numbers: Partial<ReactionAnswer> = {},
  fields: Partial<CoachPair> = {},
): CoachPair => ({
  schema: 'flarewise/coach-pair/4',
  bowler: 'Kim',
  unsure: {},
  ball,
  lane: 'House',
  want: { totalHook: 4 },
  best: {
    layout: '45 x 4 x 43',
    score: 97.123456,
    reaction: { ...reaction, ...numbers },
    beatsMiddle: 0.8,
    meanScore: 96,
    deviations: {
      hookStartFt: 1.4,
      sharpnessDegPerFt: 0.04,
      totalHookBoards: 2.345678,
      entryAngleDeg: 0.7,
      flareIn: 0.3,
    },
  },
  middle: { layout: '50 x 4 1/2 x 35', score: 91, reaction },
  targets: [
    {
      wish: 'totalHook',
      step: 4,
      reading: 'totalHookBoards',
      value: 13,
      attainable: { low: 10, high: 15 },
    },
  ],
  overMiddle: hooksMore(1.2345678, 'barely'),
  overMiddleDeviations: size(0.456789),
  scatter: {
    hookStartFt: 1.2,
    sharpnessDegPerFt: 0.03,
    totalHookBoards: 2,
    entryAngleDeg: 0.6,
    flareIn: 0.2,
  },
  levers: [],
  advice: 'layout',
  says: {
    code: 'moves-most',
    params: {
      readings: ['totalHookBoards'],
      ways: [
        {
          kind: 'layout',
          what: { layout: '45 x 4 x 43' },
          size: size(1.2345678),
          overScatter: 0.617,
          gain: 6,
        },
        {
          kind: 'surface',
          what: { lever: { code: 'finish-at', params: { grit: 500, insteadOf: 2000 } } },
          size: size(-0.8),
          overScatter: 0.4,
          gain: -3,
        },
      ],
    },
  },
  ...fields,
});

/** A made-up bag whose best ball is this one. */
const coachBagOf = (bowler: string, best: string): CoachBag => ({
  schema: 'flarewise/coach-bag/3',
  bowler,
  lane: 'House',
  best,
  alike: [],
  gaps: [],
  says: [],
});

const NAMES = ['Anna', 'Ben', 'Cara Longname-Whitfield', 'Dan', 'Eve', 'Finn', 'Gus', 'Hana'];

/** Eight students with two balls each, whose names are long. */
export const eightStudents = NAMES.flatMap((bowler, i) => [
  coachPairOf('Lobed symmetric core, medium', {}, { bowler }),
  coachPairOf(
    'Asymmetric core, mild mass bias',
    { totalHookBoards: 9 },
    {
      bowler,
      advice: i % 2 ? 'surface' : 'layout',
      unsure: i === 2 ? { axisTiltDeg: 5, papOverIn: 0.4, papUpIn: 0.45 } : {},
      overMiddle: i === 5 ? null : hooksMore(i - 3, i % 3 ? 'seen' : 'unseen'),
      ...(i === 5 ? { overMiddleDeviations: null } : {}),
    },
  ),
  coachBagOf(bowler, i === 7 ? 'Lobed symmetric core, medium' : 'Asymmetric core, mild mass bias'),
]);
