import { Cancelled } from '../../base/errors.js';
import { askChoice } from './ask-choice.js';
import type { Keys } from './open-keys.js';
import type { Screen } from './open-screen.js';

/** A plain yes or no; Escape, < and ? are the usual one. @throws {Cancelled} when the person leaves */
export async function askYesNo(
  question: string,
  usual: boolean,
  screen: Screen,
  keys: Keys,
): Promise<boolean> {
  const pressed = await askChoice(
    {
      question,
      help: '',
      options: [{ label: 'Yes' }, { label: 'No' }],
      start: usual ? 0 : 1,
      backSign: '<',
      keysHelp: 'Arrows, or y and n, choose; Enter takes.',
    },
    screen,
    keys,
  );
  if (pressed.did === 'leave') throw new Cancelled();
  const isYes = pressed.did === 'give' ? pressed.given === 0 : usual;
  screen.write([{ text: `${question} ${isYes ? 'Yes' : 'No'}`, style: 'dim' }]);
  return isYes;
}
