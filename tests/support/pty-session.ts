import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { spawn } from '@lydell/node-pty';
import { ENV, MAIN } from './run-cli.js';

/** Far longer than a busy machine needs, ms: a session that hangs fails here, and shows where. */
const PATIENCE = 300_000;

/** `flarewise` in a real pseudo-terminal, as a person at a keyboard meets it. */
export function openSession(
  args: readonly string[],
  {
    columns = 80,
    rows = 50,
    env = {},
    main = MAIN,
    cwd,
  }: {
    columns?: number;
    rows?: number;
    env?: Record<string, string>;
    main?: string | readonly string[];
    cwd?: string;
  } = {},
) {
  const home = mkdtempSync(join(tmpdir(), 'flarewise-'));
  const pty = spawn(process.execPath, [main, args].flat(), {
    name: env.TERM ?? 'xterm-256color',
    cols: columns,
    rows,
    ...(cwd === undefined ? {} : { cwd }),
    // a pager would wait for a key of its own
    env: { ...ENV, PAGER: 'cat', FLAREWISE_HOME: home, ...env },
  });
  let shown = '';
  const waiting = new Set<() => void>();
  const wake = (): void => {
    for (const look of waiting) look();
  };
  let ended = false;
  pty.onData((data) => {
    shown += data;
    wake();
  });
  const exit = new Promise<{ exitCode: number; signal?: number }>((resolve) => {
    pty.onExit((how) => {
      ended = true;
      rmSync(home, { recursive: true, force: true });
      wake();
      resolve(how);
    });
  });
  const text = (): string => stripVTControlCharacters(shown);

  /** Waits until the text shown since `from` matches; fails with what is on screen instead. */
  const waitFor = (pattern: RegExp, from = 0): Promise<RegExpExecArray> =>
    new Promise((resolve, reject) => {
      const done = (): void => {
        clearTimeout(timer);
        waiting.delete(look);
      };
      const fail = (why: string): void => {
        done();
        reject(new Error(`${why} while waiting for ${pattern}; shown:\n${text().slice(from)}`));
      };
      const look = (): void => {
        const match = pattern.exec(text().slice(from));
        if (match) {
          done();
          resolve(match);
        } else if (ended) fail('ended');
      };
      const timer = setTimeout(() => fail('time ran out'), PATIENCE);
      waiting.add(look);
      look();
    });

  return {
    text,
    raw: () => shown,
    waitFor,
    type: (keys: string) => pty.write(keys),
    exit,
    isOver: () => ended,
    kill: () => pty.kill(),
  };
}

type Session = ReturnType<typeof openSession>;

/** Waits for what is shown after what was waited for last, and types. */
export function turnsOf(to: Session) {
  let seen = 0;
  return async (pattern: RegExp, keys = ''): Promise<RegExpExecArray> => {
    const match = await to.waitFor(pattern, seen);
    seen += match.index + match[0].length;
    to.type(keys);
    return match;
  };
}

export const ENTER = '\r';
export const DOWN = '\u001b[B';
export const ESCAPE = '\u001b';
export const CTRL_C = '\u0003';
