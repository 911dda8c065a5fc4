import type { JudgeAnswer } from '../../src/records/answers/answer.js';
import { differs, pairedAbout, recommendAnswer } from './recommend-answer.js';

const { layouts, seed, version, inputs, search, targets, scatter, assumptions, cautions } = recommendAnswer;
const {
  rank: _rank,
  confidence: _confidence,
  steps: _steps,
  reasons: _reasons,
  shares,
  causes,
  ...layout
} = layouts[1];
const {
  psa: _psa,
  marks: _marks,
  legality: _legality,
  ...best
} = {
  ...layout,
  text: layouts[0].text,
  score: layouts[0].score,
};
/** A made-up second opinion on the second layout of the made-up recommendation. */
export const judgeAnswer: JudgeAnswer = {
  schema: 'flarewise/judge/3',
  version,
  seed,
  inputs,
  verdict: 'probably-worse',
  noLine: null,
  targets,
  layout,
  place: { betterThan: 180, of: 240, by: 'physics' },
  regression: search.regression,
  best,
  confidence: {
    bestBeatsIt: 0.78,
    beatsMiddle: 0.6,
    worlds: 200,
    byPhysics: { bestBeatsIt: 0.74, beatsMiddle: 0.57 },
    bestOverIt: differs(0.6, 'barely'),
    paired: pairedAbout(differs(0.6, 'barely')),
    overMiddle: differs(1.1, 'barely'),
  },
  scatter,
  shares,
  causes,
  marking: [
    {
      error: { code: 'pin-to-pap-off', params: { byIn: 1 / 16 } },
      score: -1.2,
      flareIn: 0.05,
      totalHookBoards: -0.1,
    },
  ],
  levers: [
    {
      kind: 'surface',
      change: { code: 'finish-at', params: { grit: 500, insteadOf: 2000 } },
      score: 41.5,
      reaction: { ...layout.reaction, hookStartFt: layout.reaction.hookStartFt - 4.2 },
    },
  ],
  assumptions,
  cautions,
};
