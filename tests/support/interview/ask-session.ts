import { fileURLToPath } from 'node:url';
import { stripVTControlCharacters } from 'node:util';
import { spawn } from '@lydell/node-pty';

const SCRIPT = fileURLToPath(new URL('ask-alone.ts', import.meta.url));

export const ENTER = '\r';
export const DOWN = '\u001b[B';
export const ESCAPE = '\u001b';
export const ERASE = '\u007f';
export const CTRL_C = '\u0003';

/** Far longer than a busy machine needs, ms: a talk that hangs fails here, and shows where. */
const PATIENCE = 300_000;

/** One turn of a talk: what must be on screen, then what is typed. */
export type Turn = readonly [see: RegExp, type: string];

/**
 * Runs the interview in a real pseudo-terminal and answers it turn by turn.
 *
 * @returns all that was shown, raw; fails with it when what must be seen does not come
 */
export function talk(
  turns: readonly Turn[],
  { columns = 80, env = {}, args = [] as readonly string[] } = {},
): Promise<string> {
  const pty = spawn(process.execPath, ['--import', 'tsx', SCRIPT, ...args], {
    name: 'xterm-256color',
    cols: columns,
    rows: 50,
    env: { PATH: process.env.PATH ?? '', LANG: 'C.UTF-8', ...env },
  });
  return new Promise((resolve, reject) => {
    let shown = '';
    let since = 0;
    let turn = 0;
    const fail = (why: string): void => {
      pty.kill();
      reject(
        new Error(`${why} at turn ${turn}, ${turns[turn]?.[0]}; shown:\n${stripVTControlCharacters(shown)}`),
      );
    };
    const timer = setTimeout(() => fail('time ran out'), PATIENCE);
    pty.onData((data) => {
      shown += data;
      const next = turns[turn];
      if (!next?.[0].test(stripVTControlCharacters(shown.slice(since)))) return;
      since = shown.length;
      turn += 1;
      pty.write(next[1]);
    });
    pty.onExit(() => {
      clearTimeout(timer);
      if (turn < turns.length) fail('ended');
      else resolve(shown);
    });
  });
}

/** The JSON that the interview ended with. */
export const recordsIn = (shown: string) =>
  JSON.parse(/^\{.*\}$/m.exec(stripVTControlCharacters(shown).replaceAll('\r', ''))?.[0] ?? '');
