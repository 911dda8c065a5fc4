import { decimals, signed } from '../../base/decimals.js';
import { MILLIMETRE_IN, SIXTEENTH } from '../../base/tape-reading.js';
import { FOOT, GRAM, INCH, KMH, MM, MPH, OUNCE, POUND } from '../../base/units.js';
import { formatFraction, formatSixteenths } from '../../records/text/layout-text.js';

/** How one quantity is shown to a person. Numbers come as they are in answers and records. */
export interface DisplayUnit {
  /** As it appears in heads and after numbers. */
  readonly name: string;
  /** How many of it make one of the unit that answers and records have. */
  readonly per: number;
  readonly show: (value: number) => string;
  /** A difference, with its sign. */
  readonly change: (value: number) => string;
  /** How large a difference is, as finely, without its sign. */
  readonly size: (value: number) => string;
}

/** What quantities there are. */
export type Quantity =
  | 'lane' // distance down the lane
  | 'laneMark' // the same where a table or a drawing counts it off
  | 'speed'
  | 'tape' // arc on the ball
  | 'markTape' // the same of arcs given to a sixteenth of an inch
  | 'roughTape' // the same of what is not known so well
  | 'fineTape' // the same of errors
  | 'bore' // diameters, depths, pitches
  | 'arc' // on the ball, as computed
  | 'flare'
  | 'gyration' // RG and differentials
  | 'sharpness'
  | 'weight'
  | 'ounce'
  | 'boards'
  | 'angle';

export type Units = { readonly [Q in Quantity]: DisplayUnit } & {
  /** What a tape is read to: as text, and in inches. */
  readonly tapeStep: string;
  readonly tapeStepIn: number;
};

export type UnitSystem = 'trade' | 'metric';

/**
 * All units a person may read, by system: the one place where they are chosen.
 *
 * `trade` is what answers and records have: inches, feet, pounds, miles per hour. How many digits: made balls differ
 * from their published numbers by a few per cent and no lane is known to a tenth of a foot, so more would be false.
 */
export const UNITS: { readonly [S in UnitSystem]: Units } = {
  trade: {
    lane: unit('ft', 1, 1),
    laneMark: unit('ft', 1, 0),
    speed: unit('mph', 1, 1),
    tape: { ...unit('in', 1, 2), show: formatSixteenths },
    tapeStep: '1/16 in',
    tapeStepIn: SIXTEENTH,
    markTape: { ...unit('in', 1, 2), show: formatSixteenths },
    roughTape: { ...unit('in', 1, 2), show: (inches) => formatFraction(inches, 8) },
    fineTape: unit('in', 1, 2),
    bore: { ...unit('in', 1, 3), show: drillSize },
    arc: unit('in', 1, 1),
    flare: unit('in', 1, 1),
    gyration: unit('in', 1, 3),
    sharpness: unit('deg/ft', 1, 2, 3),
    weight: unit('lb', 1, 2),
    ounce: unit('oz', 1, 1),
    boards: unit('boards', 1, 1),
    angle: unit('deg', 1, 1),
  },
  metric: {
    lane: unit('m', FOOT, 1, 2),
    laneMark: unit('m', FOOT, 1),
    speed: unit('km/h', MPH / KMH, 1),
    tape: unit('mm', INCH / MM, 0),
    tapeStep: '1 mm',
    tapeStepIn: MILLIMETRE_IN,
    markTape: unit('mm', INCH / MM, 1),
    roughTape: unit('mm', INCH / MM, 0),
    fineTape: unit('mm', INCH / MM, 1),
    bore: unit('mm', INCH / MM, 1),
    arc: unit('mm', INCH / MM, 0),
    flare: unit('mm', INCH / MM, 0),
    gyration: unit('in', 1, 3), // no maker publishes it otherwise
    sharpness: unit('deg/m', 1 / FOOT, 2),
    weight: unit('kg', POUND, 2),
    ounce: unit('g', OUNCE / GRAM, 0),
    boards: unit('boards', 1, 1),
    angle: unit('deg', 1, 1),
  },
};

function unit(name: string, per: number, digits: number, changeDigits = digits): DisplayUnit {
  return {
    name,
    per,
    show: (value) => decimals(value * per, digits),
    change: (value) => signed(value * per, changeDigits),
    size: (value) => decimals(Math.abs(value * per), changeDigits),
  };
}

/** A drill's size: a fraction where it is one of 64ths, as drills are, else as given. */
function drillSize(inches: number): string {
  const isFraction = Math.abs(inches * 64 - Math.round(inches * 64)) < 0.064;
  return isFraction ? formatFraction(inches, 64) : decimals(inches, 3);
}

/** Significant digits of what is given in one unit and shown in another, and the most decimals. */
const GIVEN_DIGITS = 3;
const GIVEN_DECIMALS = 2;

/** Most decimals that people type; a number with more was given in another unit. */
const TYPED_DECIMALS = 4;

/** A number as it was given or chosen, without digits it does not have: `15`, or `6.8` in kg; 27 km/h is `16.8` in mph. */
export function given(value: number, { per }: Pick<DisplayUnit, 'per'>, digits = GIVEN_DIGITS): string {
  const isTyped = per === 1 && Number(value.toFixed(TYPED_DECIMALS)) === value;
  const known = isTyped ? value : Number((value * per).toPrecision(digits));
  return String(Number(known.toFixed(per === 1 ? digits : GIVEN_DECIMALS)));
}

/** The same with its unit: `15 lb`, `6.8 kg`. */
export const givenWithUnit = (value: number, unit: DisplayUnit, digits = GIVEN_DIGITS): string =>
  `${given(value, unit, digits)} ${unit.name}`;

/** Difference of two numbers as both are shown in decimals, with its sign, so that a row of a table adds up. */
export const changeShown = ({ per, show, change }: DisplayUnit, before: number, after: number): string =>
  change((Number(show(after)) - Number(show(before))) / per);

/** A number with its unit behind it: `4 1/2 in`, `114 mm`. */
export const withUnit = (value: number, { show, name }: DisplayUnit): string => `${show(value)} ${name}`;
