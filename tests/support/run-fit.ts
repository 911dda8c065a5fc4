import { fileURLToPath } from 'node:url';
import { type Ended, runCli } from './run-cli.js';

const SCRIPT = fileURLToPath(new URL('../fit/run.ts', import.meta.url));
const TSX = fileURLToPath(new URL('../../node_modules/tsx/dist/cli.mjs', import.meta.url));

/** Runs `npm run fit` with pipes for streams, and waits for its end. */
export const runFit = (args: readonly string[], options: { cwd?: string } = {}): Promise<Ended> =>
  runCli([SCRIPT, ...args], { ...options, main: TSX });
