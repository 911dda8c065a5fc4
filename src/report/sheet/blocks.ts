/*
 * What a sheet says, apart from how it is set: one source of words for paper, browser and terminal.
 */

export interface Block {
  readonly heading: string;
  readonly parts: readonly BlockPart[];
}

export type BlockPart =
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

/** Whether a part has anything to show. */
export const isFilled = (part: BlockPart): boolean =>
  part.kind === 'text' ? part.text !== '' : (part.kind === 'bullets' ? part.texts : part.rows).length > 0;
