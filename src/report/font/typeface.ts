import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { cutFont } from './cut-font.js';
import { type FontFile, fontFile } from './font-file.js';

/** Regular or bold; sheets need no more. */
export type Weight = 'regular' | 'bold';

/** The letters pictures are set in, from files under an open licence. */
export interface Typeface {
  /** What the font's own files call it. */
  readonly family: string;
  /** Said on what is printed. */
  readonly credit: string;
  readonly files: Readonly<Record<Weight, string>>;
  /** Width of a text on one line, in the unit of `size`. */
  width(text: string, size: number, weight?: Weight): number;
  /** The text with `?` for every character the font has no glyph for. */
  printable(text: string): string;
  /** A font file with the glyphs of this text only. */
  cut(text: string, weight: Weight): Buffer;
}

/** DejaVu Sans Condensed 2.37, as its npm package ships it: narrow, with fractions and accents of many scripts. */
export function loadTypeface(): Typeface {
  const file = (name: string): string =>
    createRequire(import.meta.url).resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);
  const files = { regular: file('DejaVuSansCondensed'), bold: file('DejaVuSansCondensed-Bold') };
  const fonts: Record<Weight, FontFile> = {
    regular: fontFile(readFileSync(files.regular)),
    bold: fontFile(readFileSync(files.bold)),
  };
  const has = (sign: string): boolean =>
    (['regular', 'bold'] as const).every(
      (weight) => fonts[weight].glyphOf(sign.codePointAt(0) as number) > 0,
    );
  return {
    family: 'DejaVu Sans Condensed',
    credit: 'Text: DejaVu Sans Condensed, a free font (its licence is in the font)',
    files,
    width: (text, size, weight = 'regular') =>
      [...text].reduce((sum, sign) => {
        const font = fonts[weight];
        return sum + size * font.advance(font.glyphOf(sign.codePointAt(0) as number));
      }, 0),
    printable: (text) => [...text.normalize('NFC')].map((sign) => (has(sign) ? sign : '?')).join(''),
    cut: (text, weight) => cutFont(fonts[weight], text),
  };
}
