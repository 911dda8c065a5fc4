import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { papUncertaintyIn } from '../../records/schemas/bowler.js';
import { givenWithUnit, type Units } from '../text/display-units.js';
import { papText } from '../text/pap-text.js';

/** What of the bowler the marks rest on: `right hand, PAP 5 in over, 1/2 in up`. */
export const bowlerText = ({ bowler }: SheetAnswer, units: Units): string =>
  `${bowler.hand} hand${bowler.thumbHole ? '' : ', no thumb hole'}, PAP ${papText(bowler.pap, units)}${guessText(bowler, units)}`;

/** How far a PAP may be off that is not exactly known. */
function guessText(bowler: SheetAnswer['bowler'], { fineTape }: Units): string {
  const off = papUncertaintyIn(bowler);
  return off > 0 ? ` (± ${givenWithUnit(off, fineTape)})` : '';
}
