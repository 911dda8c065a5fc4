/*
 * What a sheet says, apart from how it is set: one source of words for paper, browser and terminal.
 */

/** Room to write a number on. */
export const BLANK = '_______';

/** Room to write words on. */
export const LINE = '____________________';

export interface Block {
  readonly heading: string;
  readonly parts: readonly BlockPart[];
}

/** One thing to do, in one way or another, the better one first. */
export interface WorkStep {
  readonly mark: string;
  readonly ways: readonly string[];
  /** What to measure once it is done, with room to write it; empty for nothing. */
  readonly measured: string;
}

export type BlockPart =
  | { readonly kind: 'steps'; readonly steps: readonly WorkStep[] }
  | { readonly kind: 'text'; readonly text: string }
  | { readonly kind: 'bullets'; readonly texts: readonly string[] }
  | {
      readonly kind: 'table';
      /** Empty for a table of names and values. */
      readonly heads: readonly string[];
      readonly rows: readonly (readonly string[])[];
    };

export const text = (content: string): BlockPart => ({ kind: 'text', text: content });
export const bulleted = (texts: readonly string[]): BlockPart => ({ kind: 'bullets', texts });
export const rowsOf = (heads: readonly string[], rows: readonly (readonly string[])[]): BlockPart => ({
  kind: 'table',
  heads,
  rows,
});

export const stepsOf = (steps: readonly WorkStep[]): BlockPart => ({ kind: 'steps', steps });

/** Each step as rows of a table: a way a row; beside the first its mark, beside the next what is measured. */
export const STEP_HEADS = ['', 'mark, and measured', 'how'] as const;
export const stepRows = (steps: readonly WorkStep[]): string[][][] =>
  steps.map(({ mark, ways, measured }, i) => {
    const besides = [mark, ...(measured === '' ? [] : [measured])];
    return Array.from({ length: Math.max(ways.length, besides.length) }, (_, j) => [
      j === 0 ? `${i + 1}` : '',
      besides[j] ?? '',
      ways[j] ?? '',
    ]);
  });

/** Whether a part has anything to show. */
export function isFilled(part: BlockPart): boolean {
  switch (part.kind) {
    case 'text':
      return part.text !== '';
    case 'bullets':
      return part.texts.length > 0;
    case 'table':
      return part.rows.length > 0;
    case 'steps':
      return part.steps.length > 0;
  }
}
