import { Chalk } from 'chalk';
import { UNITS } from '../../report/text/display-units.js';
import { NARROWEST, type Page, WIDEST } from '../../report/text/page.js';
import { paintWith } from '../../report/text/paint.js';
import type { GlobalOptions } from '../flags/options.js';
import { unitsFlag } from '../flags/units-flag.js';
import type { Terminal } from '../terminal/terminal.js';

const USUAL_WIDTH = 80;

/** How answers are set on this terminal, by what it is, by its environment, and by the flags. */
export const pageFor = (options: GlobalOptions, terminal: Terminal): Page => ({
  width: Math.min(WIDEST, Math.max(NARROWEST, columns(terminal))),
  ascii: isAscii(options, terminal),
  paint: paintWith(new Chalk({ level: isColoured(options, terminal) ? 1 : 0 })),
  units: UNITS[unitsFlag(options.units)],
});

/** Whether only ASCII characters may be shown. */
export const isAscii = ({ ascii }: Pick<GlobalOptions, 'ascii'>, { env }: Terminal): boolean =>
  ascii ?? !speaksUnicode(env);

const columns = ({ stdout, env }: Terminal): number =>
  stdout.columns ?? (Number.parseInt(env.COLUMNS ?? '', 10) || USUAL_WIDTH);

/** Colour for people only, and not against their will (the NO_COLOR convention: any value but none). */
export const isColoured = ({ color }: Pick<GlobalOptions, 'color'>, { stdout, env }: Terminal): boolean =>
  color && Boolean(stdout.isTTY) && !env.NO_COLOR && env.TERM !== 'dumb';

/** False only when the locale names another character set (POSIX: LC_ALL, then LC_CTYPE, then LANG). */
function speaksUnicode(env: Terminal['env']): boolean {
  const locale = env.LC_ALL || env.LC_CTYPE || env.LANG;
  return !locale || /utf-?8/i.test(locale);
}
