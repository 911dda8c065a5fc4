import type { Typeface, Weight } from '../font/typeface.js';
import type { SceneNode } from '../scene/scene.js';
import { polyline } from '../scene/shapes.js';
import { linesWithin } from '../text/wrap.js';
import { type Block, type BlockPart, STEP_HEADS, stepRows } from './blocks.js';

/** Set type: nodes below a top edge at y = 0, and how far down they reach, pt. */
export interface Typeset {
  readonly nodes: readonly SceneNode[];
  readonly height: number;
}

/** How text is set: its size and the widths of its letters. */
export interface TextStyle {
  readonly size: number;
  readonly typeface: Typeface;
}

/* In text sizes. */
const LINE = 1.25;
const ASCENT = 0.95;
const CELL_GAP = 1.1;
const PART_GAP = 0.35;
const BULLET_INDENT = 0.9;
const ROW_GAP = 0.16;
const HEAD = 0.88;

/** Between the rows of a table, to lead the eye across. */
const RULE = { ink: 'faint', width: 0.3 } as const;

/** A block in a column of this width. */
export const typesetBlock = (block: Block, width: number, style: TextStyle): Typeset =>
  stack(typesetRows(block, width, style), 0);

/**
 * A block in pieces, between which a page may end: its heading and what introduces a table stay with the rows that follow, and all
 * ways of a step with one another.
 */
export function typesetRows(
  { heading, parts }: Block,
  width: number,
  style: TextStyle,
): readonly [Typeset, ...Typeset[]] {
  const gap: Typeset = { nodes: [], height: PART_GAP * style.size };
  const rows: [Typeset, ...Typeset[]] = [typesetHeading(heading, width, style)];
  let isToStay = true;
  for (const part of parts) {
    typesetPart(part, width, style).forEach((row, i) => {
      const below = i === 0 ? stack([gap, row], 0) : row;
      if (isToStay) rows.push(stack([rows.pop() as Typeset, below], 0));
      else rows.push(below);
      isToStay = part.kind === 'text' && part !== parts.at(-1);
    });
  }
  return rows;
}

function typesetHeading(heading: string, width: number, { size, typeface }: TextStyle): Typeset {
  const text = typesetText(heading, width, { size, typeface }, { weight: 'bold' });
  const rule: SceneNode = {
    kind: 'path',
    d: polyline([
      [0, text.height],
      [width, text.height],
    ]),
    stroke: { ink: 'soft', width: 0.5 },
  };
  return { nodes: [...text.nodes, rule], height: text.height + 0.3 * size };
}

/** Set type one below the other. */
export function stack(items: readonly Typeset[], gap: number): Typeset {
  let dy = 0;
  const nodes = items.flatMap((item, i): SceneNode[] => {
    if (i > 0) dy += gap;
    const at = dy;
    dy += item.height;
    return item.nodes.length > 0 ? [{ kind: 'group', dy: at, nodes: item.nodes }] : [];
  });
  return { nodes, height: dy };
}

/** A paragraph as lines of at most this width. */
export function typesetText(
  text: string,
  width: number,
  { size, typeface }: TextStyle,
  { weight = 'regular' as Weight, x = 0 } = {},
): Typeset {
  const lines = linesWithin(typeface.printable(text), width - x, (line) =>
    typeface.width(line, size, weight),
  );
  return {
    nodes: lines.map((line, i) => ({
      kind: 'text',
      x,
      y: (i * LINE + ASCENT) * size,
      text: line,
      size,
      weight,
    })),
    height: lines.length * LINE * size,
  };
}

/** A part as pieces, one below the other. */
function typesetPart(part: BlockPart, width: number, style: TextStyle): readonly Typeset[] {
  switch (part.kind) {
    case 'text':
      return [typesetText(part.text, width, style)];
    case 'bullets':
      return part.texts.map((text) => typesetBullet(text, width, style));
    case 'table':
      return typesetTable(
        part.heads,
        part.rows.map((row) => [row]),
        width,
        style,
      );
    case 'steps':
      return typesetTable(STEP_HEADS, stepRows(part.steps), width, style);
  }
}

function typesetBullet(text: string, width: number, style: TextStyle): Typeset {
  const { nodes, height } = typesetText(text, width, style, { x: BULLET_INDENT * style.size });
  const dot: SceneNode = {
    kind: 'text',
    x: 0.1 * style.size,
    y: ASCENT * style.size,
    text: '•',
    size: style.size,
  };
  return { nodes: [dot, ...nodes], height };
}

/**
 * Columns as wide as their widest cell; where they do not fit, heads and cells of the widest ones are broken.
 *
 * @param groups  rows that belong together
 * @returns a piece for each group, the heads with the first
 */
function typesetTable(
  heads: readonly string[],
  groups: readonly (readonly (readonly string[])[])[],
  width: number,
  style: TextStyle,
): readonly Typeset[] {
  const { size, typeface } = style;
  const headSize = HEAD * size;
  const natural = naturalWidths(heads, groups.flat(), style);
  const widths = narrowed(natural, width - CELL_GAP * size * (natural.length - 1));
  const lefts = widths.map((_, i) =>
    widths.slice(0, i).reduce((sum, each) => sum + each + CELL_GAP * size, 0),
  );
  const typesetRow = (cells: readonly string[], each: TextStyle): Typeset => {
    const set = cells.map((cell, i) => typesetText(cell, widths[i] + 0.01, each));
    const height = Math.max(...set.map((cell) => cell.height)) + ROW_GAP * size;
    const rule = {
      kind: 'path',
      d: polyline([
        [0, height],
        [width, height],
      ]),
      stroke: RULE,
    } as const;
    return {
      nodes: [...set.map(({ nodes }, i): SceneNode => ({ kind: 'group', dx: lefts[i], nodes })), rule],
      height,
    };
  };
  const [first, ...others] = groups.map((group) => group.map((row) => typesetRow(row, style)));
  const head = heads.some((each) => each !== '') ? [typesetRow(heads, { size: headSize, typeface })] : [];
  return [[...head, ...first], ...others].map((each) => stack(each, 0));
}

/** What a block's widest table needs so that no cell is broken, pt; 0 without one. */
export const naturalWidth = ({ parts }: Block, style: TextStyle): number =>
  Math.max(
    0,
    ...parts.map((part) => {
      if (part.kind !== 'table') return 0;
      const widths = naturalWidths(part.heads, part.rows, style);
      return widths.reduce((sum, each) => sum + each, CELL_GAP * style.size * (widths.length - 1));
    }),
  );

const naturalWidths = (
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  { size, typeface }: TextStyle,
): readonly number[] =>
  (rows[0] ?? heads).map((_, i) =>
    Math.max(
      heads[i] ? typeface.width(heads[i], HEAD * size) : 0,
      ...rows.map((row) => typeface.width(typeface.printable(row[i] ?? ''), size)),
    ),
  );

/** Widths cut down to a sum, the widest first: all those cut end equally wide. */
function narrowed(widths: readonly number[], room: number): readonly number[] {
  const sum = widths.reduce((total, each) => total + each, 0);
  if (sum <= room) return widths;
  const ascending = [...widths].sort((a, b) => a - b);
  let left = room;
  let most = 0;
  ascending.some((each, i) => {
    most = left / (ascending.length - i);
    left -= each;
    return each > most;
  });
  return widths.map((each) => Math.min(each, most));
}
