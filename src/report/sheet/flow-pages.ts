import { stack, type Typeset } from './typeset-block.js';

/** Pieces one below the other, between which a page may end. */
export type Rows = readonly [Typeset, ...Typeset[]];

/**
 * Items in order, page after page.
 *
 * @param onward  stands first on every page after the first
 * @param room    how high a page is, pt
 * @param gap     between items, pt
 */
export function flowPages(
  items: readonly Rows[],
  onward: Typeset,
  room: number,
  gap: number,
): readonly Typeset[] {
  const space: Typeset = { nodes: [], height: gap };
  const pages: Typeset[][] = [[]];
  let used = 0;
  for (const [first, ...rest] of items) {
    for (const row of [used > 0 ? stack([space, first], 0) : first, ...rest]) {
      if (used + row.height > room) {
        pages.push([stack([onward, space], 0)]);
        used = onward.height + gap;
      }
      pages.at(-1)?.push(row);
      used += row.height;
    }
  }
  return pages.map((page) => stack(page, 0));
}
