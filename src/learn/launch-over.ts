import type { Launch } from '../motion/shot/release.js';
import { throughBoards } from './read-aim.js';

/** Once brings the ball to a twentieth of a board, for what it has hooked by at the arrows hardly depends on where it is sent. */
const CORRECTIONS = 3;

/**
 * The launch of a ball that is laid down on one board and crosses another at the arrows. It is not the line through both: by the
 * arrows a ball has hooked by half a board or more, which at the pins makes two to five.
 *
 * @param crosses  the board at the arrows of a ball that is sent on a launch
 */
export function launchOver(
  { laydownBoard, arrowsBoard }: { readonly laydownBoard: number; readonly arrowsBoard: number },
  crosses: (launch: Launch) => number,
): Launch {
  let straight = arrowsBoard;
  for (let n = 0; n < CORRECTIONS; n++)
    straight += arrowsBoard - crosses(throughBoards(laydownBoard, straight));
  return throughBoards(laydownBoard, straight);
}
