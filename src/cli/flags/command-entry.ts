import type { RecordKind } from '../../records/read/record-kinds.js';
import type { Terminal } from '../terminal/terminal.js';
import type { Flag } from './flag-table.js';

/** One command: what its help says, and the function that runs it. */
export interface CommandEntry {
  readonly name: string;
  readonly summary: string;
  readonly description: string;
  /** Words that follow the command's name, as commander writes them, what they are, and the first ones it knows. */
  readonly words?: readonly [spelling: string, what: string, known?: readonly string[]];
  /** Those of the known words that ids of kept records may follow. */
  readonly takeKept?: readonly string[];
  /** The kind of kept records whose ids the first word takes. */
  readonly keptFirst?: RecordKind;
  readonly flags: readonly Flag[];
  /** Commands to copy, at the end of its help; each runs as written. */
  readonly examples: readonly string[];
  /** Imported only when run, which keeps `--help` fast. Given the flags as text, the terminal, and the words. */
  readonly load: () => Promise<
    (options: never, terminal: Terminal, words: readonly string[]) => Promise<void>
  >;
}
