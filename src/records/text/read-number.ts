import { parseFraction } from './parse-fraction.js';
import { plainSigns } from './plain-signs.js';
import { measureOf, unitOfWord } from './typed-units.js';

/** What a number is asked for in: the unit of one typed bare, and that of the result; '' for a count. */
export interface NumberKind {
  readonly bare: string;
  readonly wanted: string;
}

/** A number as it was typed, in the wanted unit. */
interface TypedNumber {
  readonly value: number;
  /** Half of the range that was typed, or what followed ±; null for a single number. */
  readonly halfRange: number | null;
  /** Whether `about` or `~` stood before it. */
  readonly isAbout: boolean;
}

/** A text that is no number of its kind, and what to do about it where that is clear. */
interface Unread {
  readonly hint: string | null;
}

/** Wanted where only the ratio to another number in the same unit counts. */
export const ANY_UNIT = 'in any unit';

/** The kind of a field whose rule and description name this unit. */
export function kindOfUnit(unit: string): NumberKind {
  const word = unit.replace(/[()]/g, '');
  const wanted = unitOfWord(word) ?? word;
  return { bare: wanted, wanted };
}

export const isUnread = (read: TypedNumber | Unread): read is Unread => 'hint' in read;

/** Far longer than any number or range that a person types; a longer text is a pasted one. */
const MOST_SIGNS = 80;

const ABOUT = /^(?:~|≈|(?:about|around|roughly|approximately|approx\.?|circa|ca\.?)(?= |\d)) ?/i;
const PLUS_MINUS = / ?(?:±|\+\/-|\+-) ?/;

/**
 * A number, or a range of numbers, as people type it: `4½`, `15 lbs`, `27,5 km/h`, `3/8 up`, `40-50`, `45 ± 5`, `~45`.
 *
 * `4-1/2` is a mixed number of inches and no range of anything else. A text that may mean two numbers is refused.
 */
export function readNumber(text: string, kind: NumberKind): TypedNumber | Unread {
  const plain = plainSigns(text.slice(0, 10 * MOST_SIGNS));
  if (text.length > 10 * MOST_SIGNS || plain.length > MOST_SIGNS) return { hint: null };
  const body = plain.replace(ABOUT, '');
  const isAbout = body !== plain;
  const [middle, half, ...more] = body.split(PLUS_MINUS);
  if (half !== undefined && middle !== '' && more.length === 0)
    return withDeviation(middle, half, isAbout, kind);
  const single = readAmount(body, kind);
  const ranges = rangesOf(body, kind);
  if (single && ranges.length > 0) return { hint: `It may be one number or a range. ${PLAINLY}` };
  if (single) return inWanted(single, kind, (value) => ({ value, halfRange: null, isAbout }));
  if (ranges.length > 1) return { hint: `It may be more than one range. ${PLAINLY}` };
  const [range] = ranges;
  if (!range) return { hint: hintFor(body) };
  return inWanted(range.from, kind, (from) =>
    inWanted(range.to, kind, (to) => ({
      value: (from + to) / 2,
      halfRange: Math.abs(to - from) / 2,
      isAbout,
    })),
  );
}

const PLAINLY = 'Write a mixed number with a blank, 4 1/2, and a range with "to".';

/** A number with its unit as typed, and its sign. */
interface Amount {
  readonly size: number;
  readonly unit: string | null;
  /** -1 after a minus or with `down`, 1 after a plus or with `up`; null where neither is typed. */
  readonly side: 1 | -1 | null;
  readonly hasSignBefore: boolean;
}

