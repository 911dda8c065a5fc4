import { loadRuleSets } from '../records/rules.js';
import { demoShelf } from '../records/shelf.js';
import { COMMANDS } from './command-table.js';
import { completionScript } from './completion-scripts.js';
import { completedCommands } from './completions.js';
import { SHELLS } from './flag-table.js';
import { oneOf } from './flags.js';
import { gather } from './gather.js';
import { globalFlags } from './global-flags.js';
import type { GlobalOptions } from './options.js';
import { platformFolders } from './platform-folders.js';
import type { Terminal } from './terminal.js';

/** `flarewise completions`: the script with which a shell completes commands, flags, and ids of records. */
export async function completionsCommand(
  options: GlobalOptions,
  terminal: Terminal,
  [given]: readonly string[],
): Promise<void> {
  const { shell } = gather({
    shell: () => oneOf('the shell', given, SHELLS, 'Name the shell you type in.'),
    ...globalFlags(options, terminal),
  });
  const { bowlers, balls, lanes } = demoShelf();
  const ids = (records: readonly { readonly id: string }[]): string[] => records.map(({ id }) => id);
  const records = {
    '--bowler': ids(bowlers),
    '--ball': ids(balls),
    '--lane': ids(lanes),
    '--rules': ids(loadRuleSets()),
  };
  terminal.stdout.write(
    completionScript[shell](completedCommands(COMMANDS, records), platformFolders().data),
  );
}
