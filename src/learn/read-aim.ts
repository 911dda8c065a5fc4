import { ARROWS_FT, BOARD } from '../base/constants.js';
import { FOOT, from } from '../base/units.js';
import { atan2 } from '../math/atan.js';
import { hypot } from '../math/hypot.js';
import { boardToX } from '../motion/lane/boards.js';
import type { Launch } from '../motion/shot/release.js';
import type { Draws } from '../simulate/worlds/draws.js';
import type { NightMeans } from './night-means.js';
import { READING_ERROR } from './readings.js';

/** Where a ball is really sent, in a world. */
export type WorldAim = (draw: Draws) => Launch;

/** By how much the readings of the aim are off on a night alike, boards, one standard deviation: what is off on every night is not in it. */
export interface AimErrors {
  readonly laydownRead: number;
  readonly arrowsRead: number;
}

/** The readings of the aim, and the numbers in which it is drawn how far off they are. */
export const AIM_READ = { laydownRead: 'laydownBoard', arrowsRead: 'arrowsBoard' } as const;

/** As far as most bowlers read them. */
export const USUAL_AIM_ERRORS: AimErrors = {
  laydownRead: READING_ERROR.laydownBoard.ofNight,
  arrowsRead: READING_ERROR.arrowsBoard.ofNight,
};

/** Just there. */
export const exactly =
  (launch: Launch): WorldAim =>
  () =>
    launch;

/**
 * Where somebody reads it, who reads boards too high or too low. Who does so on every night has logged shots so as well: what a log says of
 * the lane goes with that, and together they foretell more than each alone.
 *
 * @param read  the launch as it is read
 */
export const asRead =
  (read: Launch, errors: AimErrors): WorldAim =>
  (draw) => {
    const off = (what: keyof AimErrors): number =>
      BOARD * hypot(READING_ERROR[AIM_READ[what]].always, errors[what]) * draw.normal(what);
    const [laydown, arrows] = [off('laydownRead'), off('arrowsRead')];
    return { x: read.x + laydown, angle: read.angle + (arrows - laydown) / from(ARROWS_FT, FOOT) };
  };

/** The mean boards of a night's aim as they were read, and how far they are off alike; null where one of the two was not read. */
export function readAimOf({ readings }: Pick<NightMeans, 'readings'>): {
  readonly laydownBoard: number;
  readonly arrowsBoard: number;
  readonly errors: AimErrors;
} | null {
  const [laydown, arrows] = Object.values(AIM_READ).map((id) => readings.find((each) => each.id === id));
  if (!laydown || !arrows) return null;
  return {
    laydownBoard: laydown.mean,
    arrowsBoard: arrows.mean,
    errors: { laydownRead: laydown.ofNight, arrowsRead: arrows.ofNight },
  };
}

/** From a board at the foul line straight over one at the arrows. */
export function throughBoards(laydownBoard: number, arrowsBoard: number): Launch {
  const x = boardToX(laydownBoard);
  return { x, angle: atan2(boardToX(arrowsBoard) - x, from(ARROWS_FT, FOOT)) };
}
