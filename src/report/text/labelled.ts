import type { Page } from './page.js';
import { plainText } from './plain-text.js';
import { wrap } from './wrap.js';

/** A word in the left margin, and what stands beside it: sentences, the most important first. */
export interface Labelled {
  readonly label: string;
  readonly texts: readonly string[];
  /** How many of the texts stay, however little room there is. */
  readonly keep: number;
  /** Texts of its block go first where room is short: the greater the sooner. */
  readonly yields: number;
  /** Between one text and the next. */
  readonly between?: string;
  readonly paint?: (line: string) => string;
}

/** Lines of a usual terminal, less one for what is typed next. */
export const SCREEN_LINES = 23;

/** Columns of the margin. */
const MARGIN = 11;

/** Lines of blocks, each behind its label, the texts of a block one after the other. */
export const labelledLines = (blocks: readonly Labelled[], page: Page): string[] =>
  blocks.flatMap(({ label, texts, between = ' ', paint = (line) => line }) => {
    if (texts.length === 0) return [];
    const [first, ...others] = wrap(
      plainText(texts.join(between), page.ascii),
      page.width,
      ' '.repeat(MARGIN),
      label.padEnd(MARGIN),
    );
    return [
      page.paint.heading(first.slice(0, MARGIN)) + paint(first.slice(MARGIN)),
      ...others.map((line) => line.slice(0, MARGIN) + paint(line.slice(MARGIN))),
    ];
  });

/** The same in at most this many lines, as far as the texts that stay allow: the last texts of blocks that yield go. */
export function fittedLines(blocks: readonly Labelled[], most: number, page: Page): string[] {
  let left = [...blocks];
  for (;;) {
    const lines = labelledLines(left, page);
    if (lines.length <= most) return lines;
    const [yielding] = left
      .filter(({ texts, keep }) => texts.length > keep)
      .sort((a, b) => b.yields - a.yields);
    if (!yielding) return lines;
    left = left.map((block) => (block === yielding ? { ...block, texts: block.texts.slice(0, -1) } : block));
  }
}
