import { CsvError, type Info, parse } from 'csv-parse/sync';
import { type Fault, InputError, MOST_FAULTS } from '../../base/errors.js';
import { shortened } from '../../base/visible.js';
import { unguardedCell } from '../text/csv-cell.js';
import { nearestWord } from '../text/nearest-word.js';

/** The cells of a row as text, by the heads of their columns. */
export type Row = Readonly<Record<string, string>>;

/** A row, and its number as a spreadsheet counts it: the heads are row 1, and empty rows count. */
export interface NumberedRow {
  readonly number: number;
  readonly row: Row;
}

/** What a list must be. */
interface ListKind {
  /** What a row is of, for a fault: `bowler`. */
  readonly each: string;
  readonly mostRows: number;
  readonly known: readonly string[];
  readonly needed: readonly string[];
  /** A head as it is known, of one that may be written in several ways. */
  readonly knownHead?: (head: string) => string;
  /** How to see what the columns are. */
  readonly example: string;
}

/**
 * The rows of a list: comma-separated values, or with semicolons or tabs between, as spreadsheets differ by country; a byte order
 * mark, empty rows, empty columns and a first line such as `sep=;` aside.
 *
 * @param source  the file's name, for the error
 * @throws {InputError} `broken-list` or `bad-list`, with all faults of the heads at once
 */
export function readRows(text: string, source: string, kind: ListKind): readonly NumberedRow[] {
  const { heads, rows } = cellsOf(text.replace(/^\uFEFF?sep=.\r?\n/i, ''), source, kind);
  if (rows.length === 0)
    throw new InputError(
      'bad-list',
      {
        field: 'file',
        rule: `must have a row for each ${kind.each} below its heads`,
        got: 'no row',
        hint: kind.example,
      },
      source,
    );
  if (rows.length > kind.mostRows)
    throw new InputError(
      'bad-list',
      {
        field: 'file',
        rule: `must have at most ${kind.mostRows.toLocaleString('en')} rows`,
        got: 'more',
        hint: 'Divide it into several.',
      },
      source,
    );
  checkHeads(heads, source, kind);
  return rows;
}

function cellsOf(text: string, source: string, { mostRows, knownHead = (head) => head }: ListKind) {
  let heads: readonly string[] = [];
  try {
    const parsed: readonly { readonly record: Row; readonly info: Info }[] = parse(text, {
      bom: true,
      info: true,
      columns: (first: string[]) => {
        heads = first.map(knownHead);
        return [...heads];
      },
      trim: true,
      cast: unguardedCell,
      skip_empty_lines: true,
      delimiter: delimiterOf(text),
      to: mostRows + 1,
    });
    const rows = parsed
      .map(({ record: row, info }) => ({ number: 1 + info.records + info.empty_lines, row }))
      .filter(({ row }) => Object.values(row).some((cell) => cell !== ''));
    return { heads: heads.filter((head) => head !== '' || rows.some(({ row }) => row[''] !== '')), rows };
  } catch (error) {
    if (!(error instanceof CsvError)) throw error;
    throw new InputError(
      'broken-list',
      {
        field: 'file',
        rule: 'must be comma-separated values with as many cells in each row as heads',
        got: error.message,
        hint: 'A cell that holds a comma stands in double quotes.',
      },
      source,
    );
  }
}

/** Comma, semicolon or tab, whichever the heads have most of. */
function delimiterOf(text: string): string {
  const [heads = ''] = text.trimStart().split('\n', 1);
  const count = (sign: string): number => heads.split(sign).length;
  return [',', ';', '\t'].reduce((best, sign) => (count(sign) > count(best) ? sign : best));
}

/** @throws {InputError} `bad-list` */
function checkHeads(heads: readonly string[], source: string, { known, needed, example }: ListKind): void {
  const unknown = heads.filter((head) => !known.includes(head));
  const missing = needed.filter((head) => !heads.includes(head));
  const twice = known.filter((head) => heads.indexOf(head) !== heads.lastIndexOf(head));
  const count = unknown.length + missing.length + twice.length;
  if (count === 0) return;
  const near = unknown.slice(0, MOST_FAULTS).map((head) => nearestWord(head, known));
  const all = `Known columns: ${known.join(', ')}. A unit goes into the cells: 28 km/h.`;
  const faults: Fault[] = [
    ...twice.map((head) => ({
      field: `column ${head}`,
      rule: 'must be there once',
      got: 'two of them',
      hint: 'Leave out one of the two.',
    })),
    ...missing.map((head) => ({
      field: `column ${head}`,
      rule: 'must be there',
      got: 'none',
      hint: example,
    })),
    ...unknown.slice(0, MOST_FAULTS).map((head, i) => ({
      field: `column ${shortened(head, 80)}`,
      rule: 'must not be there: no such column is known',
      got: JSON.stringify(shortened(head, 80)),
      hint: near[i]
        ? `Did you mean ${near[i]}?`
        : i === near.indexOf(null)
          ? all
          : 'Give it the head of a known column, or leave it out.',
    })),
  ];
  throw new InputError('bad-list', faults, source, count);
}
