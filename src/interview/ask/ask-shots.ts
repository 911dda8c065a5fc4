import { Cancelled, formatFault, InputError } from '../../base/errors.js';
import { visible } from '../../base/visible.js';
import { askText } from '../prompt/ask-text.js';
import type { Desk } from './desk.js';

/** What a person does at the lane: they type a line, and it is kept at once. */
interface ShotTaker {
  /** Number of the next shot. */
  number(): number;
  /** @throws {InputError} what is wrong with a line */
  check(line: string): void;
  /** Keeps a line. @returns what to say of it, or null for a line that is not to be kept */
  keep(line: string, desk: Desk): Promise<readonly string[] | null>;
  /** Takes the last shot back. @returns what to say of it */
  takeBack(): Promise<readonly string[]>;
}

const ENDS = 'Enter alone ends; u takes the last shot back; - is not seen; g at the pins is a gutter ball.';
const UNDO = /^u(ndo)?$/i;

/**
 * Asks for shot after shot until the person has no more.
 *
 * @param help  shown at `?`
 * @throws {Cancelled} when the person leaves; what was kept stays
 */
export async function askShots(taker: ShotTaker, help: string, desk: Desk): Promise<void> {
  const { screen, keys } = desk;
  let typed = '';
  for (;;) {
    const question = `Shot ${taker.number()}: laydown, arrows, breakpoint, pins`;
    const pressed = await askText({ question, help: ENDS, typed, backSign: null, faultOf }, screen, keys);
    typed = '';
    if (pressed.did === 'leave') throw new Cancelled();
    if (pressed.did === 'go-back') return;
    if (pressed.did !== 'give') {
      screen.say(help, 'dim');
      continue;
    }
    const line = pressed.given.trim();
    if (line === '') return;
    try {
      const said = UNDO.test(line) ? await taker.takeBack() : await taker.keep(line, desk);
      if (said === null) typed = line;
      for (const text of said ?? []) screen.say(visible(text));
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      screen.say(visible(error.faults.map(formatFault).join(' ')), 'yellow');
      typed = UNDO.test(line) ? '' : line;
    }
  }

  function faultOf(text: string): string | null {
    const line = text.trim();
    if (line === '' || UNDO.test(line)) return null;
    try {
      taker.check(line);
      return null;
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      return error.faults.map(formatFault).join(' ');
    }
  }
}
