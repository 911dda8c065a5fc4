/**
 * A TrueType font as its file says it, with what is needed to measure text and to cut the font down.
 *
 * Read from the tables alone (OpenType specification 1.9: `cmap` format 12, `hmtx`, `loca`, `glyf`), so that
 * nothing but the bytes decides how wide a text is. Kerning and ligatures are left out: a tape's figures need none.
 */
export interface FontFile {
  readonly bytes: Buffer;
  /** Bytes of a table, by its four-letter tag. */
  table(tag: string): Buffer;
  /** Number of the glyph of a code point; 0 when the font has none. */
  glyphOf(codePoint: number): number;
  /** How far a glyph moves the pen, in ems. */
  advance(glyph: number): number;
  /** Outline of a glyph as stored; empty for a blank. */
  outline(glyph: number): Buffer;
}

/** @throws {Error} when the bytes are no TrueType font with a format 12 character map: ours are, so that is a bug */
export function fontFile(bytes: Buffer): FontFile {
  const directory = new Map<string, { offset: number; length: number }>();
  for (let i = 0; i < bytes.readUInt16BE(4); i++) {
    const at = 12 + 16 * i;
    directory.set(bytes.toString('latin1', at, at + 4), {
      offset: bytes.readUInt32BE(at + 8),
      length: bytes.readUInt32BE(at + 12),
    });
  }
  const table = (tag: string): Buffer => {
    const entry = directory.get(tag);
    if (!entry) throw new Error(`the font has no ${tag} table`);
    return bytes.subarray(entry.offset, entry.offset + entry.length);
  };
  const groups = characterGroups(table('cmap'));
  const unitsPerEm = table('head').readUInt16BE(18);
  const longOffsets = table('head').readInt16BE(50) === 1;
  const [metrics, loca, glyf] = [table('hmtx'), table('loca'), table('glyf')];
  const metricCount = table('hhea').readUInt16BE(34);
  const offsetOf = (glyph: number): number =>
    longOffsets ? loca.readUInt32BE(4 * glyph) : 2 * loca.readUInt16BE(2 * glyph);
  return {
    bytes,
    table,
    glyphOf: (codePoint) => {
      const group = groups.find(({ first, last }) => first <= codePoint && codePoint <= last);
      return group ? group.glyph + codePoint - group.first : 0;
    },
    advance: (glyph) => metrics.readUInt16BE(4 * Math.min(glyph, metricCount - 1)) / unitsPerEm,
    outline: (glyph) => glyf.subarray(offsetOf(glyph), offsetOf(glyph + 1)),
  };
}

/** Runs of code points whose glyphs follow one another (`cmap` format 12). */
function characterGroups(cmap: Buffer): { first: number; last: number; glyph: number }[] {
  for (let i = 0; i < cmap.readUInt16BE(2); i++) {
    const at = cmap.readUInt32BE(8 + 8 * i);
    if (cmap.readUInt16BE(at) !== 12) continue;
    return Array.from({ length: cmap.readUInt32BE(at + 12) }, (_, k) => ({
      first: cmap.readUInt32BE(at + 16 + 12 * k),
      last: cmap.readUInt32BE(at + 20 + 12 * k),
      glyph: cmap.readUInt32BE(at + 24 + 12 * k),
    }));
  }
  throw new Error('the font has no format 12 character map');
}
