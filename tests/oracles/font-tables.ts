/** What a TrueType font's own tables say of widths, read without any library (OpenType specification 1.9: `cmap` format 12, `hmtx`). */
interface FontTables {
  /** Number of the glyph of a code point; 0 when the font has none. */
  glyphOf(codePoint: number): number;
  /** How far a glyph moves the pen, in ems. */
  advance(glyph: number): number;
}

/** @throws {Error} when the bytes are no TrueType font with a format 12 character map */
export function fontTables(bytes: Buffer): FontTables {
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
  const metrics = table('hmtx');
  const metricCount = table('hhea').readUInt16BE(34);
  return {
    glyphOf: (codePoint) => {
      const group = groups.find(({ first, last }) => first <= codePoint && codePoint <= last);
      return group ? group.glyph + codePoint - group.first : 0;
    },
    advance: (glyph) => metrics.readUInt16BE(4 * Math.min(glyph, metricCount - 1)) / unitsPerEm,
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
