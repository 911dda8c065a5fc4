import type { Mover } from '../charts/movers-picture.js';
import type { Page } from '../text/page.js';
import { columnsOf } from '../text/wrap.js';

/** Something that moves a number, and how far, as it is written. */
export interface DrawnMover {
  readonly mover: Mover;
  readonly size: string;
}

const INDENT = '  ';
const GAP = '  ';
/** Columns of a bar at least; with less room it stands below its name. */
const LEAST_BAR = 16;
const MOST_BAR = 40;

/** What spreads a number to both sides, and what changes it. */
const SIGNS = { spread: { unicode: '═', ascii: '=' }, change: { unicode: '█', ascii: '#' } } as const;

/** What moves a number, as bars on one scale, each behind its name, or below it where there is no room. */
export function moversDrawing(rows: readonly DrawnMover[], page: Page): string[] {
  const names = rows.map(({ mover: { sign, name } }) => `${sign} ${name}`.trim());
  const nameWidth = Math.max(...names.map(columnsOf));
  const sizeWidth = Math.max(...rows.map(({ size }) => columnsOf(size)));
  const most = Math.max(...rows.map(({ mover }) => Math.abs(mover.size)), Number.MIN_VALUE);
  const beside = page.width - INDENT.length - nameWidth - GAP.length - 1 - sizeWidth;
  const isBeside = beside >= LEAST_BAR;
  const room = Math.min(MOST_BAR, isBeside ? beside : page.width - 2 * INDENT.length - 1 - sizeWidth);
  return rows.flatMap(({ mover: { kind, size: value }, size }, i) => {
    const { unicode, ascii } = SIGNS[kind === 'shots' || kind === 'reach' ? 'spread' : 'change'];
    const length = Math.max(1, Math.round((Math.abs(value) / most) * room));
    const drawn = `${(page.ascii ? ascii : unicode).repeat(length)} ${size}`;
    const name = names[i];
    const paint = kind === 'layout' ? page.paint.strong : (text: string) => text;
    return isBeside
      ? [`${INDENT}${paint(name)}${' '.repeat(nameWidth - columnsOf(name))}${GAP}${drawn}`]
      : [`${INDENT}${paint(name)}`, `${INDENT}${INDENT}${drawn}`];
  });
}
