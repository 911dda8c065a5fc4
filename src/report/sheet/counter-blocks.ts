import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { USUAL_GRIT } from '../../records/schemas/ball.js';
import { givenWithUnit, type Units } from '../text/display-units.js';
import { type Block, bulleted, LINE, rowsOf } from './blocks.js';

/* What is written in at the counter: which ball it is, and at the end who drilled it. */

/** Which ball it is, and what is wanted in addition to holes; filled in at the counter. */
export const orderBlock = ({ ball, bowler }: SheetAnswer): Block => ({
  heading: 'Order',
  parts: [
    rowsOf(
      [],
      [
        ['order number', LINE],
        ['serial number', LINE],
        ['surface, as sold', `${ball.surfaceGrit ?? `${USUAL_GRIT} (assumed)`} grit`],
        ['surface wanted', LINE],
        ...(bowler.thumbHole ? [['thumb bevel', LINE]] : []),
      ],
    ),
  ],
});

/** What each rule set allows, and who did what and when. */
export const signBlock = ({ legality, limits }: SheetAnswer, { ounce, weight }: Units): Block => ({
  heading: 'Rules and signature',
  parts: [
    bulleted(
      limits.map(
        ({ ruleSet, mostOz, aboveLb }, i) =>
          `${legality[i].legal ? 'Within' : 'NOT within'} ${ruleSet}, as far as checked: ${givenWithUnit(mostOz, ounce)} above ${givenWithUnit(aboveLb, weight)}.`,
      ),
    ),
    rowsOf(
      [],
      ['drilled by, on', 'checked by, on'].map((what) => [what, LINE]),
    ),
  ],
});
