import { stringify } from 'csv-stringify/sync';
import { type Fault, InputError, MOST_FAULTS } from '../../base/errors.js';
import { fromKeys } from '../../base/from-keys.js';
import { shortened } from '../../base/visible.js';
import { withoutUndefined } from '../../base/without-undefined.js';
import { type Bowler, bowlerSchema } from '../schemas/bowler.js';
import {
  BOWLER_KIND_IDS,
  type BowlerKind,
  GUESS_DEVIATION,
  RELEASE_GUESSES,
  RELEASE_KEYS,
  type ReleaseKey,
} from '../shared/release-guesses.js';
import { guardedCell } from '../text/csv-cell.js';
import { nearestWord } from '../text/nearest-word.js';
import { singleBlanks } from '../text/single-blanks.js';
import { faultCount, faultsOf } from './faults.js';
import { type Row, readRows } from './list-rows.js';
import { withTypedNumbers } from './typed-numbers.js';

/* A coach's list: bowlers as comma-separated values, one a row, with the names of the record's fields as heads. */

const TEXTS = ['name', 'note'] as const;
/** One of a few words, in small letters or not. */
const WORDS = ['hand', 'skill'] as const;
const NUMBERS = [...RELEASE_KEYS, 'laydownBoard'] as const;
/** The column that says how far off a number of the release may be, one standard deviation: `speedMph +/-`. */
const offHead = <K extends ReleaseKey>(key: K) => `${key} +/-` as const;
const OFF_HEADS = RELEASE_KEYS.map(offHead);
const HEADS = ['name', 'hand', 'thumbHole', ...NUMBERS, ...OFF_HEADS, 'skill', 'note'] as const;
/** Numbers that may be left out or unknown: they are guessed by the kind of bowler. */
const GUESSED = ['axisTiltDeg', 'axisRotationDeg', 'papOverIn', 'papUpIn'] as const;
/** The kind of bowler to guess by; it is read and not written, for what was guessed is written as such. */
const KIND = 'kind';
/** Which of the coach's balls the bowler may use; it is no part of the record. */
const BALLS = 'balls';
const READ_HEADS = [...HEADS, KIND, BALLS] as const;
const OPTIONAL: readonly string[] = ['laydownBoard', 'skill', 'note', ...GUESSED, ...OFF_HEADS];
const NEEDED = HEADS.filter((head) => !OPTIONAL.includes(head));

/** A row of a coach's list. */
export interface BowlerRow {
  readonly bowler: Bowler;
  /** The balls that it names, as typed; empty where it names none. */
  readonly balls: string;
}

/**
 * Reads a list of bowlers.
 *
 * Cells are typed as a person writes them: `4 7/8`, `1/4 down`, `17,5`, `28 km/h`, `40-50`, `yes`. An empty cell is a field
 * left out. Axis tilt, axis rotation and PAP may be left out, or be `?`: they are then guessed by the column `kind`, or else by
 * the usual kind of bowler, and the record says how far off the guess may be. A column such as `speedMph +/-`, or `speedMph ±`,
 * says it of any number of the release.
 * Grips and scatters have no column: they take a JSON record. The column `balls` is handed on as it was typed.
 *
 * @param source  the file's name, for the error
 * @throws {InputError} `broken-list` or `bad-list`, with the faults of all rows at once, up to as many as an error names
 */
export function readCoachList(text: string, source: string): readonly BowlerRow[] {
  const rows = readRows(text, source, {
    each: 'bowler',
    mostRows: MOST_LISTED_BOWLERS,
    known: READ_HEADS,
    needed: NEEDED,
    knownHead: headOf,
    example: 'Export a bowler with flarewise shelf export --csv to see the columns.',
  });
  const faults: Fault[] = [];
  let count = 0;
  const bowlers = rows.flatMap(({ row, number }): BowlerRow[] => {
    const kind = kindOf(row);
    const record = withTypedNumbers(bowlerSchema, recordOf(row, kind ?? USUAL_KIND));
    const result = bowlerSchema.safeParse(record);
    if (result.success && kind !== null) return [{ bowler: result.data, balls: row[BALLS] ?? '' }];
    const issues = result.error?.issues ?? [];
    count += faultCount(issues) + (kind === null ? 1 : 0);
    if (faults.length >= MOST_FAULTS) return [];
    const who = row.name ? ` (${shortened(row.name, 80)})` : '';
    const found = [
      ...faultsOf(issues, bowlerSchema, record),
      ...(kind === null ? [kindFault(row[KIND])] : []),
    ];
    faults.push(...found.map((fault) => ({ ...fault, field: `row ${number}${who}: ${fault.field}` })));
    return [];
  });
  if (count > 0) throw new InputError('bad-list', faults, source, count);
  return bowlers;
}

