import { describe, expect, test } from 'vitest';
import type { Lane } from '../../src/records/schemas/lane.js';
import { SECTION_IDS } from '../../src/records/schemas/recommend-sections.js';
import { loadTypeface } from '../../src/report/font/typeface.js';
import { coachReport } from '../../src/report/screens/coach-report.js';
import { compareReport } from '../../src/report/screens/compare-report.js';
import { drilledReport } from '../../src/report/screens/drilled-report.js';
import { judgeReport } from '../../src/report/screens/judge-report.js';
import { mapReport } from '../../src/report/screens/map-report.js';
import { recommendationReport } from '../../src/report/screens/recommendation-report.js';
import { rollReport } from '../../src/report/screens/roll-report.js';
import { sheetHtml } from '../../src/report/sheet/sheet-html.js';
import { sheetReport } from '../../src/report/sheet/sheet-report.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { coachHtml } from '../../src/report/web/coach-html.js';
import { compareHtml } from '../../src/report/web/compare-html.js';
import { judgeHtml } from '../../src/report/web/judge-html.js';
import { recommendHtml } from '../../src/report/web/recommend-html.js';
import { coachPairOf } from '../support/coach-answer.js';
import { compareAnswer } from '../support/compare-answer.js';
import { judgeAnswer } from '../support/judge-answer.js';
import { mapAnswer } from '../support/map-answer.js';
import { pageOf } from '../support/page.js';
import { facts } from '../support/pages/page-fixture.js';
import { realSheets } from '../support/pages/real-sheets.js';
import { drilledAnswer, lane, recommendAnswer, rollAnswer } from '../support/recommend-answer.js';

/* Names and notes look like quantities here: not one digit of them may be touched, whatever units a page has. */

const BALL = 'Old 14 lb spare, 2.5 in RG';
const NOTE = 'Bought at 17 mph; 4 1/2 in from the door, 1,250 ft and 3 oz.';
const LANE: Lane = { ...lane, name: 'Lane of 60 ft', note: NOTE };
const BOWLER = 'Kim {8 to 26 speed}';

const inputs = {
  ...recommendAnswer.inputs,
  bowler: { ...recommendAnswer.inputs.bowler, name: BOWLER, note: NOTE },
  ball: { ...recommendAnswer.inputs.ball, name: BALL, note: NOTE },
  lane: LANE,
};
const recommended = {
  ...recommendAnswer,
  inputs,
  levers: [
    {
      kind: 'ball' as const,
      change: { code: 'another-ball' as const, params: { ball: BALL } },
      score: 70,
      reaction: recommendAnswer.middle.reaction,
    },
  ],
};
const judged = { ...judgeAnswer, inputs };
const { ball, ...others } = inputs;
const compared = { ...compareAnswer, inputs: { ...others, balls: [ball] } };
const sheet = Object.values(await realSheets())[0];
const named = {
  ...sheet,
  bowler: { ...sheet.bowler, name: BOWLER },
  ball: { ...sheet.ball, name: BALL, note: NOTE },
};

const page = pageOf(200, { units: UNITS.metric });
const oneLine = (text: string): string => text.replace(/[\s\u00a0]+/g, ' ');

describe.each([
  [
    'recommend',
    recommendationReport(recommended, page, { sections: SECTION_IDS }),
    [BALL, BOWLER, 'Lane of 60 ft', `another ball: ${BALL}`],
  ],
  ['judge', judgeReport(judged, page, true), [BALL, BOWLER, 'Lane of 60 ft']],
  ['drilled', drilledReport({ ...drilledAnswer, ball: BALL, bowler: BOWLER }, page), [BALL, BOWLER]],
  [
    'roll',
    rollReport({ ...rollAnswer, ball: BALL, bowler: BOWLER, lane: LANE.name }, 'right', LANE, page),
    [BALL, BOWLER, LANE.name],
  ],
  ['sheet', sheetReport(named, page), [BALL, BOWLER]],
  ['map', mapReport({ ...mapAnswer, ball: BALL, bowler: BOWLER }, page), [BALL, BOWLER]],
  ['coach', coachReport([coachPairOf(BALL)], page), [BALL]],
  ['coach in full', coachReport([coachPairOf(BALL, {}, { bowler: BOWLER })], page, true), [BALL, BOWLER]],
  ['compare', compareReport(compared, page, true), [BALL, BOWLER, LANE.name]],
  [
    'recommend as a web page',
    recommendHtml(recommended, facts, [], UNITS.metric),
    [BALL, BOWLER, `${BALL}. ${NOTE}`, `${LANE.name}. ${NOTE}`],
  ],
  ['judge as a web page', judgeHtml(judged, facts, [], UNITS.metric), [BALL, BOWLER, `${BALL}. ${NOTE}`]],
  [
    'coach as a web page',
    coachHtml([coachPairOf(BALL, {}, { bowler: BOWLER })], UNITS.metric),
    [BALL, BOWLER],
  ],
  ['compare as a web page', compareHtml(compared, [], UNITS.metric), [BALL, BOWLER, `${BALL}. ${NOTE}`]],
  ['sheet as a web page', await sheetHtml(named, 'a4', loadTypeface(), UNITS.metric), [BALL, BOWLER]],
])('%s in metric', (_, text, wanted) => {
  test.each(wanted)('keeps %j to the letter', (words) => expect(oneLine(text)).toContain(words));
});
