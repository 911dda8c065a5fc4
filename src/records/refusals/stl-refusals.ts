/** What stands in a text where the format wants something else; a word is cut to its first letters. */
export type StlFound =
  | { readonly kind: 'word'; readonly word: string }
  | { readonly kind: 'end' }
  /** Some other text, which is not shown around. */
  | { readonly kind: 'other-text' };

/** Why a file cannot be read as STL. */
export interface StlRefusals {
  'stl-empty': Record<string, never>;
  'stl-too-short': { readonly bytes: number; readonly leastBytes: number };
  /** A binary file that is not as long as the count in it says. */
  'stl-other-length': {
    readonly countAtByte: number;
    readonly triangles: number;
    readonly bytes: number;
    readonly bytesWanted: number;
    readonly roomForTriangles: number;
  };
  'stl-no-triangles': { readonly form: 'text' | 'binary' };
  'stl-not-finite': {
    readonly value: 'NaN' | 'Infinity' | '-Infinity';
    readonly atByte: number;
    readonly triangle: number;
    readonly triangles: number;
  };
  'stl-other-word': { readonly line: number; readonly wanted: StlWord; readonly found: StlFound };
  'stl-no-number': { readonly line: number; readonly found: StlFound };
}

/** What the format wants in a place; after a facet another one or the end. */
export type StlWord =
  | 'solid'
  | 'facet or endsolid'
  | 'normal'
  | 'outer'
  | 'loop'
  | 'vertex'
  | 'endloop'
  | 'endfacet';
