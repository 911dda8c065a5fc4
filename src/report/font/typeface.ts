import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { create, type Font } from 'fontkit';
import subsetFont from 'subset-font';

/** Regular or bold; sheets need no more. */
export type Weight = 'regular' | 'bold';

/** The letters pictures are set in, from files under an open licence. */
export interface Typeface {
  /** What the font's own files call it. */
  readonly family: string;
  /** Said on what is printed. */
  readonly credit: string;
  readonly files: Readonly<Record<Weight, string>>;
  /** Width of a text on one line, in the unit of `size`; without kerning and ligatures, which a tape's figures do not need. */
  width(text: string, size: number, weight?: Weight): number;
  /** The text with `?` for every character the font has no glyph for. */
  printable(text: string): string;
  /**
   * A font file with the glyphs of this text only, to be embedded in a picture: without hints and kerning, with the copyright
   * notice and the licence. The same letters give the same bytes, in any order.
   */
  cut(text: string, weight: Weight): Promise<Buffer>;
}

/** What is left out of a cut font: it is only drawn, letter by letter. */
const CUT = {
  targetFormat: 'sfnt',
  noHinting: true,
  noLayoutClosure: true,
  dropTables: ['GDEF', 'GPOS', 'GSUB', 'kern'],
  /** Entries of the `name` table: copyright, licence and where it stands (OpenType specification 1.9). */
  preserveNameIds: [0, 13, 14],
} as const;

/** DejaVu Sans Condensed 2.37, as its npm package ships it: narrow, with fractions and accents of many scripts. */
export function loadTypeface(): Typeface {
  const file = (name: string): string =>
    createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);
  const files = { regular: file('DejaVuSansCondensed'), bold: file('DejaVuSansCondensed-Bold') };
  const bytes = { regular: readFileSync(files.regular), bold: readFileSync(files.bold) };
  const fonts = { regular: create(bytes.regular) as Font, bold: create(bytes.bold) as Font };
  const has = (sign: string): boolean =>
    Object.values(fonts).every((font) => font.hasGlyphForCodePoint(sign.codePointAt(0) as number));
  return {
    family: 'DejaVu Sans Condensed',
    credit: 'Text: DejaVu Sans Condensed, a free font (its licence is in the font)',
    files,
    width: (text, size, weight = 'regular') =>
      [...text].reduce((sum, sign) => sum + size * advance(fonts[weight], sign), 0),
    printable: (text) => [...text.normalize('NFC')].map((sign) => (has(sign) ? sign : '?')).join(''),
    cut: (text, weight) => subsetFont(bytes[weight], text, CUT),
  };
}

/** Advance width of a character, in ems. */
const advance = (font: Font, sign: string): number =>
  font.glyphForCodePoint(sign.codePointAt(0) as number).advanceWidth / font.unitsPerEm;
