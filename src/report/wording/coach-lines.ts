import { COACH_FAULT, type CoachFault, type CoachLine } from '../../records/answers/coach-answer.js';
import { UNITS, type Units } from '../text/display-units.js';
import { formatRefusal } from './refusals/word-refusal.js';
import { withSentences } from './with-sentences.js';

/** Why a pair of bowler and ball could not be answered, a line for each fault. */
export const coachFaultText = ({ refusals }: CoachFault, units: Units): string =>
  formatRefusal({ statements: refusals }, units).message;

/** A coach's line as programs read it: with the English of what it says, in the trade's units. */
export const printedCoachLine = (line: CoachLine): unknown =>
  line.schema === COACH_FAULT ? { ...line, fault: coachFaultText(line, UNITS.trade) } : withSentences(line);
