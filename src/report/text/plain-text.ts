import { visible } from '../../base/visible.js';
import { withoutAccents } from '../../base/without-accents.js';

const ASCII_FOR: Readonly<Record<string, string>> = {
  '×': 'x',
  '°': 'deg',
  '±': '+/-',
  '–': '-',
  '—': '-',
  '−': '-',
  '‘': "'",
  '’': "'",
  '“': '"',
  '”': '"',
  '…': '...',
  '≤': '<=',
  '≥': '>=',
  '≈': 'about ',
  '→': '->',
  '·': '.',
  µ: 'u',
  μ: 'u',
};

/**
 * The same answer with every text safe to print.
 *
 * With `ascii`, other characters become their nearest ASCII spelling.
 */
export function withPlainText<T>(value: T, ascii: boolean): T {
  if (typeof value === 'string') return plainText(value, ascii) as T;
  if (Array.isArray(value)) return value.map((item) => withPlainText(item, ascii)) as T;
  if (value !== null && typeof value === 'object')
    return Object.fromEntries(
      Object.entries(value).map(([key, item]) => [key, withPlainText(item, ascii)]),
    ) as T;
  return value;
}

/** One text safe to print; with `ascii`, in ASCII. */
export function plainText(text: string, ascii: boolean): string {
  const shown = visible(text);
  if (!ascii) return shown;
  const spaced = shown.replace(/(?<=\d)(?=[°¼-¾⅐-⅞])/gu, ' '); // 4½ is 4 1/2, not 41/2
  return [...spaced.normalize('NFC')]
    .map((sign) => ASCII_FOR[sign] ?? withoutAccents(sign))
    .join('')
    .replaceAll('⁄', '/') // the fraction slash NFKD leaves
    .replace(/[^\x20-\x7e]/g, '?');
}
