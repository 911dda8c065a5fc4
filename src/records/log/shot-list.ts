import { stringify } from 'csv-stringify/sync';
import { type Fault, InputError, MOST_FAULTS } from '../../base/errors.js';
import { faultCount, faultsOf } from '../read/faults.js';
import { type Row, readRows } from '../read/list-rows.js';
import { withTypedNumbers } from '../read/typed-numbers.js';
import type { DrilledLayout } from '../schemas/drilled-layout.js';
import { type LoggedShot, type Night, nightSchema, READING_IDS } from '../schemas/shot-log.js';
import { guardedCell } from '../text/csv-cell.js';
import { headAlone, type NightHead } from './add-shot.js';
import { IN_GUTTER, NOT_SEEN } from './read-line.js';
import { formatReadingErrors, readReadingErrors } from './read-reading-errors.js';

/* Shots as comma-separated values, one a row, with the names of the record's fields as heads. */

const OF_NIGHT = ['on', 'lane', 'games', 'targetBoard', 'patternFt'] as const;
const YES = ['gutter', 'arrowsAgainstTarget', 'confirmed'] as const;
const OF_SHOT = [
  ...READING_IDS,
  'gutter',
  'arrowsAgainstTarget',
  'ringOverHole',
  'hookStartFt',
  'totalHookBoards',
  'entryAngleDeg',
  'confirmed',
  'note',
] as const satisfies readonly (keyof LoggedShot)[];
const ERRORS = 'readingErrors';
/** The drilled layout; it is written, and must be the right one where it is read. */
const LAYOUT = 'layout';
const HEADS = [LAYOUT, ...OF_NIGHT, ...OF_SHOT, ERRORS] as const;

/** The words of a line and its flags, which a list may have as heads too. */
const WORDS_OF_LINE: ReadonlyMap<string, string> = new Map([
  ['night', 'on'],
  ['target', 'targetBoard'],
  ['laydown', 'laydownBoard'],
  ['arrows', 'arrowsBoard'],
  ['breakpoint', 'breakpointBoard'],
  ['pins', 'pinsBoard'],
]);

/** A head in capitals or not, as the name of its column. */
function headOf(head: string): string {
  const small = head.toLowerCase();
  return WORDS_OF_LINE.get(small) ?? HEADS.find((each) => each.toLowerCase() === small) ?? head;
}

/** A row of a list: a shot and its night; what the row leaves out of it is not known. */
export interface ListedShot {
  /** The row as a spreadsheet counts it. */
  readonly row: number;
  readonly head: NightHead;
  readonly shot: LoggedShot;
}

/** As many as a log holds. */
export const MOST_LISTED_SHOTS = 10_000;

/**
 * Reads a list of shots, in order.
 *
 * Cells are typed as a person writes them: `17,5`, `28 km/h`, `17½`, `yes`; `g` as the board at the pins is a gutter ball, an empty
 * cell or a dash is left out.
 *
 * @param id      the drilled layout whose shots they are; rows of another are refused
 * @param source  the file's name, for the error
 * @throws {InputError} `broken-list` or `bad-list`, with the faults of all rows at once, up to as many as an error names
 */
export function readShotList(text: string, id: string, source: string): readonly ListedShot[] {
  const rows = readRows(text, source, {
    each: 'shot',
    mostRows: MOST_LISTED_SHOTS,
    known: HEADS,
    needed: ['lane'],
    knownHead: headOf,
    example: 'flarewise log ID --csv shows the columns.',
  });
  const faults: Fault[] = [];
  let count = 0;
  const listed = rows.flatMap(({ row, number }): ListedShot[] => {
    const found = shotOf(row, number, id);
    if ('shot' in found) return [found];
    count += found.count;
    if (faults.length < MOST_FAULTS)
      faults.push(...found.faults.map((fault) => ({ ...fault, field: `row ${number}: ${fault.field}` })));
    return [];
  });
  if (count > 0) throw new InputError('bad-list', faults, source, count);
  return listed;
}

/** The shots of drilled layouts as a list that `readShotList` reads. */
export const formatShotList = (
  logs: readonly { readonly id: string; readonly record: DrilledLayout }[],
): string =>
  stringify(
    logs.flatMap(({ id, record }) => record.nights.flatMap((night) => rowsOf(night, id))),
    { header: true, columns: [...HEADS], record_delimiter: 'windows', cast: { string: guardedCell } },
  );

const rowsOf = (night: Night, id: string) =>
  night.shots.map((shot) => ({
    [LAYOUT]: id,
    ...headAlone(night),
    ...shot,
    ...Object.fromEntries(
      YES.flatMap((field) => (shot[field] === undefined ? [] : [[field, shot[field] ? 'yes' : 'no']])),
    ),
    [ERRORS]: night.readingErrors ? formatReadingErrors(night.readingErrors) : '',
  }));

type Faulty = { readonly faults: readonly Fault[]; readonly count: number };

function shotOf(row: Row, number: number, id: string): ListedShot | Faulty {
  const cells = Object.fromEntries(
    Object.entries(row).filter(([head, cell]) => cell !== '' && (head === 'note' || !NOT_SEEN.test(cell))),
  );
  const { [LAYOUT]: layout = id, [ERRORS]: errors } = cells;
  if (layout !== id)
    return faulty({
      field: LAYOUT,
      rule: `must be ${id}, or left out`,
      got: JSON.stringify(layout),
      hint: 'Import the shots of each drilled layout by itself.',
    });
  const value = withTypedNumbers(nightSchema, { ...picked(cells, OF_NIGHT), shots: [typedShot(cells)] });
  const { data, error } = nightSchema.safeParse(value);
  if (!data)
    return {
      faults: faultsOf(error.issues, nightSchema, value).map((fault) => ({
        ...fault,
        field: fault.field.replace(/^shots\[0\]\.?/, '') || 'shot',
      })),
      count: faultCount(error.issues),
    };
  const head = headAlone(data);
  try {
    const own = errors === undefined ? {} : { [ERRORS]: readReadingErrors(errors, ERRORS, () => undefined) };
    return { row: number, head: { ...head, ...own }, shot: data.shots[0] };
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return { faults: error.faults, count: error.faults.length };
  }
}

/** The cells of a shot, with yes and no read; a gutter ball may stand in the column of the pins. */
function typedShot({ pinsBoard = '', ...cells }: Row): Readonly<Record<string, unknown>> {
  const isGutter = IN_GUTTER.test(pinsBoard);
  const shot: Record<string, unknown> = {
    ...picked(cells, OF_SHOT),
    ...(pinsBoard === '' ? {} : isGutter ? { gutter: 'yes' } : { pinsBoard }),
  };
  for (const field of YES) if (shot[field] !== undefined) shot[field] = yesNo(String(shot[field]));
  if (shot.gutter === false) delete shot.gutter;
  if (shot.confirmed === false) delete shot.confirmed;
  return shot;
}

const picked = (cells: Row, fields: readonly string[]): Record<string, string> =>
  Object.fromEntries(fields.flatMap((field) => (cells[field] === undefined ? [] : [[field, cells[field]]])));

const faulty = (fault: Fault): Faulty => ({ faults: [fault], count: 1 });

/** A cell of a column that says yes or no; anything else stays as it is, for the schema to refuse. */
const yesNo = (cell: string): unknown =>
  /^(yes|y|true)$/i.test(cell) ? true : /^(no|n|false)$/i.test(cell) ? false : cell;
