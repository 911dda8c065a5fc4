import type { AskStreams } from '../../interview/ask/desk.js';
import type { GlobalOptions } from '../flags/options.js';
import type { Terminal } from '../terminal/terminal.js';
import { isAscii, isColoured } from './page-for.js';

/** The terminal on which questions are asked: keys from stdin, questions on stderr. */
export const askStreams = (options: GlobalOptions, terminal: Terminal): AskStreams => ({
  input: terminal.stdin,
  output: terminal.stderr,
  hasColour: isColoured(options, terminal),
  ascii: isAscii(options, terminal),
  canMove: terminal.env.TERM !== 'dumb',
});
