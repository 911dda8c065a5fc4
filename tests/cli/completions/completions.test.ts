import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { COMMANDS } from '../../../src/cli/command-table.js';
import { completionScript } from '../../../src/cli/completions/completion-scripts.js';
import { completedCommands } from '../../../src/cli/completions/completions.js';
import { SHELLS } from '../../../src/cli/flags/flag-table.js';
import { run } from '../../../src/cli/run.js';
import { scratchFolder } from '../../support/demo-files.js';
import { fakeTerminal } from '../../support/fake-terminal.js';

const folder = scratchFolder();
afterAll(() => folder.remove());
const HOME = join(folder.path, "what Kim's keeps");
for (const [kind, ids] of [
  ['balls', ['plain-own', 'reserve', '$(touch ran)', 'two words']],
  ['bowlers', ['kim']],
  ['layouts', ['reserve-first']],
] as const) {
  mkdirSync(join(HOME, kind), { recursive: true });
  for (const id of ids) writeFileSync(join(HOME, kind, `${id}.json`), '{}');
}

const commands = completedCommands(COMMANDS, { '--ball': ['plain-high', 'plain-low', 'lobed-medium'] });

/** What bash offers where the last of these words is being typed. */
function offered(words: readonly string[], home = join(folder.path, 'nowhere'), env = {}): string[] {
  const script = `${completionScript.bash(commands, home)}
COMP_WORDS=(${words.map((word) => `'${word}'`).join(' ')}); COMP_CWORD=${words.length - 1}
_flarewise; printf '%s\\n' "\${COMPREPLY[@]}"`;
  const { stdout, stderr } = spawnSync('bash', ['--norc', '-c', script], {
    encoding: 'utf8',
    env: { PATH: process.env.PATH, ...env },
  });
  expect(stderr).toBe('');
  return stdout.split('\n').filter(Boolean);
}

test('completions: bash completes a command', () => {
  expect(offered(['flarewise', 'ma'])).toEqual(['map']);
});

test('completions: bash completes a flag of the command, a global one too', () => {
  expect(offered(['flarewise', 'recommend', '--to'])).toEqual(['--total-hook', '--top']);
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

test('completions: bash completes the ids of drilled layouts where the log takes one', () => {
  expect(offered(['flarewise', 'log', 'res'], HOME)).toEqual(['reserve-first']);
  expect(offered(['flarewise', 'log', 'reserve-first', 'res'], HOME)).toEqual([]);
});

test('completions: bash completes the ids of records that are kept when the key is pressed', () => {
  const ball = ['flarewise', 'drilled', '--ball', 'plain'];
  expect(offered(ball, HOME)).toEqual(['plain-high', 'plain-low', 'plain-own']);
  expect(offered(ball, '/nowhere', { FLAREWISE_HOME: HOME })).toContain('plain-own');
  expect(offered(['flarewise', 'roll', '--bowler', ''], HOME)).toEqual(['kim']);
  expect(offered(['flarewise', 'coach', '--bowlers', ''], HOME)).toEqual(['kim']);
  expect(offered(['flarewise', 'coach', '--balls', 'pl'], HOME)).toEqual(['plain-own']);
});

test('completions: bash completes kept ids after the actions of the shelf that take them', () => {
  expect(offered(['flarewise', 'shelf', 'show', 're'], HOME)).toEqual(['reserve', 'reserve-first']);
  expect(offered(['flarewise', 'shelf', 'remove', 'kim', 're'], HOME)).toEqual(['reserve', 'reserve-first']);
  expect(offered(['flarewise', 'shelf', 'import', 're'], HOME)).toEqual([]);
});

test("completions: a file's name that is no id is neither offered nor run", () => {
  expect(offered(['flarewise', 'drilled', '--ball', ''], HOME).sort()).toEqual([
    'lobed-medium',
    'plain-high',
    'plain-low',
    'plain-own',
    'reserve',
  ]);
  expect(existsSync('ran')).toBe(false);
});

test('completions: zsh hides the colons of a value from _arguments, which parts what it is told by them', () => {
  const script = completionScript.zsh(commands, HOME);
  expect(script).toContain(':value:{_alternative "words\\:value\\:(plain-high');
  expect(script).toContain('lobed-medium $(_flarewise_kept balls))');
  expect(script).toContain(':value:(trade metric)');
});

test('completions: every flag of every command stands in every script', () => {
  for (const shell of SHELLS)
    for (const { name, flags } of commands)
      for (const { name: flag } of flags)
        expect(completionScript[shell](commands, HOME), `${shell} ${name} ${flag}`).toContain(
          shell === 'fish' ? `from ${name}' -l ${flag.slice(2)} ` : flag,
        );
});

test('completions: fish asks for the ids of kept records, of all kinds after an action of the shelf', () => {
  const script = completionScript.fish(commands, HOME);
  expect(script).toContain("plain-high plain-low lobed-medium (_flarewise_kept balls)'");
  expect(script).toContain('(_flarewise_kept bowlers balls lanes layouts)');
  expect(script).toContain(String.raw`set -l home '${folder.path}/what Kim'\''s keeps'`);
});

test('completions: another shell is refused by name; exit 2', async () => {
  const terminal = fakeTerminal();
  expect(await run(['completions', 'tcsh'], terminal)).toBe(2);
  expect(terminal.written.err()).toContain('must be bash or zsh or fish; got "tcsh"');
  expect(terminal.written.out()).toBe('');
});
