import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { ballUncertainty } from '../../records/schemas/ball.js';
import { unsureNumbers } from '../../records/schemas/ball-uncertainty.js';
import { GUESSED_PAP_IN, papUncertaintyIn } from '../../records/schemas/bowler.js';
import { ballDeviations } from '../text/ball-numbers.js';
import { givenWithUnit, type Units } from '../text/display-units.js';
import { listed } from '../text/listed.js';
import { bufferDoubts } from '../wording/layout-headline.js';

/** What has to be measured before the ball is marked: the sheet invents nothing, and says what was guessed or is made up. */
export function firstTexts({ bowler, ball, layout, grip, invented }: SheetAnswer, units: Units): string[] {
  const { fineTape } = units;
  const off = papUncertaintyIn(bowler);
  const uncertainty = ballUncertainty(ball);
  const guessed = unsureNumbers(uncertainty);
  return [
    ...(invented.length > 0
      ? [
          `DEMO: the ${listed(invented)} ${invented.length > 1 ? 'are' : 'is'} invented. Drill nothing by this sheet.`,
        ]
      : []),
    ...bufferDoubts(layout, units).map((text) => `FIRST: ${text}`),
    ...(off >= GUESSED_PAP_IN
      ? [
          `FIRST: the PAP is a guess (± ${givenWithUnit(off, fineTape)}). Measure it on the bowler’s ball; all marks rest on it.`,
        ]
      : []),
    ...(guessed.length > 0
      ? [
          `FIRST: ball numbers guessed: ${ballDeviations(guessed, uncertainty, units)}. Find them out and make a new sheet.`,
        ]
      : []),
    ...(grip
      ? []
      : [
          'FIRST: no fit was given. Holes are left blank; drilled numbers and static weights are those of a usual fit.',
        ]),
    'Drilling cannot be undone: trained people only. Read “Before drilling” at the end first.',
  ];
}
