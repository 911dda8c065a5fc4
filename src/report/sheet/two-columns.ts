import type { Block } from './blocks.js';
import type { Rows } from './flow-pages.js';
import { naturalWidth, stack, type TextStyle, type Typeset, typesetBlock } from './typeset-block.js';

/** Between two columns, pt. */
export const COLUMN_GAP = 20;

/** The width of each of two equal columns. */
export const columnWidth = (width: number): number => (width - COLUMN_GAP) / 2;

/** Shares of the room that the first of two columns may have. */
const SHARES = Array.from({ length: 13 }, (_, i) => 0.35 + 0.025 * i);

/** Two blocks that belong together, one beside the other, parted so that they are least high; cells are broken only where they must be. */
export function besideEachOther(
  [left, right]: readonly [Block, Block],
  width: number,
  style: TextStyle,
): Typeset {
  const room = width - COLUMN_GAP;
  const [least, other] = [naturalWidth(left, style), naturalWidth(right, style)];
  const broken = (first: number): number => Math.max(0, least - first) + Math.max(0, other - (room - first));
  const ways = SHARES.map((share) => {
    const first = share * room;
    const set = columns(typesetBlock(left, first, style), typesetBlock(right, room - first, style), first);
    return { set, broken: broken(first) };
  });
  const fewest = Math.min(...ways.map((way) => way.broken));
  return leastHigh(ways.filter((way) => way.broken <= fewest).map(({ set }) => set));
}

const leastHigh = (ways: readonly Typeset[]): Typeset =>
  ways.reduce((least, each) => (each.height < least.height ? each : least));

/**
 * Blocks in reading order, parted between two columns where that makes them least high; a block may go on in the second.
 *
 * @param blocks  as set in a column of `columnWidth`
 */
export function inTwoColumns(blocks: readonly Rows[], width: number, gap: number): Typeset {
  const pieces = blocks.flatMap((rows) => rows.map((row, i) => ({ row, above: i === 0 ? gap : 0 })));
  const column = (part: typeof pieces): Typeset =>
    stack(
      part.flatMap(({ row, above }, i) => [...(i > 0 ? [{ nodes: [], height: above }] : []), row]),
      0,
    );
  const height = (part: typeof pieces): number =>
    part.reduce((sum, { row, above }, i) => sum + row.height + (i > 0 ? above : 0), 0);
  const higher = pieces.map((_, i) => Math.max(height(pieces.slice(0, i + 1)), height(pieces.slice(i + 1))));
  const first = higher.indexOf(Math.min(...higher)) + 1;
  return columns(column(pieces.slice(0, first)), column(pieces.slice(first)), columnWidth(width));
}

const columns = (left: Typeset, right: Typeset, leftWidth: number): Typeset => ({
  nodes: [
    { kind: 'group', nodes: left.nodes },
    { kind: 'group', dx: leftWidth + COLUMN_GAP, nodes: right.nodes },
  ],
  height: Math.max(left.height, right.height),
});
