import { spawnSync } from 'node:child_process';
import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { scratchFolder } from '../support/demo-files.js';
import { ENV } from '../support/run-cli.js';
import { commandIn, prepareFolder, WRITING, type WritingCommand } from './writing-commands.js';

/* All commands that write, on a small disk of their own that is full or may only be read: Linux alone, and where disks may be mounted. */

const scratch = scratchFolder();
afterAll(() => scratch.remove());

const DISK = join(scratch.path, 'disk');
mkdirSync(DISK);

/** A shell script that sees a disk of its own at `$DISK`, with all that is in `$START` on it. */
const onDisk = (script: string, env: Record<string, string> = {}) =>
  spawnSync(
    'unshare',
    [
      '--map-root-user',
      '--mount',
      'sh',
      '-c',
      `mount -t tmpfs -o size=8m none "$DISK" || exit 99\n${script}`,
    ],
    { env: { ...ENV, DISK, ...env }, encoding: 'utf8' },
  );

const canMount = process.platform === 'linux' && onDisk('exit 0').status === 0;

const STATES = {
  full: { make: 'head -c 100M /dev/zero > "$DISK/filling" 2> /dev/null', undo: 'rm "$DISK/filling"' },
  'only to be read': { make: 'mount -o remount,ro "$DISK"', undo: 'mount -o remount,rw "$DISK"' },
  'another than the records’': {
    make: 'mv home records && mkdir home && mount -t tmpfs -o size=4m none home && cp -r records/. home',
    undo: 'true',
  },
};

/** Commands that end soon, and what they write is seen from the shell. */
const QUICK = Object.entries(WRITING).filter(([, { isLong, seen }]) => !isLong && !seen);

const quoted = (words: readonly string[]): string => words.map((word) => `'${word}'`).join(' ');

/** What a command printed and said on such a disk, and what is seen of what it writes before and after. */
function runOn(state: keyof typeof STATES, writing: WritingCommand, start: string) {
  const { args, env, main = [] } = commandIn(DISK, writing);
  const program = quoted([process.execPath, ...main]);
  const seen = writing.file ? `cat '${writing.file}'` : `${program} ${quoted(writing.seenBy ?? [])}`;
  const { stdout, stderr, status } = onDisk(
    `
    cp -r "$START/." "$DISK" && cd "$DISK"
    ${seen}; printf '\\f'
    ${STATES[state].make}
    ${program} ${quoted(args)} > /dev/null; code=$?
    ${STATES[state].undo}
    printf '\\f'; ${seen} || exit 98; printf "\\f$code"`,
    { ...env, START: start },
  );
  const [before, , after, code] = stdout.split('\f');
  return { status, before, after, code: Number(code), err: stderr };
}

describe.runIf(canMount)('a home that is a mount of its own', () => {
  test.each(QUICK)('%s is done as ever', async (name, writing) => {
    const start = join(scratch.path, `mount-${name}`);
    await prepareFolder(start, writing);
    const { status, before, after, code, err } = runOn('another than the records’', writing, start);
    expect([status, code], err).toEqual([0, 0]);
    expect(after).not.toBe(before);
  });
});

describe.runIf(canMount).each(['full', 'only to be read'] as const)('a disk that is %s', (state) => {
  test.each(QUICK)(
    '%s says so in a sentence and changes nothing, or is done whole',
    async (name, writing) => {
      const start = join(scratch.path, `${state}-${name}`);
      await prepareFolder(start, writing);
      const { status, before, after, code, err } = runOn(state, writing, start);
      expect(status).toBe(0);
      if (state === 'full' && name === 'shelf rename') {
        // a file that moves takes no room
        expect([code, err]).toEqual([0, '']);
        expect(after).toBe(before?.replace('"league"', '"friday"'));
        return;
      }
      expect(after).toBe(before);
      expect(err).not.toMatch(/bug|\n {4}at /);
      expect([2, 74]).toContain(code);
      expect(err).toMatch(/full|cannot be written to/);
    },
  );
});
