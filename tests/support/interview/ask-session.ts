import { fileURLToPath } from 'node:url';
import { stripVTControlCharacters } from 'node:util';
import { spawn } from '@lydell/node-pty';

const SCRIPT = fileURLToPath(new URL('ask-alone.ts', import.meta.url));

export const ENTER = '\r';
export const DOWN = '\u001b[B';
export const ESCAPE = '\u001b';
export const ERASE = '\u007f';
export const CTRL_C = '\u0003';
export const CTRL_Z = '\u001a';

/** Far longer than a busy machine needs, ms: a talk that hangs fails here, and shows where. */
const PATIENCE = 300_000;

/** One turn of a talk: what must be on screen, then what is typed. */
export type Turn = readonly [see: RegExp, type: string];

/**
 * Runs the interview in a real pseudo-terminal and answers it turn by turn.
 *
 * With `shell`, a shell with job control runs it, and stays when it ends.
 *
 * @returns all that was shown, raw; fails with it when what must be seen does not come
 */
export function talk(
  turns: readonly Turn[],
  {
    columns = 80,
    rows = 50,
    env = {} as Readonly<Record<string, string>>,
    args = [] as readonly string[],
    shell = false,
  } = {},
): Promise<string> {
  const command = [process.execPath, '--import', 'tsx', SCRIPT, ...args, ...(shell ? [] : ['--held'])];
  const [file, ...rest] = shell ? ['bash', '--norc', '--noprofile', '-i'] : command;
  const pty = spawn(file as string, rest, {
    name: env.TERM ?? 'xterm-256color',
    cols: columns,
    rows,
    env: { PATH: process.env.PATH ?? '', LANG: 'C.UTF-8', PS1: '$ ', ...env },
  });
  if (shell) pty.write(`${command.map((word) => `'${word}'`).join(' ')}\r`);
  return new Promise((resolve, reject) => {
    let shown = '';
    let since = 0;
    let turn = 0;
    let isHeld = !shell;
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
      // what a busy machine has not read when the program ends would be lost
      if (!next && isHeld && LAST_WORDS.test(stripVTControlCharacters(shown.slice(since)))) {
        isHeld = false;
        pty.write(ENTER);
      }
      if (!next?.[0].test(stripVTControlCharacters(shown.slice(since)))) return;
      since = shown.length;
      turn += 1;
      pty.write(next[1]);
      if (shell && turn === turns.length) pty.write('exit\r');
    });
    pty.onExit(() => {
      clearTimeout(timer);
      if (turn < turns.length) fail('ended');
      else resolve(shown);
    });
  });
}

/** The line that the interview ends with, whole. */
const LAST_WORDS = /^(\{.*\}|remembered: .*)\r?\n/m;

/** The JSON that the interview ended with. */
export const recordsIn = (shown: string) =>
  JSON.parse(/^\{.*\}$/m.exec(stripVTControlCharacters(shown).replaceAll('\r', ''))?.[0] ?? '');
