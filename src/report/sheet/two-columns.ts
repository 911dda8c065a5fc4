import type { Block } from './blocks.js';
import { stack, type TextStyle, type Typeset, typesetBlock, typesetRows } from './typeset-block.js';

/** Between two columns, pt. */
export const COLUMN_GAP = 20;

const widthOf = (width: number): number => (width - COLUMN_GAP) / 2;

/** Two blocks that belong together, one beside the other. */
export function besideEachOther(
  [left, right]: readonly [Block, Block],
  width: number,
  style: TextStyle,
): Typeset {
  const set = (block: Block): Typeset => typesetBlock(block, widthOf(width), style);
  return columns(set(left), set(right), width);
}

/** Blocks in reading order, parted between two columns where that makes them least high; a block may go on in the second. */
export function inTwoColumns(
  blocks: readonly Block[],
  width: number,
  style: TextStyle,
  gap: number,
): Typeset {
  const pieces = blocks.flatMap((block) =>
    typesetRows(block, widthOf(width), style).map((row, i) => ({ row, above: i === 0 ? gap : 0 })),
  );
  const columnOf = (part: typeof pieces): Typeset =>
    stack(
      part.flatMap(({ row, above }, i) => [...(i > 0 ? [{ nodes: [], height: above }] : []), row]),
      0,
    );
  const partings = pieces.map((_, i) =>
    columns(columnOf(pieces.slice(0, i + 1)), columnOf(pieces.slice(i + 1)), width),
  );
  return partings.reduce((best, each) => (each.height < best.height ? each : best));
}

const columns = (left: Typeset, right: Typeset, width: number): Typeset => ({
  nodes: [
    { kind: 'group', nodes: left.nodes },
    { kind: 'group', dx: widthOf(width) + COLUMN_GAP, nodes: right.nodes },
  ],
  height: Math.max(left.height, right.height),
});
