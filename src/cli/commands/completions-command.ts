import { demoShelf } from '../../records/read/shelf.js';
import { loadRuleSets } from '../../records/shared/rules.js';
import { completionScript } from '../completions/completion-scripts.js';
import { completedCommands } from '../completions/completions.js';
import { platformFolders } from '../files/platform-folders.js';
import type { CommandEntry } from '../flags/command-entry.js';
import { SHELLS } from '../flags/flag-table.js';
import { oneOf } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { GlobalOptions } from '../flags/options.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/**
 * `flarewise completions`: the script with which a shell completes commands, flags, and ids of records.
 *
 * @param commands  all that flarewise knows
 */
export const completionsCommand =
  (commands: readonly CommandEntry[]) =>
  async (options: GlobalOptions, terminal: Terminal, [given]: readonly string[]): Promise<void> => {
    const { shell } = collectFaults({
      shell: () => oneOf('the shell', given, SHELLS, 'Name the shell you type in.'),
      ...globalFlags(options, terminal),
    });
    const { bowlers, balls, lanes } = demoShelf();
    const ids = (records: readonly { readonly id: string }[]): string[] => records.map(({ id }) => id);
    const records = {
      '--bowler': ids(bowlers),
      '--ball': ids(balls),
      '--lane': ids(lanes),
      '--bowlers': ids(bowlers),
      '--balls': ids(balls),
      '--lanes': ids(lanes),
      '--rules': ids(loadRuleSets()),
    };
    terminal.stdout.write(
      completionScript[shell](completedCommands(commands, records), platformFolders().data),
    );
  };
