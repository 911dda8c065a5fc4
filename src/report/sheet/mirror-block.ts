import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { type Block, text } from './blocks.js';

/** A place this near to a line counts as on it, as the sine of its arc. */
const ON_LINE = 0.01;

/** Where marks must be seen once all are there: a ball laid out for the other hand is found here at the latest. */
export function mirrorBlock({ face }: SheetAnswer): Block {
  const hand = face.hand === 'right' ? 1 : -1;
  const across = (x: number): string =>
    Math.abs(x) < ON_LINE ? 'on the centre line' : `${hand * x > 0 ? 'RIGHT' : 'LEFT'} of the centre line`;
  const [x, y] = face.pin;
  const height = Math.abs(y) < ON_LINE ? 'on the midline' : `${y > 0 ? 'above' : 'below'} the midline`;
  return {
    heading: 'Mirror check',
    parts: [
      text(
        `Grip centre toward you, fingers up: the PAP lies ${across(face.pap[0])}, the pin ${across(x)} and ${height}. If it does not, the ball is laid out for the other hand: wipe it and begin again.`,
      ),
    ],
  };
}
