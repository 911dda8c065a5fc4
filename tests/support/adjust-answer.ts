import type { AdjustAnswer, RemedyAnswer } from '../../src/records/answers/adjust-answer.js';
import type { Adjustment } from '../../src/records/answers/statements/adjustments.js';
import { compareAnswer } from './compare-answer.js';
import { averageBowler, plainBall } from './problems.js';
import { lane, layout, reaction, recommendAnswer } from './recommend-answer.js';

const { marks, legality, drilled } = recommendAnswer.layouts[0];

const remedy = (
  what: Adjustment,
  {
    later,
    less,
    rank,
    verdict = 'helps',
  }: { later: number; less: number; rank: number | null; verdict?: RemedyAnswer['verdict'] },
  cost: RemedyAnswer['cost'],
): RemedyAnswer => ({
  remedy: what,
  cost,
  isUndone: what.code !== 'plug-and-redrill',
  rank,
  verdict,
  effect: {
    hookStartFt: later,
    sharpnessDegPerFt: 0.02 * later,
    totalHookBoards: -less,
    entryAngleDeg: -0.1,
    flareIn: 0,
  },
  visibility: {
    hookStartFt: Math.abs(later) > 1 ? 'seen' : Math.abs(later) > 0.5 ? 'barely' : 'unseen',
    sharpnessDegPerFt: 'barely',
    totalHookBoards: less > 1.6 ? 'seen' : 'barely',
    entryAngleDeg: 'barely',
    flareIn: 'unseen',
  },
  left: { hookStartFt: 3 - later, totalHookBoards: less - 4 },
  miss: Math.abs(3 - later),
  nearer: later > 0 ? 0.97 : 0.08,
});

const move: Adjustment = {
  code: 'move-on-lane',
  params: { hand: 'right', feetBoards: 4, targetBoards: 2.6, laydownBoard: 24, arrowsBoard: 15.6 },
};

/** A made-up answer: two wishes, a log that was learned from, something of each kind. */
export const adjustAnswer: AdjustAnswer = {
  schema: 'flarewise/adjust/1',
  version: '0.1.0',
  seed: 1,
  id: 'first',
  inputs: { bowler: averageBowler, ball: plainBall, lane, layout: layout.text },
  night: '2026-03-31',
  wished: [
    {
      wish: 'hookStart',
      asked: '3 ft later',
      reading: 'hookStartFt',
      did: 36,
      from: 'told',
      deviation: null,
      simulated: 37.1,
      wanted: 39,
      change: 3,
    },
    {
      wish: 'totalHook',
      asked: '22 boards',
      reading: 'totalHookBoards',
      did: 26,
      from: 'log',
      deviation: 2.1,
      simulated: 25.2,
      wanted: 22,
      change: -4,
    },
  ],
  verdict: [
    {
      code: 'release-explains',
      params: { shots: 14, reading: 'hookStartFt', stated: 38.4, learned: 36.2, share: 0.7 },
    },
    {
      code: 'try-first',
      params: {
        remedy: move,
        effect: { hookStartFt: 1.8, sharpnessDegPerFt: 0.036, totalHookBoards: -2.4, entryAngleDeg: -0.1 },
        left: [
          { reading: 'hookStartFt', by: 1.2 },
          { reading: 'totalHookBoards', by: -1.6 },
        ],
        nearer: 0.97,
        worlds: 64,
      },
    },
  ],
  reaction,
  line: { laydownBoard: 20, reachesPocket: true },
  miss: 2.7,
  remedies: [
    remedy(move, { later: 1.8, less: 2.4, rank: 1 }, 'free'),
    remedy(
      { code: 'refinish', params: { grit: 5500, insteadOf: 2000 } },
      { later: 1.3, less: 1.9, rank: 2 },
      'minutes',
    ),
    remedy({ code: 'speed-by', params: { mph: 1 } }, { later: 1.1, less: 2.9, rank: 3 }, 'practice'),
    remedy(
      { code: 'plug-and-redrill', params: { layout: '30 x 6 x 60' } },
      { later: 2.9, less: 3.7, rank: 4 },
      'plugging',
    ),
    remedy(
      { code: 'another-drilled-ball', params: { id: 'second', ball: 'Strong ball', layout: '50 x 4 x 40' } },
      { later: 0.2, less: 0.3, rank: null, verdict: 'unseen' },
      'free',
    ),
  ],
  redrill: {
    layout: { ...layout, text: '30 x 6 x 60' },
    drilled,
    marks,
    legality: {
      ...legality,
      findings: [
        {
          code: 'thin-webs',
          params: {
            leastIn: 0.25,
            webs: [{ hole: 'thumb', oldHole: 'ring', drilling: null, widthIn: 0.06 }],
          },
        },
      ],
    },
    redrilled: {
      oldHoles: 3,
      plugOz: 8.1,
      plugTakenOz: 0.4,
      oldMarks: [{ mark: 'old thumb hole', fromGripCentreIn: 5.2, fromPapIn: 1.1, fromPinIn: 6.75 }],
      plugged: { massLb: 15.02, rgIn: 2.5, differentialIn: 0.045, intermediateDifferentialIn: 0.001 },
    },
  },
  worlds: 64,
  scatter: compareAnswer.scatter,
  assumptions: compareAnswer.assumptions,
  cautions: [
    { code: 'sanding-by-trained-people', params: {} },
    { code: 'finish-in-competition', params: {} },
    ...compareAnswer.cautions,
  ],
};
