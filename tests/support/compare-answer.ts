import {
  BELIEVED_COMPARED_IDS,
  type CompareAnswer,
  type CompareRow,
  type FromFirst,
} from '../../src/records/answers/compare-answer.js';
import { COMPARED_IDS } from '../../src/records/schemas/reaction-numbers.js';
import { averageBowler, plainBall } from './problems.js';
import {
  lane,
  layout,
  middleLayout,
  pairedAbout,
  pathOf,
  reaction,
  recommendAnswer,
  simulated,
} from './recommend-answer.js';

const { psa, marks, legality } = recommendAnswer.layouts[0];

/** Differences in all numbers, each the same multiple of a step. */
const sizes = (times: number) => ({
  hookStartFt: 0.5 * times,
  sharpnessDegPerFt: 0.012 * times,
  totalHookBoards: -0.8 * times,
  entryAngleDeg: 0.1 * times,
  flareIn: -0.1 * times,
});

const allOf = <K extends string, T>(ids: readonly K[], value: T): Record<K, T> =>
  Object.fromEntries(ids.map((id) => [id, value])) as Record<K, T>;

const differs = (times: number, seen: 'unseen' | 'barely' | 'seen', ahead: number): FromFirst => ({
  weighed: { size: sizes(times), visibility: allOf(COMPARED_IDS, seen) },
  physics: { size: sizes(times), visibility: allOf(COMPARED_IDS, seen) },
  paired: pairedAbout({ weighed: { size: sizes(times), visibility: seen } }),
  practice: {
    size: sizes(0.5 * times),
    visibility: allOf(BELIEVED_COMPARED_IDS, 'unseen'),
  },
  ahead,
  aheadByPhysics: ahead,
});

const row = (at: typeof layout, boards: number, fromFirst: FromFirst | null): CompareRow => ({
  ...simulated(at, 70, reaction),
  gutterShare: 0.02,
  path: pathOf(7.5 + boards),
  name: at.text,
  ball: plainBall.name,
  grit: 2000,
  undrilled: { massLb: 15, rgIn: 2.534, differentialIn: 0.037, intermediateDifferentialIn: 0.001 },
  psa,
  flareStart: { perTurnIn: 0.26, share: 0.7 },
  marks,
  legality,
  fromFirst,
});

const third = { ...layout, text: '30 x 5 1/4 x 60', drillingAngleDeg: 30, pinToPapIn: 5.25, valAngleDeg: 60 };

/** A made-up comparison of three layouts: of the others one would barely be seen, one would. */
export const compareAnswer: CompareAnswer = {
  schema: 'flarewise/compare/1',
  version: '0.1.0',
  seed: 1,
  inputs: { bowler: averageBowler, balls: [plainBall], lane, want: { totalHook: 4 } },
  varies: 'layout',
  verdict: [
    {
      code: 'looks-beside-first',
      params: {
        first: middleLayout.text,
        others: [
          {
            name: layout.text,
            visibility: 'barely',
            onlyByPractice: false,
            seen: [{ reading: 'hookStartFt', size: 0.5 }],
          },
          {
            name: third.text,
            visibility: 'seen',
            onlyByPractice: false,
            seen: [
              { reading: 'hookStartFt', size: 1.5 },
              { reading: 'totalHookBoards', size: -2.4 },
            ],
          },
        ],
      },
    },
    {
      code: 'comes-nearest',
      params: { name: third.text, over: layout.text, ahead: 0.64, worlds: 64 },
    },
  ],
  targets: [
    {
      wish: 'totalHook',
      step: 4,
      reading: 'totalHookBoards',
      value: 13.4,
      attainable: { low: 10.2, high: 15.1 },
    },
  ],
  rows: [
    row(middleLayout, 0, null),
    row(layout, 0.4, differs(1, 'barely', 0.58)),
    row(third, 1.1, differs(3, 'seen', 0.71)),
  ],
  worlds: 64,
  scatter: {
    hookStartFt: 1.0,
    sharpnessDegPerFt: 0.024,
    totalHookBoards: 1.6,
    entryAngleDeg: 0.2,
    flareIn: 0.2,
  },
  assumptions: [{ code: 'usual-circumference', params: { circumferenceIn: 27 } }],
  cautions: [{ code: 'local-rules', params: {} }],
};
