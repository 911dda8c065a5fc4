import { parseFraction } from '../../records/text/layout-text.js';
import { type DisplayUnit, type Quantity, UNITS, type Units } from './display-units.js';

/*
 * The sentences of an answer are written in the trade's units, as `--json` gives them. On a metric page each
 * number with its unit, and each range of two, is converted where it stands.
 */

/** Units as sentences write them, each by the quantity that shows how it is converted. */
const WRITTEN: Readonly<Record<string, Quantity>> = {
  mph: 'speed',
  'deg/ft': 'sharpness',
  ft: 'lane',
  feet: 'lane',
  in: 'gyration',
  inches: 'gyration',
  lb: 'weight',
  pounds: 'weight',
  oz: 'ounce',
  ounces: 'ounce',
};

const NUMBER = String.raw`\d+\/\d+|\d+(?:\.\d+)?(?: \d+\/\d+)?`;
const JOINT = ' to | and | or | against | – |–';

/** Not the last number of a layout, and not `in` that begins another phrase: `in 9 of 10`, `in the middle`. */
const QUANTITY = new RegExp(
  String.raw`(?<![\dx] |[\d./])(?:(${NUMBER})(${JOINT})([+−±-]?))?(${NUMBER}) ` +
    String.raw`(${Object.keys(WRITTEN)
      .sort((a, b) => b.length - a.length)
      .join('|')})(?![\w/])(?! (?:\d|the |a |an |all|any |every |which |this ))`,
  'g',
);

/** Significant digits of a converted number: about as many as those it was written with. */
const SENTENCE_DIGITS = 3;
const DECIMALS = 2;

/**
 * A sentence with its numbers in these units.
 *
 * Layouts stay as the trade writes them; `1/4 in` and `4 1/2 in` are read as fractions.
 */
export const inUnits = (text: string, units: Units, digits = SENTENCE_DIGITS): string =>
  units === UNITS.trade
    ? text
    : text.replace(
        QUANTITY,
        (_, first: string | undefined, joint = '', sign = '', last: string, written: string) => {
          const unit = units[WRITTEN[written] as Quantity];
          const before = first === undefined ? '' : `${converted(first, unit, digits)}${joint}${sign}`;
          return `${before}${converted(last, unit, digits)} ${unit.name}`;
        },
      );

const converted = (written: string, { per }: DisplayUnit, digits: number): string =>
  String(Number(Number((parseFraction(written) * per).toPrecision(digits)).toFixed(DECIMALS)));
