import { BOARD_COUNT, LANE_WIDTH } from '../../base/constants.js';
import { INCH } from '../../base/units.js';

/* What stands on a lane, as people see it. */

/** Foul line to the head pin, ft. */
export const LENGTH_FT = 60;

/** Aiming arrows: boards, and distance of each from the foul line, ft (from memory: 12 to 16 ft, the middle one farthest). */
export const ARROWS = [5, 10, 15, 20, 25, 30, 35].map((board) => ({
  board,
  ft: 16 - Math.abs(board - 20) / 5,
}));

/** Pin centres stand 12 in apart (USBC lane specifications, seen in a copy). */
const PIN_SPACING = 12 * INCH;

/** The ten pins in order: row, 0 at the head pin, and boards to the right of the lane's middle. */
export const PINS = [0, 1, 2, 3].flatMap((row) =>
  Array.from({ length: row + 1 }, (_, i) => ({
    row,
    acrossBoards: ((i - row / 2) * PIN_SPACING) / (LANE_WIDTH / BOARD_COUNT),
  })),
);

/** Boards of the pocket from the bowler's own side (USBC pin-carry work, seen in a copy). */
export const POCKET_BOARDS = [17, 18] as const;

/** Films from which each step of shading is drawn, units, thinnest first (our own choice). */
export const FILM_STEPS = [0.5, 5, 15, 30, 45] as const;

/** A step of shading in words. */
export const formatFilm = (step: number): string =>
  step === 0
    ? `under ${FILM_STEPS[1]}`
    : step === FILM_STEPS.length - 1
      ? `${FILM_STEPS[step]} and more`
      : `${FILM_STEPS[step]} to ${FILM_STEPS[step + 1]}`;

/** Which step a film is shaded in; −1 for none. */
export const filmStep = (units: number): number => FILM_STEPS.findLastIndex((least) => units >= least);
