import type { SceneNode } from '../scene/scene.js';
import { type Point, rectangle } from '../scene/shapes.js';

/** How large a picture's letters are. */
export interface Letters {
  readonly textSize: number;
  /** Width of a text on one line. */
  readonly widthOf: (text: string, size: number) => number;
}

/** A number on a patch of paper, so that lines below do not cross it. */
export function plate(text: string, [x, y]: Point, { textSize, widthOf }: Letters): SceneNode[] {
  const half = widthOf(text, textSize) / 2 + 1;
  return [
    { kind: 'path', d: rectangle(x - half, y - 0.55 * textSize, 2 * half, 1.1 * textSize), fill: 'paper' },
    { kind: 'text', x, y: y + 0.36 * textSize, text, size: textSize, anchor: 'middle' },
  ];
}
