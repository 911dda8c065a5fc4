import type { CoachBag, CoachFault, CoachLine, CoachPair } from '../../../records/answers/coach-answer.js';
import { UNITS, type Units } from '../../text/display-units.js';
import { wordRefusal } from './word-refusal.js';

/** Why a pair of bowler and ball could not be answered, a line for each fault. */
export const coachFaultText = ({ refusals }: CoachFault, units: Units): string =>
  wordRefusal({ statements: refusals }, units).message;

/** A coach's line as programs read it: a fault in words too. */
export type PrintedCoachLine = CoachPair | CoachBag | (CoachFault & { readonly fault: string });

/** A line with the words that programs get, in the trade's units. */
export const printedCoachLine = (line: CoachLine): PrintedCoachLine =>
  line.schema === 'flarewise/coach-fault/2' ? { ...line, fault: coachFaultText(line, UNITS.trade) } : line;
