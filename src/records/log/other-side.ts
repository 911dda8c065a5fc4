import { BOARD_COUNT } from '../../base/constants.js';
import type { LoggedShot, Night } from '../schemas/shot-log.js';
import { BOARD_READINGS } from './readings.js';

/** A board counted from the other side of the lane. */
const fromOtherSide = (board: number): number => BOARD_COUNT + 1 - board;

/** A shot whose boards were counted from the other side, as counted from the own. */
export const shotFromOtherSide = <S extends LoggedShot>(shot: S): S => ({
  ...shot,
  ...Object.fromEntries(
    BOARD_READINGS.flatMap((id) => {
      const board = shot[id];
      return board === undefined ? [] : [[id, fromOtherSide(board)]];
    }),
  ),
});

/** A night with its target counted from the other side. */
export const headFromOtherSide = <H extends Pick<Partial<Night>, 'targetBoard'>>(head: H): H =>
  head.targetBoard === undefined ? head : { ...head, targetBoard: fromOtherSide(head.targetBoard) };
