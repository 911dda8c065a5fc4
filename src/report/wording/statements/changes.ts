import type { Levers, MarkingErrors, Steps } from '../../../records/answers/statements/changes.js';
import { type DisplayUnit, withUnit } from '../../text/display-units.js';
import { decimals } from '../../text/figures.js';
import type { Wording } from './wording.js';

/** What else than the layout is changed. */
export const LEVERS: Wording<Levers> = {
  'finish-at': ({ grit, insteadOf }) => `cover at ${grit} grit, not ${insteadOf}`,
  'laid-down-on': ({ board, insteadOf }) =>
    `laid down on board ${decimals(board, 0)}, not ${decimals(insteadOf, 0)}`,
  'another-ball': ({ ball }) => `another ball: ${ball}`,
};

/** One step in a number of the layout. */
export const STEPS: Wording<Steps> = {
  'drilling-angle-by': ({ byDeg }) => `drilling angle ${signedDegrees(byDeg)}`,
  'pin-to-pap-by': ({ byIn }, { markTape }) => `pin-to-PAP ${signedTape(byIn, markTape)}`,
  'val-angle-by': ({ byDeg }) => `VAL angle ${signedDegrees(byDeg)}`,
};

const signedDegrees = (deg: number): string => `${deg > 0 ? '+' : ''}${deg}°`;

const signedTape = (inches: number, tape: DisplayUnit): string =>
  `${inches > 0 ? '+' : ''}${withUnit(inches, tape)}`;

/** An error in marking a number of the layout. */
export const MARKING_ERRORS: Wording<MarkingErrors> = {
  'drilling-angle-off': ({ byDeg }) => `${byDeg}° of drilling angle`,
  'pin-to-pap-off': ({ byIn }, { markTape }) => `${withUnit(byIn, markTape)} of pin-to-PAP`,
  'val-angle-off': ({ byDeg }) => `${byDeg}° of VAL angle`,
};
