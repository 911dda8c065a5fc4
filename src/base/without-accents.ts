/** Latin letters that no Unicode decomposition takes apart, as ASCII writes them. */
const LETTERS: Readonly<Record<string, string>> = {
  ß: 'ss',
  æ: 'ae',
  œ: 'oe',
  ø: 'o',
  ł: 'l',
  đ: 'd',
  ð: 'd',
  þ: 'th',
  ħ: 'h',
  ŧ: 't',
  ŋ: 'ng',
  ı: 'i',
};

/** A text with each accented Latin letter as the letters that ASCII writes for it; other scripts stay. */
export const withoutAccents = (text: string): string =>
  text.normalize('NFKD').replace(/\p{M}/gu, '').replace(/\p{L}/gu, inAscii);

function inAscii(letter: string): string {
  const small = letter.toLowerCase();
  const ascii = LETTERS[small] ?? letter;
  return ascii === letter || small === letter ? ascii : `${ascii.charAt(0).toUpperCase()}${ascii.slice(1)}`;
}
