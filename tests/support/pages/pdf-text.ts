import { inflateSync } from 'node:zlib';

/**
 * The text a PDF says, in drawing order, a string for each line shown: read from the file's own streams by the
 * character maps of its fonts (ISO 32000-1, 9.10.2), so that only what a reader can select counts.
 */
export function pdfText(pdf: Buffer): string[] {
  const objects = objectsOf(pdf);
  const mapOf = new Map<string, Map<string, string>>();
  for (const { head } of objects.values())
    for (const [, name, font] of head.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
      const toUnicode = /\/ToUnicode (\d+) 0 R/.exec(objects.get(font!)?.head ?? '')?.[1];
      if (toUnicode) mapOf.set(name!, characterMap(objects.get(toUnicode)!.stream));
    }
  const lines: string[] = [];
  for (const { stream } of objects.values()) {
    if (!/\bBT\b/.test(stream)) continue;
    let map = new Map<string, string>();
    for (const [, font, shown] of stream.matchAll(/\/(F\d+) [\d.]+ Tf|\[([^\]]*)\] TJ/g)) {
      if (font) map = mapOf.get(font)!;
      else {
        const codes = [...shown!.matchAll(/<([0-9a-f]*)>/gi)].map(([, hex]) => hex).join('');
        lines.push(
          (codes.match(/.{4}/g) ?? []).map((code) => map.get(code.toLowerCase()) ?? '\ufffd').join(''),
        );
      }
    }
  }
  return lines;
}

/** How many pages a PDF says it has, and the size of the first, pt. */
export function pdfPages(pdf: Buffer): { count: number; size: number[] } {
  const text = pdf.toString('latin1');
  return {
    count: (text.match(/\/Type \/Page\b/g) ?? []).length,
    size: (/\/MediaBox \[([^\]]*)\]/.exec(text)?.[1] ?? '').split(' ').slice(2).map(Number),
  };
}

function objectsOf(pdf: Buffer): Map<string, { head: string; stream: string }> {
  const text = pdf.toString('latin1');
  const objects = new Map<string, { head: string; stream: string }>();
  for (const found of text.matchAll(/^(\d+) 0 obj\n([\s\S]*?)(?:stream\r?\n|endobj)/gm)) {
    const [whole, id, head] = found;
    const length = /\/Length (\d+)/.exec(head!)?.[1];
    const at = found.index + whole.length;
    const bytes = whole.endsWith('endobj') || !length ? null : pdf.subarray(at, at + Number(length));
    const stream = bytes
      ? (head!.includes('/FlateDecode') ? inflateSync(bytes) : bytes).toString('latin1')
      : '';
    objects.set(id!, { head: head!, stream });
  }
  return objects;
}

/** Codes to text, from the ranges of a ToUnicode map. */
function characterMap(stream: string): Map<string, string> {
  const map = new Map<string, string>();
  for (const [, low, , list] of stream.matchAll(/<([0-9a-f]{4})> <([0-9a-f]{4})> \[([^\]]*)\]/gi))
    [...list!.matchAll(/<([0-9a-f]+)>/gi)].forEach(([, hex], i) => {
      const code = (Number.parseInt(low!, 16) + i).toString(16).padStart(4, '0');
      map.set(code, Buffer.from(hex!, 'hex').swap16().toString('utf16le'));
    });
  return map;
}
