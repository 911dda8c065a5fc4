import { CM, FOOT, GRAM, INCH, KMH, MM, MPH, OUNCE, POUND } from '../../base/units.js';
import { parseSigned } from './parse-signed.js';
import { singleBlanks } from './single-blanks.js';

/** Units that may be typed behind a number, by what they measure; each in SI. */
const TYPED: readonly Readonly<Record<string, number>>[] = [
  { in: INCH, inches: INCH, '"': INCH, ft: FOOT, feet: FOOT, mm: MM, cm: CM, m: 1 },
  { mph: MPH, 'km/h': KMH, kmh: KMH, 'm/s': 1 },
  { lb: POUND, pounds: POUND, oz: OUNCE, ounces: OUNCE, kg: 1, g: GRAM },
];

const WITH_UNIT = /^(.*?\d) ?([a-z/]+|")? ?(up|down)?$/i;

/**
 * A length, speed or weight as typed: `4 7/8`, `124 mm`, `6 mm down`, `28 km/h`; NaN when it is none.
 *
 * @param bare    unit of a number typed without one
 * @param wanted  unit of the result
 */
export function parseQuantity(text: string, bare: string, wanted: string): number {
  const [, number = '', unit = bare, side = ''] = WITH_UNIT.exec(singleBlanks(text)) ?? [];
  const word = /^(up|down)$/i.test(unit) ? { unit: bare, side: unit } : { unit: unit.toLowerCase(), side };
  const value = parseSigned(`${number} ${word.side}`);
  if (word.unit === wanted) return value;
  const units = TYPED.find((each) => wanted in each && word.unit in each);
  return units ? (value * (units[word.unit] as number)) / (units[wanted] as number) : Number.NaN;
}
