import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { SMALL_BUDGET } from './small-budget.js';

/** The built program; these tests run what a person would, and build nothing. */
export const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));

if (!existsSync(MAIN))
  throw new Error('dist/cli/main.js is missing: run `npm run build` first (npm test does)');

export interface Ended {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly out: string;
  readonly err: string;
}

/** A neutral environment: no colour wishes, no locale and no kept records of the machine the tests run on. */
export const ENV: Readonly<Record<string, string>> = {
  PATH: process.env.PATH ?? '',
  LANG: 'C.UTF-8',
  FLAREWISE_HOME: fileURLToPath(new URL('../no-such-home/', import.meta.url)),
};

/** Runs `flarewise` with pipes for streams, as a script would, and waits for its end. */
export function runCli(
  args: readonly string[],
  {
    env = {},
    cwd,
    main = MAIN,
    onStart,
  }: {
    /** The script that is run, with arguments of its own before the others. */
    main?: string | readonly string[];
    env?: Record<string, string>;
    cwd?: string;
    onStart?: (child: ReturnType<typeof spawn>) => void;
  } = {},
): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [main, args].flat(), {
      env: { ...ENV, ...env },
      stdio: ['ignore', 'pipe', 'pipe'],
      ...(cwd === undefined ? {} : { cwd }),
    });
    const out: Buffer[] = [];
    const err: Buffer[] = [];
    child.stdout.on('data', (chunk: Buffer) => out.push(chunk));
    child.stderr.on('data', (chunk: Buffer) => err.push(chunk));
    child.on('error', reject);
    child.on('close', (code, signal) =>
      resolve({ code, signal, out: Buffer.concat(out).toString(), err: Buffer.concat(err).toString() }),
    );
    onStart?.(child);
  });
}

/** The built program with the small budget. @param dist  where it was built to */
export const smallMain = (
  dist = fileURLToPath(new URL('../../dist', import.meta.url)),
): readonly string[] => [
  fileURLToPath(new URL('./small-main.mjs', import.meta.url)),
  dist,
  JSON.stringify(SMALL_BUDGET),
];

/** Runs the built program with the small budget, where a test needs the form of an answer and not its numbers. */
export const runSmall: typeof runCli = (args, options = {}) =>
  runCli(args, { main: smallMain(), ...options });
