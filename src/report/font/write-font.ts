/** What all 32-bit words of a font add up to with its check sum in place (OpenType specification 1.9, `head`). */
const WHOLE_SUM = 0xb1b0afba;

/** Where `head` holds the check sum of the whole file. */
const SUM_AT = 8;

/**
 * A TrueType file of these tables.
 *
 * @param tables  tag and bytes, in the order of the tags
 */
export function writeFont(tables: readonly (readonly [tag: string, bytes: Buffer])[]): Buffer {
  const count = tables.length;
  const power = Math.floor(Math.log2(count));
  const head = Buffer.alloc(12 + 16 * count);
  head.writeUInt32BE(0x00010000, 0);
  head.writeUInt16BE(count, 4);
  head.writeUInt16BE(16 << power, 6);
  head.writeUInt16BE(power, 8);
  head.writeUInt16BE(16 * count - (16 << power), 10);
  const bodies: Buffer[] = [];
  let offset = head.length;
  let sumAt = 0;
  tables.forEach(([tag, bytes], i) => {
    const padded = Buffer.concat([bytes, Buffer.alloc(-bytes.length & 3)]);
    if (tag === 'head') {
      padded.writeUInt32BE(0, SUM_AT);
      sumAt = offset + SUM_AT;
    }
    head.write(tag, 12 + 16 * i, 'latin1');
    head.writeUInt32BE(sumOf(padded), 16 + 16 * i);
    head.writeUInt32BE(offset, 20 + 16 * i);
    head.writeUInt32BE(bytes.length, 24 + 16 * i);
    bodies.push(padded);
    offset += padded.length;
  });
  const file = Buffer.concat([head, ...bodies]);
  file.writeUInt32BE((WHOLE_SUM - sumOf(file)) >>> 0, sumAt);
  return file;
}

/** Sum of all 32-bit words, modulo 2³². */
function sumOf(bytes: Buffer): number {
  let sum = 0;
  for (let i = 0; i < bytes.length; i += 4) sum = (sum + bytes.readUInt32BE(i)) >>> 0;
  return sum;
}
