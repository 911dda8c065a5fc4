import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { COMMANDS } from '../../src/cli/command-table.js';
import { completionScript } from '../../src/cli/completion-scripts.js';
import { completedCommands } from '../../src/cli/completions.js';
import { SHELLS } from '../../src/cli/flag-table.js';
import { run } from '../../src/cli/run.js';
import { fakeTerminal } from './fake-terminal.js';

const commands = completedCommands(COMMANDS, { '--ball': ['plain-high', 'plain-low', 'lobed-medium'] });

/** What bash offers where the last of these words is being typed. */
function offered(words: readonly string[]): string[] {
  const script = `${completionScript.bash(commands)}
COMP_WORDS=(${words.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${words.length - 1}
_flarewise; printf '%s\\n' "\${COMPREPLY[@]}"`;
  const { stdout, stderr } = spawnSync('bash', ['--norc', '-c', script], { encoding: 'utf8' });
  expect(stderr).toBe('');
  return stdout.split('\n').filter(Boolean);
}

test('completions: bash completes a command', () => {
  expect(offered(['flarewise', 'ma'])).toEqual(['map']);
});

test('completions: bash completes a flag of the command, a global one too', () => {
  expect(offered(['flarewise', 'recommend', '--hook-s'])).toEqual(['--hook-start', '--hook-shape']);
  expect(offered(['flarewise', 'roll', '--js'])).toEqual(['--json']);
});

test('completions: bash completes the words a flag takes, demo ids among them', () => {
  expect(offered(['flarewise', 'drilled', '--ounce', 'h'])).toEqual(['halves']);
  expect(offered(['flarewise', 'drilled', '--ball', 'plain'])).toEqual(['plain-high', 'plain-low']);
});

test('completions: bash completes the words that follow a command', () => {
  expect(offered(['flarewise', 'shelf', 're'])).toEqual(['rename', 'remove']);
  expect(offered(['flarewise', 'completions', ''])).toEqual(expect.arrayContaining(['bash', 'zsh', 'fish']));
  expect(offered(['flarewise', 'shelf', 'list', 're'])).toEqual([]);
});

test('completions: zsh hides the colons of a value from _arguments, which parts what it is told by them', () => {
  const script = completionScript.zsh(commands);
  expect(script).toContain(':value:{_alternative "words\\:value\\:(plain-high');
  expect(script).toContain(':value:(trade metric)');
});

test('completions: every flag of every command stands in every script', () => {
  for (const shell of SHELLS)
    for (const { name, flags } of commands)
      for (const { name: flag } of flags)
        expect(completionScript[shell](commands), `${shell} ${name} ${flag}`).toContain(
          shell === 'fish' ? `from ${name}' -l ${flag.slice(2)} ` : flag,
        );
});

test('completions: another shell is refused by name; exit 2', async () => {
  const terminal = fakeTerminal();
  expect(await run(['completions', 'tcsh'], terminal)).toBe(2);
  expect(terminal.written.err()).toContain('must be bash or zsh or fish; got "tcsh"');
  expect(terminal.written.out()).toBe('');
});
