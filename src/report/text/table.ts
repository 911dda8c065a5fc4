import Table from 'cli-table3';
import type { Page } from './page.js';
import { withPlainText } from './plain-text.js';
import { columnsOf, wrap } from './wrap.js';

export interface Column {
  /** May hold a line break. */
  readonly head: string;
  readonly align?: 'left' | 'right';
}

const INDENT = '  ';
const GAP = '  ';
/** The first column is wrapped rather than the table split, as long as it keeps this many columns. */
const NARROWEST_KEY = 16;
const WIDEST_KEY = 40;

// biome-ignore format: one border sign an entry would take a screen
const NO_LINES = {
  top: '', 'top-mid': '', 'top-left': '', 'top-right': '',
  bottom: '', 'bottom-mid': '', 'bottom-left': '', 'bottom-right': '',
  left: '', 'left-mid': '', mid: '', 'mid-mid': '', right: '', 'right-mid': '',
  middle: GAP,
};

/** A table as data, for whoever sets it: a terminal or a web page. The first column names the rows. */
export interface Grid {
  readonly columns: readonly Column[];
  readonly rows: readonly (readonly string[])[];
}

/** A grid as text lines; nothing for one without rows. */
export const gridLines = ({ columns, rows }: Grid, page: Page): string[] =>
  rows.length === 0 ? [] : table(columns, withPlainText(rows, page.ascii), page);

/**
 * A table without lines, each row a text line, none wider than the page.
 *
 * Columns that do not fit are not dropped: they follow below as a further table, with the first column
 * repeated, so that a narrow terminal shows the same numbers as a wide one.
 */
export function table(
  columns: readonly Column[],
  rows: readonly (readonly string[])[],
  page: Page,
): string[] {
  const room = page.width - INDENT.length;
  const others = columns
    .slice(1)
    .map(({ head }, i) => widest([head, ...rows.map((row) => row[i + 1] ?? '')]));
  const keyRoom = room - others.reduce((sum, each) => sum + GAP.length + each, 0);
  const besideOne = room - GAP.length - Math.max(0, ...others);
  const keyLimit = keyRoom >= NARROWEST_KEY ? keyRoom : Math.min(WIDEST_KEY, besideOne);
  const keyed = rows.map(([key = '', ...rest]) => [wrap(key, keyLimit).join('\n'), ...rest]);
  const widths = [widest([columns[0].head, ...keyed.map(([key = '']) => key)]), ...others];
  const hasHeads = columns.some(({ head }) => head !== '');

  const lines: string[] = [];
  for (const group of groups(widths, room)) {
    if (lines.length > 0) lines.push('');
    const drawn = new Table({
      head: hasHeads ? group.map((i) => columns[i].head.split('\n').map(page.paint.quiet).join('\n')) : [],
      colAligns: group.map((i) => columns[i].align ?? (i === 0 ? 'left' : 'right')),
      chars: NO_LINES,
      style: { head: [], border: [], compact: true, 'padding-left': 0, 'padding-right': 0 },
    });
    drawn.push(...keyed.map((row) => group.map((i) => row[i] ?? '')));
    lines.push(
      ...drawn
        .toString()
        .split('\n')
        .map((line) => (INDENT + line).trimEnd()),
    );
  }
  return lines;
}

/** Which columns stand together, each time after the first one: as few groups as fit, of like sizes where these fit too. */
function groups(widths: readonly number[], room: number): number[][] {
  const fullest = groupsOf(widths, room, widths.length);
  const even = groupsOf(widths, room, Math.ceil((widths.length - 1) / fullest.length));
  return even.length === fullest.length ? even : fullest;
}

/** As many columns a group as fit, and at most this many beside the first. */
function groupsOf(widths: readonly number[], room: number, most: number): number[][] {
  const all: number[][] = [];
  let group = [0];
  let used = widths[0];
  for (let i = 1; i < widths.length; i += 1) {
    const needed = GAP.length + widths[i];
    if ((used + needed > room || group.length > most) && group.length > 1) {
      all.push(group);
      group = [0];
      used = widths[0];
    }
    group.push(i);
    used += needed;
  }
  return [...all, group];
}

const widest = (cells: readonly string[]): number =>
  Math.max(...cells.flatMap((cell) => cell.split('\n')).map(columnsOf));
