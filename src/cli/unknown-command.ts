import { shortened } from '../base/visible.js';
import { nearestWord } from '../records/text/nearest-word.js';
import { COMMANDS } from './command-table.js';
import { SHELF_ACTIONS } from './flags/flag-table.js';

/** The message for a first word that is no command: the command or the action of the shelf that may be meant. */
export function formatUnknownCommand(word: string): string {
  const commands = COMMANDS.map(({ name }) => name);
  const near = nearestWord(word, [...commands, ...SHELF_ACTIONS]);
  const meant = near === null || commands.includes(near) ? near : `shelf ${near}`;
  return `error: unknown command '${shortened(word, 60)}'${meant ? `\n(Did you mean ${meant}?)` : ''}`;
}
