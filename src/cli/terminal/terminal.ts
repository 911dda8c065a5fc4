import type { Readable, Writable } from 'node:stream';
import type { Budget } from '../../prepare/budget.js';

/** What the program reads from: keys, when it is a terminal. */
export type Source = Readable & { readonly isTTY?: boolean };

/** What the program writes to. */
export type Sink = Writable & { readonly isTTY?: boolean; readonly columns?: number };

/** The world outside, passed in so that every command runs the same in a test as in a shell. */
export interface Terminal {
  readonly stdin: Source;
  readonly stdout: Sink;
  readonly stderr: Sink;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Processor cores this program may use. */
  readonly cores: number;
  /** How much is tried for an answer; the usual budget when left out. */
  readonly budget?: Budget | undefined;
}

/** Whether questions can be asked: keys come from a terminal, and the questions can be seen. */
export const canAsk = ({ stdin, stderr }: Terminal): boolean => Boolean(stdin.isTTY && stderr.isTTY);
