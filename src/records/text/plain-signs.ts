import { singleBlanks } from './single-blanks.js';

/**
 * A typed text with keyboard characters in place of typographic ones: `4½` becomes `4 1/2`, a long minus a
 * hyphen, curly quotes and two single ones the inch mark, `º` the degree sign. White space becomes single blanks.
 */
export const plainSigns = (text: string): string =>
  singleBlanks(
    text
      .replace(ONE_SIGN_FRACTION, (_, digit: string | undefined, sign: string) => {
        const fraction = sign.normalize('NFKC');
        return digit === undefined ? fraction : `${digit} ${fraction}`;
      })
      .replace(/[⁄∕]/g, '/')
      .replace(/[‐‑‒–—―−﹣－]/g, '-')
      .replace(/[‘’‛′`´]/g, "'")
      .replace(/''|[“”„‟″]/g, '"')
      .replace(/[º˚]/g, '°')
      .replace(/[\u200b\u2060]/g, ''),
  );

/** With the digit before it, if any: `4½`, `4 ½`, `4-½`. */
const ONE_SIGN_FRACTION = /(?:(\d)[ -]?)?([¼-¾⅐-⅞])/g;
