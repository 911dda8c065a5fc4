import { InputError, quotedTyped } from '../../base/errors.js';
import { type DistanceNumbers, parseDistances } from './distances-text.js';
import { type LayoutNumbers, parseLayout } from './layout-text.js';
import { plainSigns } from './plain-signs.js';
import { isUnread, readNumber } from './read-number.js';
import { splitLayout } from './split-layout.js';

/** The mark a drilling angle is measured to. */
export type Mark = 'cg' | 'mass-bias';

/** What people call it. */
export const MARK_NAMES: Readonly<Record<Mark, string>> = { cg: 'CG mark', 'mass-bias': 'mass-bias mark' };

/** A layout in whichever notation it was written. */
export type WrittenLayout =
  | { readonly notation: 'angles'; readonly numbers: LayoutNumbers; readonly mark: Mark | null }
  | {
      readonly notation: 'distances';
      readonly numbers: DistanceNumbers;
      readonly pinSide: 'above' | 'below';
    }
  | {
      readonly notation: 'angle-and-buffer';
      readonly numbers: BufferNumbers;
      readonly pinSide: 'above' | 'below';
      readonly mark: Mark | null;
    };

/** A drilling angle with two arcs on the ball. */
export type BufferNumbers = Pick<LayoutNumbers, 'drillingAngleDeg' | 'pinToPapIn'> &
  Pick<DistanceNumbers, 'pinBufferIn'>;

export const BOTH_NOTATIONS =
  'Angles: "70 x 4 1/2 x 30", drilling angle x pin-to-PAP x VAL angle. Distances: "4 1/2 x 3 3/8 x 2", ' +
  'pin-to-PAP x marker-to-PAP x pin buffer, in inches or with mm.';

export const ALL_NOTATIONS = `${BOTH_NOTATIONS} With a drilling angle a pin buffer needs its unit: "70 x 4 1/2 x 2 in".`;

/** Greatest arc that the first or the last of three distances can have, in; angles that small are not drilled. */
const MOST_ARC_IN = 6.75;

/** Far longer than any layout that a person types. */
const MOST_SIGNS = 2000;

const SIDE = /(?: ?, ?| )(?:pin )?(above|below)$/i;
const BUFFER = /^(?:pin )?buffer | ?(?:pin )?buffer$/i;
const DEGREES = /(°|deg|degrees?)$/i;
const LENGTH = /(in|inch|inches|"|mm|cm)$/i;
const MARKED = / ?(?:to (?:the )?)?(cg|mb|mass[ -]bias)(?: mark)?$/i;

/**
 * Reads a layout in angles, in distances, or as a drilling angle with a pin buffer.
 *
 * All are three numbers. A degree sign makes them angles, `in`, `mm` or `cm` behind the first or the last one makes them
 * distances; without either they are distances when the first and the last both are arcs that a ball has room for. A drilling
 * angle before a last number with a unit of length, or with the word buffer, makes that one a pin buffer: `70 x 4 1/2 x 2 in`. A
 * drilling angle may say its mark, `70 cg x 4 1/2 x 30`; a pin buffer may say on which side of the PAP the pin lies,
 * `4 1/2 x 3 3/8 x 2 below`, and means above where it does not.
 *
 * @throws {InputError} `layout-text` when it cannot be read either way, or a number is out of range
 */
export function readLayout(text: string): WrittenLayout {
  const spaced = text.length > MOST_SIGNS ? '' : plainSigns(text);
  const side = SIDE.exec(spaced);
  const typed = splitLayout(spaced.replace(SIDE, ''));
  if (typed.length !== 3)
    throw new InputError('layout-text', {
      field: 'layout',
      rule: 'must be three numbers with x between, angles or distances',
      got: quotedTyped(text),
      hint: ALL_NOTATIONS,
    });
  const last = typed[2].replace(BUFFER, '');
  const parts = [typed[0], typed[1], last];
  const marked = MARKED.exec(parts[0]);
  const plain = parts.map((part, i) => inInches(i === 0 ? part.replace(MARKED, '') : part));
  const mark = marked ? (/cg/i.test(marked[1]) ? 'cg' : 'mass-bias') : null;
  const pinSide = side?.[1]?.toLowerCase() === 'below' ? 'below' : 'above';
  const endsInArc = last !== typed[2] || LENGTH.test(last);
  if (endsInArc && (marked || isAngle(plain[0])))
    return { notation: 'angle-and-buffer', numbers: bufferNumbers(plain), pinSide, mark };
  if (!endsInArc && (marked || isAngles([parts[0], last]))) {
    if (side)
      throw new InputError('layout-text', {
        field: 'layout',
        rule: 'must not say above or below in angles',
        got: quotedTyped(text),
        hint: 'A VAL angle above 90 puts the pin below the PAP.',
      });
    return { notation: 'angles', numbers: parseLayout(plain.join(' x ')), mark };
  }
  return { notation: 'distances', numbers: parseDistances(plain.join(' x '), 'layout'), pinSide };
}

/** Whether the first number of a layout cannot be an arc on a ball. */
const isAngle = (first: string): boolean =>
  DEGREES.test(first) || (!LENGTH.test(first) && arcIn(first) > MOST_ARC_IN);

/** A drilling angle and two arcs, each checked by the notation that it belongs to. */
function bufferNumbers([angle, pinToPap, buffer]: readonly string[]): BufferNumbers {
  const { drillingAngleDeg, pinToPapIn } = parseLayout(`${angle} x ${pinToPap} x 0`);
  const { pinBufferIn } = parseDistances(`${pinToPap} x 0 x ${buffer}`, 'layout');
  return { drillingAngleDeg, pinToPapIn, pinBufferIn };
}

/** Whether three numbers are a layout in angles. @param ends  the first and the last, which tell, as typed */
function isAngles(ends: readonly string[]): boolean {
  if (ends.some((end) => DEGREES.test(end))) return true;
  if (ends.some((end) => LENGTH.test(end))) return false;
  return !ends.every((end) => arcIn(end) <= MOST_ARC_IN);
}

/** A metric distance as decimal inches; anything else as it is. */
function inInches(part: string): string {
  const inches = /(mm|cm)$/i.test(part) ? arcIn(part) : Number.NaN;
  return Number.isNaN(inches) ? part : String(inches);
}

/** An arc as typed, in inches, which a bare number is too; NaN for a text that is no single number. */
function arcIn(text: string): number {
  const read = readNumber(text, { bare: 'in', wanted: 'in' });
  return isUnread(read) || read.halfRange !== null ? Number.NaN : read.value;
}
