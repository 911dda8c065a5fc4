import { CM, FOOT, GRAM, GRAM_PER_CC, INCH, KMH, MM, MPH, OUNCE, POUND } from '../../base/units.js';

/** What a number measures: how faults call it, and each unit that may be typed behind it, in one of them. */
interface Measure {
  readonly name: string;
  readonly units: Readonly<Record<string, number>>;
}

const MEASURES: readonly Measure[] = [
  { name: 'a length', units: { in: INCH, ft: FOOT, mm: MM, cm: CM, m: 1 } },
  { name: 'a speed', units: { mph: MPH, 'km/h': KMH, 'm/s': 1, 'ft/s': FOOT } },
  { name: 'a weight', units: { lb: POUND, oz: OUNCE, kg: 1, g: GRAM } },
  { name: 'an angle', units: { deg: 1 } },
  { name: 'a rev rate', units: { rpm: 1 } },
  { name: 'a finish', units: { grit: 1 } },
  { name: 'a number of boards', units: { boards: 1 } },
  { name: 'a sharpness', units: { 'deg/ft': 1, 'deg/m': FOOT } },
  { name: 'a time', units: { s: 1 } },
  { name: 'a density', units: { 'g/cc': GRAM_PER_CC, 'kg/m3': 1 } },
];

/** Other ways to write a unit, in small letters. */
const WORDS: Readonly<Record<string, readonly string[]>> = {
  in: ['inch', 'inches', '"'],
  ft: ['foot', 'feet', "'"],
  mm: ['millimeter', 'millimeters', 'millimetre', 'millimetres'],
  cm: ['centimeter', 'centimeters', 'centimetre', 'centimetres'],
  m: ['meter', 'meters', 'metre', 'metres'],
  mph: ['mi/h'],
  'km/h': ['kmh', 'kph', 'kmph'],
  'ft/s': ['fps'],
  lb: ['lbs', 'pound', 'pounds', '#'],
  oz: ['ounce', 'ounces'],
  kg: ['kgs', 'kilo', 'kilos', 'kilogram', 'kilograms'],
  g: ['gram', 'grams'],
  deg: ['°', 'degree', 'degrees'],
  rpm: ['rev/min', 'revs'],
  boards: ['board', 'bd', 'board edge'],
  'deg/ft': ['°/ft', 'degrees/foot'],
  'deg/m': ['°/m'],
  s: ['sec', 'second', 'seconds'],
  'g/cc': ['g/cm3', 'g/cm³', 'g/cm^3'],
  'kg/m3': ['kg/m³', 'kg/m^3'],
};

const UNIT_OF_WORD: ReadonlyMap<string, string> = new Map([
  ...MEASURES.flatMap(({ units }) => Object.keys(units).map((unit) => [unit, unit] as const)),
  ...Object.entries(WORDS).flatMap(([unit, words]) => words.map((word) => [word, unit] as const)),
]);

/** The unit that a typed word stands for, a final point aside; undefined when it stands for none. */
export const unitOfWord = (word: string): string | undefined =>
  UNIT_OF_WORD.get(word.toLowerCase().replace(/\.$/, ''));

/** What a unit measures; undefined for a count. */
export const measureOf = (unit: string): Measure | undefined =>
  MEASURES.find(({ units }) => Object.hasOwn(units, unit));
