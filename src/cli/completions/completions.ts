import { folderOf } from '../../records/home/saved-records.js';
import type { CommandEntry } from '../flags/command-entry.js';
import { type Flag, GLOBAL_FLAGS } from '../flags/flag-table.js';

/** A flag that a shell completes. */
export interface CompletedFlag {
  readonly name: string; // --layout
  readonly what: string;
  readonly takesValue: boolean;
  readonly takesFiles: boolean;
  /** Whether it may be given several times. */
  readonly isRepeated: boolean;
  /** Words for its value, beside files; none for a number or a text. */
  readonly words: readonly string[];
  /** The folder of kept records whose ids are its values too; null for none. */
  readonly kept: string | null;
}

/** A command that a shell completes, with all flags it knows. */
export interface CompletedCommand {
  readonly name: string;
  readonly summary: string;
  /** What may follow its name. */
  readonly words: readonly string[];
  /** Those of these words that ids of kept records may follow. */
  readonly takeKept: readonly string[];
  /** The folder of kept records whose ids the first word is one of; null for none. */
  readonly keptFirst: string | null;
  readonly flags: readonly CompletedFlag[];
}

/**
 * What completes a command line, independent of the shell.
 *
 * @param records  ids by flag, such as those of the demo bowlers by `--bowler`
 */
export const completedCommands = (
  commands: readonly CommandEntry[],
  records: Readonly<Record<string, readonly string[]>>,
): readonly CompletedCommand[] =>
  commands.map(({ name, summary, words: following, takeKept, keptFirst, flags }) => ({
    name,
    summary,
    words: following?.[2] ?? [],
    takeKept: takeKept ?? [],
    keptFirst: keptFirst ? folderOf(keptFirst) : null,
    flags: [...flags, ...GLOBAL_FLAGS].map(([spelling, what, words]: Flag) => {
      const [flag, value] = spelling.split(' ') as [string, string?];
      return {
        name: flag,
        what,
        takesValue: value !== undefined,
        takesFiles: /^<(record|file|folder|list)(\.\.\.)?>$/.test(value ?? ''),
        isRepeated: value?.endsWith('...>') ?? false,
        words: words ?? records[flag] ?? [],
        kept: value === DRILLED ? folderOf('layout') : (KEPT_BY[flag] ?? null),
      };
    }),
  }));

/** How the value of a flag is called that takes a kept drilled layout. */
const DRILLED = '<drilled>';

/** Where the records lie that a flag takes by their ids, below the folder of all that is kept. */
const KEPT_BY: Readonly<Record<string, string>> = {
  '--bowler': folderOf('bowler'),
  '--ball': folderOf('ball'),
  '--lane': folderOf('lane'),
  '--bowlers': folderOf('bowler'),
  '--balls': folderOf('ball'),
  '--lanes': folderOf('lane'),
};
