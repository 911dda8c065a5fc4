import type { CompletedCommand, CompletedFlag } from './completions.js';
import type { SHELLS } from './flag-table.js';

export type Shell = (typeof SHELLS)[number];

/** The script a shell reads once; it never calls flarewise while a person types. */
export const completionScript: Record<Shell, (commands: readonly CompletedCommand[]) => string> = {
  bash: (commands) => `# flarewise: completions for bash
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

  zsh: (commands) => `#compdef flarewise
# flarewise: completions for zsh
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
    ({ name, words, flags }) => `  ${name})
    shift words; (( CURRENT-- ))
    _arguments ${flags.map((flag) => `\\\n      ${zshFlag(flag)}`).join(' ')} \\
      ${words.length > 0 ? `'1: :(${words.join(' ')})' ` : ''}'*: :_files' ;;`,
  )
  .join('\n')}
esac
`,

  fish: (commands) => `# flarewise: completions for fish
${commands
  .flatMap(({ name, summary, words, flags }) => [
    `complete -c flarewise -n __fish_use_subcommand -f -a ${name} -d '${escaped(summary)}'`,
    ...(words.length > 0 ? [fishWords(name, words)] : []),
    ...flags.map((flag) => fishFlag(name, flag)),
  ])
  .join('\n')}
`,
};

const bashWords = ({ name, words, flags }: CompletedCommand): string => {
  const first = words.length > 0 ? ` [ "$COMP_CWORD" -eq 2 ] && words="${words.join(' ')} $words" ;` : '';
  return `    ${name}) words='${flags.map((flag) => flag.name).join(' ')}' ;${first};`;
};

/** Lines of a case statement: what a flag's value may be. Files come by default. */
const bashValues = ({ name, flags }: CompletedCommand): string[] =>
  flags
    .filter(({ takesValue }) => takesValue)
    .map(({ name: flag, words }) => {
      const listed = words.length > 0 ? `COMPREPLY=($(compgen -W '${words.join(' ')}' -- "$here")); ` : '';
      return `    '${name} ${flag}') ${listed}return ;;`;
    });

function zshFlag({ name, what, takesValue, takesFiles, words }: CompletedFlag): string {
  const said = `[${escaped(what).replace(/[[\]:]/g, '\\$&')}]`;
  if (!takesValue) return `'${name}${said}'`;
  const list = `(${words.join(' ')})`;
  if (!takesFiles) return `'${name}${said}:value:${words.length > 0 ? list : ''}'`;
  return words.length > 0
    ? `'${name}${said}:value:{_alternative "words\\:value\\:${list}" "files\\:file\\:_files"}'`
    : `'${name}${said}:value:_files'`;
}

const fishWords = (command: string, words: readonly string[]): string =>
  `complete -c flarewise -n '__fish_seen_subcommand_from ${command}; and not __fish_seen_subcommand_from ${words.join(' ')}' -f -a '${words.join(' ')}'`;

const fishFlag = (command: string, { name, what, takesValue, takesFiles, words }: CompletedFlag): string =>
  [
    `complete -c flarewise -n '__fish_seen_subcommand_from ${command}' -l ${name.slice(2)}`,
    takesFiles ? '-r' : takesValue ? '-x' : '-f',
    words.length > 0 ? `-a '${words.join(' ')}'` : '',
    `-d '${escaped(what)}'`,
  ]
    .filter(Boolean)
    .join(' ');

/** Fit to stand between single quotes. */
const escaped = (text: string): string => text.replaceAll("'", '’');

const unique = (lines: readonly string[]): string[] => [...new Set(lines)];
