import type { Weight } from '../font/typeface.js';

/*
 * A picture as data: lines, areas and text in points (1/72 in), x to the right, y down the page. One scene becomes SVG,
 * PDF and PNG alike, so that they cannot differ. Colours are meanings; each renderer is given what they look like.
 */

/** What a colour means. On paper all marks are black: shape and label tell them apart, colour never alone does. */
export type Ink =
  | 'ink'
  | 'soft'
  | 'faint'
  | 'shade'
  | 'paper'
  | 'pin'
  | 'pap'
  | 'marker'
  | 'oil'
  | (typeof TONES)[number]
  | (typeof SERIES)[number];

/** A ramp from little to much, for areas. */
export const TONES = ['tone1', 'tone2', 'tone3', 'tone4', 'tone5'] as const;

/** Things that are compared in one picture; each also has a sign beside it that says which it is. */
export const SERIES = ['series1', 'series2', 'series3', 'series4', 'series5'] as const;

export interface Stroke {
  readonly ink: Ink;
  readonly width: number;
  /** Lengths of dash and gap, alternating. */
  readonly dash?: readonly number[];
}

/** A line or an area; `d` is path data of SVG 1.1. */
export interface PathNode {
  readonly kind: 'path';
  readonly d: string;
  readonly stroke?: Stroke;
  readonly fill?: Ink;
}

/** One line of text; x is its start, middle or end, y its baseline. */
export interface TextNode {
  readonly kind: 'text';
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly weight?: Weight;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly ink?: Ink;
}

/** Nodes that belong together, moved by `dx`, `dy`; named where somebody will look for them. */
export interface GroupNode {
  readonly kind: 'group';
  readonly name?: string;
  readonly dx?: number;
  readonly dy?: number;
  readonly nodes: readonly SceneNode[];
}

export type SceneNode = PathNode | TextNode | GroupNode;

export interface Scene {
  readonly width: number;
  readonly height: number;
  /** Said to those who cannot see it. */
  readonly title: string;
  readonly description: string;
  readonly nodes: readonly SceneNode[];
}

/** A look for every ink, as CSS colours. */
export type Palette = Readonly<Record<Ink, string>>;

/** For paper: black, greys that survive a copier, white. */
export const PAPER: Palette = {
  ink: '#000000',
  soft: '#4d4d4d',
  faint: '#9a9a9a',
  shade: '#e6e6e6',
  paper: '#ffffff',
  pin: '#000000',
  pap: '#000000',
  marker: '#000000',
  oil: '#6b6b6b',
  tone1: '#f3f3f3',
  tone2: '#e8e8e8',
  tone3: '#dcdcdc',
  tone4: '#cecece',
  tone5: '#bebebe',
  series1: '#000000',
  series2: '#000000',
  series3: '#000000',
  series4: '#000000',
  series5: '#000000',
};

/** All text of some nodes, in order. */
export const textsOf = (nodes: readonly SceneNode[]): readonly TextNode[] =>
  nodes.flatMap((node) => (node.kind === 'group' ? textsOf(node.nodes) : node.kind === 'text' ? [node] : []));
