/* Flags of a composite glyph's parts (OpenType specification 1.9, `glyf`). */
const ARGUMENTS_ARE_WORDS = 0x0001;
const HAS_SCALE = 0x0008;
const MORE_PARTS = 0x0020;
const HAS_TWO_SCALES = 0x0040;
const HAS_TWO_BY_TWO = 0x0080;
const HAS_HINTS = 0x0100;

/** Contours count, then the bounding box. */
const HEAD_BYTES = 10;

interface GlyphPart {
  /** Where its flags stand in the outline; its glyph's number follows. */
  readonly at: number;
  readonly flags: number;
  readonly glyph: number;
  readonly end: number;
}

/** The parts a composite glyph is put together from; none for a simple glyph or a blank. */
export function partsOf(outline: Buffer): readonly GlyphPart[] {
  if (outline.length === 0 || outline.readInt16BE(0) >= 0) return [];
  const parts: GlyphPart[] = [];
  let at = HEAD_BYTES;
  for (;;) {
    const flags = outline.readUInt16BE(at);
    const placing = flags & ARGUMENTS_ARE_WORDS ? 4 : 2;
    const scaling = flags & HAS_SCALE ? 2 : flags & HAS_TWO_SCALES ? 4 : flags & HAS_TWO_BY_TWO ? 8 : 0;
    const end = at + 4 + placing + scaling;
    parts.push({ at, flags, glyph: outline.readUInt16BE(at + 2), end });
    if (!(flags & MORE_PARTS)) return parts;
    at = end;
  }
}

/** An outline without its hints, its parts renumbered, filled up to an even length. */
export function withoutHints(outline: Buffer, renumbered: ReadonlyMap<number, number>): Buffer {
  if (outline.length === 0) return outline;
  const parts = partsOf(outline);
  const bare = parts.length > 0 ? bareComposite(outline, parts, renumbered) : bareSimple(outline);
  return bare.length % 4 === 0 ? bare : Buffer.concat([bare, Buffer.alloc(4 - (bare.length % 4))]);
}

function bareComposite(
  outline: Buffer,
  parts: readonly GlyphPart[],
  renumbered: ReadonlyMap<number, number>,
): Buffer {
  const bare = Buffer.from(outline.subarray(0, (parts.at(-1) as GlyphPart).end));
  for (const { at, flags, glyph } of parts) {
    bare.writeUInt16BE(flags & ~HAS_HINTS, at);
    bare.writeUInt16BE(renumbered.get(glyph) as number, at + 2);
  }
  return bare;
}

function bareSimple(outline: Buffer): Buffer {
  const hintLength = HEAD_BYTES + 2 * outline.readInt16BE(0);
  const hints = outline.readUInt16BE(hintLength);
  return Buffer.concat([
    outline.subarray(0, hintLength),
    Buffer.from([0, 0]),
    outline.subarray(hintLength + 2 + hints),
  ]);
}
