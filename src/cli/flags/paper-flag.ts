import { PAPER_NAMES, type Paper } from '../../base/paper.js';
import type { Terminal } from '../terminal/terminal.js';
import { oneOf } from './flags.js';

/**
 * Countries whose office paper is letter, by ISO 3166; A4 everywhere else.
 *
 * Source: Unicode CLDR, supplemental measurement data, paper size US-Letter (from memory).
 */
const LETTER = 'BZ CA CL CO CR GT MX NI PA PH PR SV US VE'.split(' ');

/** What `--paper` names; the paper of the country that the locale names where it is left out, letter where it names none. */
export const paperFlag = (given: string | undefined, { env }: Pick<Terminal, 'env'>): Paper =>
  oneOf('--paper', given ?? usualPaper(env), PAPER_NAMES, 'letter: 8 1/2 x 11 in; a4: 210 x 297 mm.');

/** Variables in the order in which POSIX has them count. */
function usualPaper({ LC_ALL, LC_PAPER, LANG }: Terminal['env']): Paper {
  const country = /^[a-z]+_([A-Z]{2})\b/.exec(LC_ALL || LC_PAPER || LANG || '')?.[1];
  return country === undefined || LETTER.includes(country) ? 'letter' : 'a4';
}
