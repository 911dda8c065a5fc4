import type { SHELLS } from '../flags/flag-table.js';
import type { CompletedCommand, CompletedFlag } from './completions.js';
import { ALL_FOLDERS, keptIdsScript } from './kept-ids-script.js';

type Shell = (typeof SHELLS)[number];

/**
 * The script a shell reads once; it never calls flarewise while a person types.
 *
 * @param home  the folder of what is kept where `FLAREWISE_HOME` does not name another
 */
export const completionScript: Record<
  Shell,
  (commands: readonly CompletedCommand[], home: string) => string
> = {
  bash: (commands, home) => `# flarewise: completions for bash
${keptIdsScript.bash(home)}
_flarewise() {
  local here=\${COMP_WORDS[COMP_CWORD]} before=\${COMP_WORDS[COMP_CWORD-1]} command=\${COMP_WORDS[1]}
  local words=
  COMPREPLY=()
  if [ "$COMP_CWORD" -eq 1 ]; then
    COMPREPLY=($(compgen -W '${commands.map(({ name }) => name).join(' ')}' -- "$here"))
    return
  fi
  case "$command $before" in
${unique(commands.flatMap(bashValues)).join('\n')}
  esac
  case "$command" in
${commands.map(bashWords).join('\n')}
  esac
  COMPREPLY=($(compgen -W "$words" -- "$here"))
}
complete -o default -F _flarewise flarewise
`,

  zsh: (commands, home) => `#compdef flarewise
# flarewise: completions for zsh
${keptIdsScript.zsh(home)}
local -a commands
commands=(
${commands.map(({ name, summary }) => `  '${name}:${escaped(summary)}'`).join('\n')}
)
if (( CURRENT == 2 )); then
  _describe command commands
  return
fi
case $words[2] in
${commands
  .map(
    ({ name, words, takeKept, keptFirst, flags }) => `  ${name})
    shift words; (( CURRENT-- ))
    _arguments ${flags.map((flag) => `\\\n      ${zshFlag(flag)}`).join(' ')} \\
      ${words.length > 0 ? `'1: :(${words.join(' ')})' ` : ''}${keptFirst ? `'1: :($(_flarewise_kept ${keptFirst}))' ` : ''}${takeKept.length > 0 ? `'*: :${zshChoice(`$(_flarewise_kept ${ALL_FOLDERS})`)}'` : "'*: :_files'"} ;;`,
  )
  .join('\n')}
esac
`,

  fish: (commands, home) => `# flarewise: completions for fish
${keptIdsScript.fish(home)}
${commands
  .flatMap(({ name, summary, words, takeKept, keptFirst, flags }) => [
    `complete -c flarewise -n __fish_use_subcommand -f -a ${name} -d '${escaped(summary)}'`,
    ...(words.length > 0 ? [fishWords(name, words)] : []),
    ...(takeKept.length > 0 ? [fishKept(name, takeKept)] : []),
    ...(keptFirst ? [fishKeptFirst(name, keptFirst)] : []),
    ...flags.map((flag) => fishFlag(name, flag)),
  ])
  .join('\n')}
`,
};

const bashWords = ({ name, words, takeKept, keptFirst, flags }: CompletedCommand): string => {
  const first = words.length > 0 ? ` [ "$COMP_CWORD" -eq 2 ] && words="${words.join(' ')} $words" ;` : '';
  const kept = takeKept.length > 0 ? ` [ "$COMP_CWORD" -gt 2 ] && ${bashKept(takeKept)} ;` : '';
  const ids = keptFirst ? ` [ "$COMP_CWORD" -eq 2 ] && words="$(_flarewise_kept ${keptFirst})$words" ;` : '';
  return `    ${name}) words='${flags.map((flag) => flag.name).join(' ')}' ;${first}${kept}${ids};`;
};

const bashKept = (after: readonly string[]): string =>
  `[[ ' ${after.join(' ')} ' == *" \${COMP_WORDS[2]} "* ]] && words="$(_flarewise_kept ${ALL_FOLDERS})$words"`;

/** Lines of a case statement: what a flag's value may be. Files come by default. */
const bashValues = ({ name, flags }: CompletedCommand): string[] =>
  flags
    .filter(({ takesValue }) => takesValue)
    .map(({ name: flag, words, kept }) => {
      const ids = kept === null ? '' : `" $(_flarewise_kept ${kept})"`;
      const listed =
        words.length > 0 || kept !== null
          ? `COMPREPLY=($(compgen -W '${words.join(' ')}'${ids} -- "$here")); `
          : '';
      return `    '${name} ${flag}') ${listed}return ;;`;
    });

function zshFlag({
  name: flag,
  what,
  takesValue,
  takesFiles,
  isRepeated,
  words,
  kept,
}: CompletedFlag): string {
  const name = isRepeated ? `*${flag}` : flag; // offered again after it was given
  const said = `[${escaped(what).replace(/[[\]:]/g, '\\$&')}]`;
  if (!takesValue) return `'${name}${said}'`;
  const list = [...words, ...(kept === null ? [] : [`$(_flarewise_kept ${kept})`])].join(' ');
  if (!takesFiles && kept === null) return `'${name}${said}:value:${words.length > 0 ? `(${list})` : ''}'`;
  return `'${name}${said}:value:${list ? zshChoice(list) : '_files'}'`;
}

/** Words, or files; a colon that is not for _arguments is hidden from it. */
const zshChoice = (words: string): string =>
  `{_alternative "words\\:value\\:(${words})" "files\\:file\\:_files"}`;

const fishWords = (command: string, words: readonly string[]): string =>
  `complete -c flarewise -n '__fish_seen_subcommand_from ${command}; and not __fish_seen_subcommand_from ${words.join(' ')}' -f -a '${words.join(' ')}'`;

const fishKept = (command: string, after: readonly string[]): string =>
  `complete -c flarewise -n '__fish_seen_subcommand_from ${command}; and __fish_seen_subcommand_from ${after.join(' ')}' -f -a '(_flarewise_kept ${ALL_FOLDERS})'`;

const fishKeptFirst = (command: string, folder: string): string =>
  `complete -c flarewise -n '__fish_seen_subcommand_from ${command}' -f -a '(_flarewise_kept ${folder})'`;

const fishFlag = (
  command: string,
  { name, what, takesValue, takesFiles, words, kept }: CompletedFlag,
): string =>
  [
    `complete -c flarewise -n '__fish_seen_subcommand_from ${command}' -l ${name.slice(2)}`,
    takesFiles ? '-r' : takesValue ? '-x' : '-f',
    words.length > 0 ? `-a '${words.join(' ')}${kept === null ? '' : ` (_flarewise_kept ${kept})`}'` : '',
    `-d '${escaped(what)}'`,
  ]
    .filter(Boolean)
    .join(' ');

/** Fit to stand between single quotes. */
const escaped = (text: string): string => text.replaceAll("'", '’');

const unique = (lines: readonly string[]): string[] => [...new Set(lines)];
