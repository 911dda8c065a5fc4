import type { GroupNode, PathNode, SceneNode, Stroke, TextNode } from './scene.js';
import { type Point, polyline, rectangle } from './shapes.js';

/* What charts and pictures are made of. */

/** Width of a chart, pt: that of a telephone, on which it is shown at its size. */
export const CHART_WIDTH = 320;

/** Size of a chart's letters, pt. */
const CHART_TEXT = 12;

/** Wider than letters of the fonts that readers have, in text sizes. */
const LETTER = 0.57;

/** Width that a text of a chart takes at most. */
export const textRoom = (text: string): number => LETTER * CHART_TEXT * text.length;

export const word = (
  text: string,
  [x, y]: Point,
  look: Partial<Pick<TextNode, 'anchor' | 'ink' | 'weight' | 'size'>> = {},
): TextNode => ({ kind: 'text', x, y, text, size: CHART_TEXT, ...look });

export const segment = (from: Point, to: Point, stroke: Stroke): PathNode => ({
  kind: 'path',
  d: polyline([from, to]),
  stroke,
});

/** An upright bar between two places across, whichever comes first. */
export const bar = (
  [a, b]: readonly [number, number],
  [top, height]: readonly [number, number],
  look: Pick<PathNode, 'fill' | 'stroke'>,
): PathNode => ({
  kind: 'path',
  d: rectangle(Math.min(a, b), top, Math.abs(b - a), height),
  ...look,
});

/** Nodes that belong together, under a name to look for. */
export const part = (name: string, ...nodes: readonly SceneNode[]): GroupNode => ({
  kind: 'group',
  name,
  nodes,
});
