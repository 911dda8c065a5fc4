import { ARROWS_FT, BOARD } from '../../src/base/constants.js';
import { FOOT, from } from '../../src/base/units.js';
import { misfitOf } from '../../src/learn/misfit.js';
import { asRead, exactly } from '../../src/learn/read-aim.js';
import { READING_ERROR } from '../../src/learn/readings.js';
import { whatIsKnown, whatIsKnownAsRead } from '../../src/learn/what-is-known.js';
import type { Launch } from '../../src/motion/shot/release.js';
import type { CoreFitter } from '../../src/prepare/fit-cores.js';
import { NOTHING_KNOWN, USUAL_AIM_ERRORS } from '../support/without-log.js';
import { blindCase, type Compared, compared, SEED } from './blind-case.js';
import type { Twist } from './blind-logs.js';
import { type Random, random } from './random.js';

/** What is foretold of a night whose aim a bowler tells as it is read: boards at the pins. */
export interface ReadAim {
  readonly withoutLog: Compared;
  /** After thirty shots, as if the aim were just there. */
  readonly takenForExact: Compared;
  /** After thirty shots, with how far off the log says that the bowler reads. */
  readonly asRead: Compared;
  readonly isDoubtful: boolean;
}

/** One blind bowler, who misreads the aim of the night to come as all nights before; null where most shots do not stay on the lane. */
export function blindReadAim(place: number, twist: Twist, fitter?: CoreFitter): ReadAim | null {
  const { bowler, lane, logged, here, truth, truthThere, fitted } = blindCase(place, twist, fitter);
  const log = truth && truthThere && fitted([10, 10, 10]);
  if (!log) return null;
  const read = misread(here.aim, random(3000 * SEED + place), twist);
  const pins = (...[known, aim]: [Parameters<typeof compared>[2], Parameters<typeof compared>[4]]) =>
    compared(bowler, lane, known, logged, aim, truth)?.[0];
  const aim = asRead(read, USUAL_AIM_ERRORS);
  const withoutLog = pins(NOTHING_KNOWN, aim);
  const takenForExact = pins(whatIsKnown(log), exactly(read));
  const together = pins(whatIsKnownAsRead(log, USUAL_AIM_ERRORS), aim);
  if (!withoutLog || !takenForExact || !together) return null;
  return { withoutLog, takenForExact, asRead: together, isDoubtful: misfitOf(log).isDoubtful };
}

/** An aim as a bowler tells it whose mean readings of a night are off, and on top as the twist says. */
function misread({ x, angle }: Launch, of: Random, { bias = {} }: Twist): Launch {
  const off = (id: 'laydownBoard' | 'arrowsBoard'): number =>
    READING_ERROR[id].ofNight * of.normal() + (bias[id] ?? 0);
  const [laydown, arrows] = [off('laydownBoard'), off('arrowsBoard')];
  return { x: x - laydown * BOARD, angle: angle - ((arrows - laydown) * BOARD) / from(ARROWS_FT, FOOT) };
}
