import { BOARD } from '../../src/base/constants.js';
import { FOOT, from } from '../../src/base/units.js';
import type { OilPattern } from '../../src/motion/lane/oil.js';

/** An invented pattern of 40 ft, heavier in the middle and toward the foul line. */
export const demoPattern: OilPattern = {
  zones: [
    { fromY: 0, toY: from(40, FOOT), fromX: -10 * BOARD, toX: 10 * BOARD, film: 40, filmEnd: 12 },
    { fromY: 0, toY: from(32, FOOT), fromX: -18 * BOARD, toX: 18 * BOARD, film: 10, filmEnd: 4 },
  ],
  frictionOiled: 0.04,
  frictionDry: 0.2,
  filmScale: 8,
  edgeLength: from(1.5, FOOT),
  edgeWidth: 0.75 * BOARD,
};
