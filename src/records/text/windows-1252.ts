/**
 * What Windows-1252 has at bytes 80 to 9f (hexadecimal); at all others it is ISO 8859-1. The five unassigned bytes are blanks here.
 *
 * Source: Unicode Consortium, mapping table CP1252.TXT. `TextDecoder` is not used: several versions of Node read these bytes as
 * control characters.
 */
const FROM_80 = '€ ‚ƒ„…†‡ˆ‰Š‹Œ Ž  ‘’“”•–—˜™š›œ žŸ';

/** Free places, and control characters that no text has. */
const NO_TEXT = /[\x81\x8d\x8f\x90\x9d]|[^\P{Cc}\t\n\r\x80-\x9f]/u;

/** Bytes as text in Windows-1252, the encoding of many spreadsheets; null where some byte is unassigned in it. */
export function fromWindows1252(bytes: Uint8Array): string | null {
  const latin1 = Buffer.from(bytes).toString('latin1');
  if (NO_TEXT.test(latin1)) return null;
  return latin1.replace(/[\x80-\x9f]/g, (sign) => FROM_80[sign.charCodeAt(0) - 0x80]);
}
