import { Cancelled, InputError } from '../../base/errors.js';
import { askText } from '../prompt/ask-text.js';
import type { Desk } from './desk.js';
import { shortFault } from './short-fault.js';

/**
 * Asks until `read` takes what is typed; a question that is not known is answered with nothing.
 *
 * @param usual  what Enter alone gives
 * @throws {Cancelled} when the person leaves
 */
export async function askTyped<T>(
  question: string,
  help: string,
  usual: string | undefined,
  read: (text: string) => T,
  { screen, keys }: Desk,
): Promise<T> {
  const faultOf = (text: string): string | null => {
    try {
      read(text.trim());
      return null;
    } catch (error) {
      if (error instanceof InputError) return saidOf(error);
      throw error;
    }
  };
  for (;;) {
    const pressed = await askText({ question, help, usual, backSign: null, faultOf }, screen, keys);
    if (pressed.did === 'leave' || pressed.did === 'go-back') throw new Cancelled();
    const text = pressed.did === 'give' ? pressed.given.trim() : '';
    if (faultOf(text) !== null) continue;
    screen.write([{ text: `${question} ${text || '?'}` }]);
    return read(text);
  }
}

/** Where one rule is broken, without the flag that it is the rule of. */
const saidOf = ({ faults, message }: InputError): string =>
  faults.length === 1 && faults[0].rule.startsWith('must ') ? shortFault(faults[0]) : message;