/**
 * The list of these bowlers; what has no column (grip, scatter) is left out. How far off a number may be stands in a column
 * of its own.
 */
export const formatBowlerList = (bowlers: readonly Bowler[]): string =>
  stringify(
    bowlers.map(({ pap, thumbHole, uncertainty = {}, ...bowler }) => ({
      ...bowler,
      papOverIn: pap.overIn,
      papUpIn: pap.upIn,
      ...Object.fromEntries(RELEASE_KEYS.map((key) => [offHead(key), uncertainty[key]])),
      thumbHole: thumbHole ? 'yes' : 'no',
    })),
    { header: true, columns: [...HEADS], record_delimiter: 'windows', cast: { string: guardedCell } },
  );

/** Far more than a club has; each is checked in some microseconds. */
export const MOST_LISTED_BOWLERS = 20_000;

const USUAL_KIND: BowlerKind = 'usual';

/** The kind of bowler of a row, the usual one where none is given; null for an unknown word. */
function kindOf(row: Row): BowlerKind | null {
  const typed = row[KIND] ?? '';
  return isUnknown(typed)
    ? USUAL_KIND
    : (BOWLER_KIND_IDS.find((kind) => kind === typed.toLowerCase()) ?? null);
}

function kindFault(typed: string): Fault {
  const near = nearestWord(typed, BOWLER_KIND_IDS);
  return {
    field: KIND,
    rule: `must be one of ${BOWLER_KIND_IDS.join(', ')}`,
    got: JSON.stringify(shortened(typed, 80)),
    hint: near ? `Did you mean ${near}?` : 'What is unknown of a release is guessed by it.',
  };
}

/** A head as a spreadsheet has it, `Speedmph ±`, as the name of its column. */
function headOf(head: string): string {
  const plain = singleBlanks(head).replace(/ ?(±|\+\/?-)$/, ' +/-');
  return READ_HEADS.find((each) => each.toLowerCase() === plain.toLowerCase()) ?? plain;
}

/** A cell of what is not known. */
const isUnknown = (cell: string | undefined): boolean => cell === undefined || /^(\?|unknown)?$/i.test(cell);

/** A row as a record whose numbers stand as they were typed; what may be guessed and is not known is guessed. */
function recordOf(row: Row, kind: BowlerKind): unknown {
  const given = (head: string): boolean => row[head] !== undefined && row[head] !== '';
  const typed = (head: string): string | undefined => (given(head) ? row[head] : undefined);
  const guessed = GUESSED.filter((head) => isUnknown(row[head]));
  const { papOverIn, papUpIn, ...numbers } = {
    ...Object.fromEntries(NUMBERS.map((head) => [head, typed(head)])),
    ...fromKeys(guessed, (head) => RELEASE_GUESSES[kind][head]),
  };
  const uncertainty = {
    ...fromKeys(guessed, (head) => GUESS_DEVIATION[head]),
    ...Object.fromEntries(
      RELEASE_KEYS.flatMap((key) => (isUnknown(row[offHead(key)]) ? [] : [[key, row[offHead(key)]]])),
    ),
  };
  const record = {
    schema: 'flarewise/bowler/1',
    ...Object.fromEntries(TEXTS.map((head) => [head, typed(head)])),
    ...Object.fromEntries(WORDS.map((head) => [head, typed(head)?.toLowerCase()])),
    thumbHole: given('thumbHole') ? (YES_NO[row.thumbHole.toLowerCase()] ?? row.thumbHole) : undefined,
    ...numbers,
    pap: { overIn: papOverIn, upIn: papUpIn },
    uncertainty: Object.keys(uncertainty).length > 0 ? uncertainty : undefined,
  };
  return withoutUndefined(record);
}

const YES_NO: Readonly<Record<string, boolean>> = {
  yes: true,
  no: false,
  true: true,
  false: false,
  y: true,
  n: false,
};
