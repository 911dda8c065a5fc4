import { InputError } from '../../base/errors.js';
import { atDesk, type Desk } from '../../interview/ask/desk.js';
import { askText, type TextAsked } from '../../interview/prompt/ask-text.js';
import { Refusal } from '../../records/refusals/refusal.js';
import { UNITS } from '../../report/text/display-units.js';
import { formatRefusal } from '../../report/wording/refusals/word-refusal.js';
import { unitsFlag } from '../flags/units-flag.js';
import { askStreams } from '../print/ask-streams.js';
import type { Standing } from './standing.js';

/** What a key asks for. */
interface LineAsked<T> extends Pick<TextAsked, 'question' | 'help' | 'usual'> {
  /** Reads what was typed. @throws {InputError} or a {Refusal} that says what is wrong with it */
  readonly read: (text: string) => T;
  /** A last question before it is taken; it is asked for again where that is denied. */
  readonly agree?: (value: T, desk: Desk) => Promise<boolean>;
}

/** Asks for a line of text until it can be read; null when the person goes back, or types nothing where nothing is offered. */
export function askedLine<T>(
  { question, help, usual, read, agree = async () => true }: LineAsked<T>,
  { options, terminal }: Pick<Standing, 'options' | 'terminal'>,
): Promise<T | null> {
  const units = UNITS[unitsFlag(options.units)];
  const faultOf = (text: string): string | null => {
    try {
      if (text.trim() !== '') read(text.trim());
      return null;
    } catch (error) {
      if (error instanceof Refusal) return formatRefusal(error, units).message;
      if (error instanceof InputError) return error.message;
      throw error;
    }
  };
  return atDesk(askStreams(options, terminal), units, async (desk) => {
    for (;;) {
      const asked = { question, help, usual, faultOf, backSign: null };
      const pressed = await askText(asked, desk.screen, desk.keys);
      const text = pressed.did === 'give' ? pressed.given.trim() : '';
      if (text === '') return null;
      const value = read(text);
      if (await agree(value, desk)) return value;
    }
  });
}
