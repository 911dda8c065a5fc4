import { PassThrough } from 'node:stream';
import { fileURLToPath } from 'node:url';
import type { Sink, Source, Terminal } from '../../src/cli/terminal/terminal.js';

interface FakeTerminal extends Terminal {
  /** What was written so far. */
  readonly written: { readonly out: () => string; readonly err: () => string };
}

/** Streams in memory that claim to be a terminal, or a pipe. */
export function fakeTerminal({
  tty = false,
  columns,
  env = {},
}: {
  tty?: boolean;
  columns?: number;
  env?: Record<string, string>;
} = {}): FakeTerminal {
  const out: string[] = [];
  const err: string[] = [];
  const stream = (into: string[]): Sink => {
    const through = new PassThrough();
    through.on('data', (chunk: Buffer) => into.push(chunk.toString()));
    return Object.assign(through, { isTTY: tty, ...(columns === undefined ? {} : { columns }) });
  };
  return {
    stdin: Object.assign(new PassThrough(), { isTTY: tty }) as Source,
    stdout: stream(out),
    stderr: stream(err),
    env: {
      FLAREWISE_HOME: fileURLToPath(new URL('../no-such-home/', import.meta.url)),
      ...env,
    },
    cores: 2,
    written: { out: () => out.join(''), err: () => err.join('') },
  };
}
