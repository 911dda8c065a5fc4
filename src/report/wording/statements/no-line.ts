import type { NoLineReasons, Remedies } from '../../../records/answers/statements/no-line.js';
import { givenWithUnit } from '../../text/display-units.js';
import { decimals, degrees } from '../../text/figures.js';
import type { Wording } from './wording.js';

/** Why no line reaches the pocket, as sentences. */
export const NO_LINE_REASONS: Wording<NoLineReasons> = {
  'never-at-pins': () => 'No laydown board and no direction brings the ball to the pins.',
  'hooks-past-pocket': (nearest) =>
    `The ball hooks too much and crosses past the pocket: ${nearestText(nearest)}`,
  'falls-short-of-pocket': (nearest) => `The ball falls short of the pocket: ${nearestText(nearest)}`,
};

const nearestText = ({
  laydownBoard,
  launchAngleDeg,
  pinsBoard,
  stop,
  steepestDeg,
}: NoLineReasons['hooks-past-pocket']): string => {
  const why = {
    gutter: 'directed farther out, it would fall into the gutter',
    steepest: `a bowler cannot direct it farther out than ${degrees(steepestDeg)}°`,
    'no-nearer': 'another direction comes no nearer',
  }[stop];
  return `the nearest line, laid down on board ${decimals(laydownBoard, 0)} and directed ${degrees(launchAngleDeg)}° out, ends on board ${decimals(pinsBoard, 1)}; ${why}.`;
};

/** What would bring the ball to the pocket, as sentences. */
export const REMEDIES: Wording<Remedies> = {
  'another-laydown-board': (line) => `Another laydown board: ${lineText(line)}`,
  'another-finish': ({ grit, insteadOf, ...line }) =>
    `Cover finished at ${grit} grit instead of ${insteadOf}: ${lineText(line)}`,
  'another-speed': ({ byMph, ...line }, { speed }) =>
    `${givenWithUnit(Math.abs(byMph), speed, 2)} ${byMph > 0 ? 'faster' : 'slower'}: ${lineText(line)}`,
};

const lineText = ({ laydownBoard, launchAngleDeg }: Remedies['another-laydown-board']): string =>
  `a line from board ${decimals(laydownBoard, 0)}, ${degrees(launchAngleDeg)}° out.`;
