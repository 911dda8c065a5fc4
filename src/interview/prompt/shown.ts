import { Writable } from 'node:stream';
import { stripVTControlCharacters } from 'node:util';
import type { Screen, ScreenOutput } from './open-screen.js';

/** What stands above the cursor, the line it stands on, and what stands below, as a prompt hands it to inquirer. */
export const shown = (
  above: readonly string[],
  focus: string,
  below: readonly string[],
  { canMove }: Screen,
): [string, string] =>
  canMove ? [[...above, focus].join('\n'), below.join('\n')] : [[...above, ...below, focus].join('\n'), ''];

/**
 * Where inquirer writes one prompt: on a dumb terminal, where nothing can be written over, without movements, and of every
 * picture but the first only lines that were not in the one before it.
 */
export function promptOutput({ output, canMove }: Screen): ScreenOutput {
  if (canMove) return output;
  let last: readonly string[] = [];
  let spoken: string | null = null;
  const write = (picture: string): void => {
    const lines = stripVTControlCharacters(picture).split('\n');
    const focus = lines.pop() ?? '';
    if (focus === '') return; // a movement alone
    const fresh = lines.filter((line) => !last.includes(line));
    if (spoken !== null && fresh.length === 0 && focus.startsWith(spoken))
      output.write(focus.slice(spoken.length));
    else output.write(`${spoken === null ? '' : '\n'}${[...fresh, focus].join('\n')}`);
    last = [...lines, focus.replace(/^>/, ' ')];
    spoken = focus;
  };
  return Object.assign(
    new Writable({
      decodeStrings: false,
      write(picture: string, _encoding, done) {
        write(picture);
        done();
      },
    }),
    { columns: output.columns, rows: output.rows },
  ) as ScreenOutput;
}
