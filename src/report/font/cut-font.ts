import type { FontFile } from './font-file.js';
import { partsOf, withoutHints } from './outline.js';
import { writeFont } from './write-font.js';

/**
 * A TrueType font with the glyphs of some text only, to be embedded in a picture (a few per cent of the size).
 *
 * Hints are dropped, names and licence kept. Characters the font lacks stay out. The same text gives the same
 * bytes, whatever the order of its characters.
 */
export function cutFont(font: FontFile, text: string): Buffer {
  const characters = [...new Set(text)]
    .map((sign) => sign.codePointAt(0) as number)
    .filter((codePoint) => font.glyphOf(codePoint) > 0)
    .sort((a, b) => a - b);
  const old = withParts(font, [0, ...characters.map(font.glyphOf)]);
  const renumbered = new Map(old.map((glyph, i) => [glyph, i]));
  const outlines = old.map((glyph) => withoutHints(font.outline(glyph), renumbered));
  return writeFont([
    ['OS/2', font.table('OS/2')],
    ['cmap', cmapTable(characters.map((code) => [code, renumbered.get(font.glyphOf(code)) as number]))],
    ['glyf', Buffer.concat(outlines)],
    ['head', withLongOffsets(font.table('head'))],
    ['hhea', patched(font.table('hhea'), 34, old.length)],
    ['hmtx', Buffer.concat(old.map((glyph) => metric(font, glyph)))],
    ['loca', locaTable(outlines)],
    ['maxp', patched(font.table('maxp'), 4, old.length)],
    ['name', namesOf(font.table('name'))],
    ['post', postTable(font.table('post'))],
  ]);
}

/** Glyphs with those that composites among them are put together from, each once. */
function withParts(font: FontFile, glyphs: readonly number[]): number[] {
  const found = new Set<number>();
  const visit = (glyph: number): void => {
    if (found.has(glyph)) return;
    found.add(glyph);
    for (const { glyph: part } of partsOf(font.outline(glyph))) visit(part);
  };
  for (const glyph of glyphs) visit(glyph);
  return [...found];
}

/** Advance and left side bearing of a glyph. */
function metric(font: FontFile, glyph: number): Buffer {
  const hmtx = font.table('hmtx');
  const count = font.table('hhea').readUInt16BE(34);
  if (glyph < count) return hmtx.subarray(4 * glyph, 4 * glyph + 4);
  const bearing = 4 * count + 2 * (glyph - count);
  return Buffer.concat([hmtx.subarray(4 * count - 4, 4 * count - 2), hmtx.subarray(bearing, bearing + 2)]);
}

/** A character map of format 12 with one run a character. */
function cmapTable(entries: readonly (readonly [code: number, glyph: number])[]): Buffer {
  const head = Buffer.from([0, 0, 0, 1, 0, 3, 0, 10, 0, 0, 0, 12, 0, 12, 0, 0]);
  const rest = Buffer.alloc(12 + 12 * entries.length);
  rest.writeUInt32BE(16 + 12 * entries.length, 0);
  rest.writeUInt32BE(entries.length, 8);
  entries.forEach(([code, glyph], i) => {
    rest.writeUInt32BE(code, 12 + 12 * i);
    rest.writeUInt32BE(code, 16 + 12 * i);
    rest.writeUInt32BE(glyph, 20 + 12 * i);
  });
  return Buffer.concat([head, rest]);
}

function locaTable(outlines: readonly Buffer[]): Buffer {
  const loca = Buffer.alloc(4 * (outlines.length + 1));
  outlines.reduce((offset, outline, i) => {
    loca.writeUInt32BE(offset + outline.length, 4 * (i + 1));
    return offset + outline.length;
  }, 0);
  return loca;
}

const withLongOffsets = (head: Buffer): Buffer => patched(head, 50, 1);

/** A table with one 16-bit number replaced. */
function patched(table: Buffer, at: number, value: number): Buffer {
  const copy = Buffer.from(table);
  copy.writeUInt16BE(value, at);
  return copy;
}

/** Version 3: glyphs go without names. */
function postTable(post: Buffer): Buffer {
  const short = Buffer.from(post.subarray(0, 32));
  short.writeUInt32BE(0x00030000, 0);
  return short;
}

/** The names in one encoding (platform 1), the copyright notice and licence among them. */
function namesOf(name: Buffer): Buffer {
  const strings = name.subarray(name.readUInt16BE(4));
  const records = Array.from({ length: name.readUInt16BE(2) }, (_, i) =>
    Buffer.from(name.subarray(6 + 12 * i, 18 + 12 * i)),
  ).filter((record) => record.readUInt16BE(0) === 1);
  const texts = records.map((record) => {
    const from = record.readUInt16BE(10);
    return strings.subarray(from, from + record.readUInt16BE(8));
  });
  texts.reduce((offset, text, i) => {
    records[i].writeUInt16BE(offset, 10);
    return offset + text.length;
  }, 0);
  const head = Buffer.alloc(6);
  head.writeUInt16BE(records.length, 2);
  head.writeUInt16BE(6 + 12 * records.length, 4);
  return Buffer.concat([head, ...records, ...texts]);
}
