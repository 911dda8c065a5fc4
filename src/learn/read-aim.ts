import { ARROWS_FT, BOARD } from '../base/constants.js';
import { FOOT, from } from '../base/units.js';
import { atan2 } from '../math/atan.js';
import { hypot } from '../math/hypot.js';
import { boardToX } from '../motion/lane/boards.js';
import type { Launch } from '../motion/shot/release.js';
import type { Draws } from '../simulate/worlds/draws.js';
import type { NightMeans } from './night-means.js';
import { READING_ERROR } from './readings.js';

/** The true launch of a ball in a world. */
export type WorldAim = (draw: Draws) => Launch;

/** Errors of the readings of the aim that are common to a night, boards, one standard deviation; errors common to all nights excluded. */
export interface AimErrors {
  readonly laydownRead: number;
  readonly arrowsRead: number;
}

/** The readings of the aim, by the number that draws the error of each. */
export const AIM_READ = { laydownRead: 'laydownBoard', arrowsRead: 'arrowsBoard' } as const;

/** A launch that is known exactly. */
export const exactly =
  (launch: Launch): WorldAim =>
  () =>
    launch;

/**
 * A launch as a bowler reads it, who may read boards too high or too low. The part of that error that is the same every night is also in
 * the log and correlated with what the log says about the lane, so the two together predict more than each alone.
 *
 * @param read  the launch as read
 */
export const asRead =
  (read: Launch, errors: AimErrors): WorldAim =>
  (draw) => {
    const off = (what: keyof AimErrors): number =>
      BOARD * hypot(READING_ERROR[AIM_READ[what]].always, errors[what]) * draw.normal(what);
    const [laydown, arrows] = [off('laydownRead'), off('arrowsRead')];
    return { x: read.x + laydown, angle: read.angle + (arrows - laydown) / from(ARROWS_FT, FOOT) };
  };

/** The boards of a night's aim as they were read, and their errors common to the night; null where one of the two was not read. */
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

/** The launch from a board at the foul line over a board at the arrows. */
export function throughBoards(laydownBoard: number, arrowsBoard: number): Launch {
  const x = boardToX(laydownBoard);
  return { x, angle: atan2(boardToX(arrowsBoard) - x, from(ARROWS_FT, FOOT)) };
}
