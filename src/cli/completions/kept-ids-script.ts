import { folderOf } from '../../records/home/saved-records.js';
import { RECORD_KINDS } from '../../records/schemas/kept-record.js';
import type { SHELLS } from '../flags/flag-table.js';

/** The folders of all records that are kept, as the function of `keptIdsScript` takes them. */
export const ALL_FOLDERS = RECORD_KINDS.map(folderOf).join(' ');

/**
 * A shell's function `_flarewise_kept FOLDER...`, which prints the ids of kept records by a look into their folders: at
 * once, and as they are when a key is pressed. What is no id is left out, since a shell would run a file's name such as
 * `$(...)`.
 *
 * @param home  the folder of what is kept where `FLAREWISE_HOME` does not name another
 */
export const keptIdsScript: Record<(typeof SHELLS)[number], (home: string) => string> = {
  bash: (home) => `_flarewise_kept() {
  local home=\${FLAREWISE_HOME:-} folder file
  [ -n "$home" ] || home=${quoted(home)}
  for folder; do
    for file in "$home/$folder"/*.json; do
      file=\${file##*/}
      file=\${file%.json}
      [[ $file =~ ^[a-z0-9][a-z0-9-]*$ ]] && printf '%s ' "$file"
    done
  done
}`,

  zsh: (home) => `_flarewise_kept() {
  local home=\${FLAREWISE_HOME:-} folder file
  [[ -n $home ]] || home=${quoted(home)}
  for folder in "$@"; do
    for file in "$home/$folder"/*.json(N:t:r); do
      [[ $file == [a-z0-9]* && $file != *[^a-z0-9-]* ]] && printf '%s ' "$file"
    done
  done
}`,

  fish: (home) => `function _flarewise_kept
  set -l home ${quoted(home.replaceAll('\\', '\\\\'))}
  test -n "$FLAREWISE_HOME"; and set home $FLAREWISE_HOME
  for folder in $argv
    for file in $home/$folder/*.json
      string replace -rf '^.*/([a-z0-9][a-z0-9-]*)\\.json$' '$1' -- $file
    end
  end
end`,
};

/** Between single quotes, as all three shells read it. */
const quoted = (text: string): string => `'${text.replaceAll("'", `'\\''`)}'`;