const AMOUNT =
  /^([+-]?) ?(?:(up|down) )?([\d.,][\d., /-]*)(?: ?([a-z°"'#/]+\.?|k?g\/c?m\^?[3³]))??(?: ?(up|down))?$/i;

/** One number of any unit, or of a unit and its part; null otherwise. */
const readAmount = (text: string, kind: NumberKind): Amount | null =>
  readPlain(text, kind) ?? readWithPart(text, kind);

/** How many of a smaller unit make one of a larger that is typed before it. */
const PARTS: Readonly<Record<string, { readonly part: string; readonly count: number }>> = {
  lb: { part: 'oz', count: 16 },
  ft: { part: 'in', count: 12 },
};

/** A number of a unit and its part: `15 lb 4 oz`. */
function readWithPart(text: string, kind: NumberKind): Amount | null {
  const [, large = '', small = ''] = /^([\d.,]+ ?[a-z#']+\.?),? ?(?:and )?(\d.*)$/i.exec(text) ?? [];
  const [whole, rest] = [readPlain(large, kind), readPlain(small, kind)];
  const { part, count } = PARTS[whole?.unit ?? ''] ?? { part: null, count: 0 };
  return whole && rest && rest.unit === part && rest.side === null && rest.size < count
    ? { ...whole, size: whole.size + rest.size / count }
    : null;
}

function readPlain(text: string, kind: NumberKind): Amount | null {
  const [, sign = '', before, number = '', word, behind] = AMOUNT.exec(text) ?? [];
  const unit = word === undefined ? null : unitNamed(word, kind);
  const size = sizeOf(number.trim(), unit, kind);
  const sides = [sign, before, behind].filter((each) => each);
  if (Number.isNaN(size) || unit === undefined || sides.length > 1) return null;
  const isDown = /^(-|down)$/i.test(sides[0] ?? '');
  return { size, unit, side: sides.length === 0 ? null : isDown ? -1 : 1, hasSignBefore: sign !== '' };
}

const unitNamed = (word: string, { wanted }: NumberKind): string | undefined =>
  unitOfWord(word) ?? (word.toLowerCase() === wanted ? wanted : undefined);

/** A size as typed; NaN for a hyphen where it is no mixed number, and for a comma that may stand for thousands. */
function sizeOf(number: string, unit: string | null | undefined, { wanted }: NumberKind): number {
  const mixed = /^\d+-(\d+)\/(\d+)$/.exec(number);
  if (mixed ? wanted !== 'in' || Number(mixed[1]) >= Number(mixed[2]) : number.includes('-'))
    return Number.NaN;
  if (!THOUSANDS.test(number)) return parseFraction(number);
  // no finish is coarser than 100, and nothing in a ball as light as 10 kg/m³
  if (wanted === 'grit' || unit === 'kg/m3') return Number(number.replace(',', ''));
  return measureOf(wanted) ? parseFraction(number) : Number.NaN; // no other quantity with a unit runs to thousands, so the comma is a decimal one
}

/** A comma before three digits: 1,500 may be one and a half, or one thousand five hundred. */
const THOUSANDS = /^[1-9]\d{0,2},\d{3}$/;

interface Range {
  readonly from: Amount;
  readonly to: Amount;
}

/** All ways to read a text as a range whose first number is the lesser. */
function rangesOf(text: string, kind: NumberKind): readonly Range[] {
  const ways: Range[] = [];
  for (const { index, 0: between } of text.matchAll(/ ?(?:-| to |\.\.\.?) ?/gi)) {
    const from = readAmount(text.slice(0, index), kind);
    const to = readAmount(text.slice(index + between.length), kind);
    if (from && to && (between === ' to ' || !from.hasSignBefore)) ways.push(...ordered(from, to));
  }
  return ways;
}

/** Both ends of a range, each with the unit and the side that the other has where it has none; none if they descend. */
function ordered(from: Amount, to: Amount): readonly Range[] {
  const [fromUnit, toUnit] = [from.unit ?? to.unit, to.unit ?? from.unit];
  if (fromUnit !== toUnit) return [];
  if (from.hasSignBefore || to.hasSignBefore)
    return signedSize(from) < signedSize(to)
      ? [{ from: { ...from, unit: fromUnit }, to: { ...to, unit: toUnit } }]
      : [];
  const [fromSide, toSide] = [from.side ?? to.side, to.side ?? from.side];
  return fromSide !== toSide || from.size < to.size
    ? [{ from: { ...from, unit: fromUnit, side: fromSide }, to: { ...to, unit: toUnit, side: toSide } }]
    : [];
}

const signedSize = ({ size, side }: Amount): number => (side === -1 ? -size : size);

/** A number with how far off it may be: `45 ± 5`. */
function withDeviation(
  middle: string,
  half: string,
  isAbout: boolean,
  kind: NumberKind,
): TypedNumber | Unread {
  const [value, off] = [readAmount(middle, kind), readAmount(half, kind)];
  if (!value || !off || off.hasSignBefore) return { hint: 'Write it like 45 +/- 5.' };
  const side = off.side ?? value.side;
  const unit = value.unit ?? off.unit;
  return inWanted({ ...value, unit, side }, kind, (number) =>
    inWanted({ ...off, unit: off.unit ?? unit, side: null }, kind, (halfRange) => ({
      value: number,
      halfRange,
      isAbout,
    })),
  );
}

/** Hands on an amount in the wanted unit; refuses a unit of what measures something else. */
function inWanted(
  amount: Amount,
  { bare, wanted }: NumberKind,
  then: (value: number) => TypedNumber | Unread,
): TypedNumber | Unread {
  const unit = amount.unit ?? bare;
  const value = signedSize(amount);
  const measure = measureOf(wanted);
  if (unit === wanted || wanted === ANY_UNIT) return then(value);
  if (!measure) return { hint: `Write it without a unit, or with ${wanted}.` };
  const [from, to] = [measure.units[unit], measure.units[wanted]];
  return from === undefined
    ? { hint: `${unit} is no unit of ${measure.name}; known: ${Object.keys(measure.units).join(', ')}.` }
    : then((value * from) / to);
}

/** What to do about a text that is nearly a number. */
function hintFor(text: string): string | null {
  if (/\d\/0+(?![\d.])/.test(text)) return 'A fraction cannot be divided by 0.';
  if (/(^|[^\d])[1-9]\d{0,2},\d{3}(?!\d)/.test(text))
    return 'The comma may stand for thousands or for decimals. Write it without, or with a point.';
  if (/^[+-].*(up|down)$/i.test(text)) return 'Write either a sign or up or down, not both.';
  return /^[^-]*\d *-[ -]*\d|\d to \d/i.test(text)
    ? 'A range begins with its lesser number: 40 to 50.'
    : null;
}
