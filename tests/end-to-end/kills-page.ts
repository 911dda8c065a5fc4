import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import type { Kills } from './killed-commands.js';

const PAGE = new URL('KILLS.md', import.meta.url);

/** The page before its rows. */
const HEAD = `# Kills

Written by \`npm run kills\` (all of it more than a thousand kills; \`-- -t NAME\` for one command): every command that writes is killed with signal 9 before each step in which it changes a file (opened, written by
half, flushed, renamed, removed), and at random moments after the first. Each time what it writes is as it was or done, never neither, and the next command
works at once: a record is kept without waiting for a lock. A row is of the latest run of that command.

`;

/** Says how often a command was killed, and writes it on the page where that is asked for. */
export function countKills(name: string, { aimed, random }: Kills): void {
  process.stdout.write(`${name}: killed ${aimed} times at a step, ${random} at a random moment\n`);
  if (process.env.FLAREWISE_KILLS !== 'page') return;
  const rows = new Map(rowsOf(existsSync(PAGE) ? readFileSync(PAGE, 'utf8') : ''));
  rows.set(name, [aimed, random]);
  const sum = [0, 1].map((i) => [...rows.values()].reduce((total, row) => total + row[i]!, 0));
  const wide = Math.max(...[...rows.keys()].map((each) => each.length));
  const line = (what: string, [a, b]: readonly number[]): string =>
    `| ${what.padEnd(wide)} | ${String(a).padStart(9)} | ${String(b).padStart(18)} |`;
  const lines = [
    `| ${'command'.padEnd(wide)} | at a step | at a random moment |`,
    `| ${'-'.repeat(wide)} | --------: | -----------------: |`,
  ];
  for (const [what, row] of [...rows].sort(([a], [b]) => (a < b ? -1 : 1))) lines.push(line(what, row));
  writeFileSync(PAGE, `${HEAD}${[...lines, line(`**all**: ${sum[0]! + sum[1]!}`, sum)].join('\n')}\n`);
}

const rowsOf = (page: string): [string, number[]][] =>
  [...page.matchAll(/^\| ([^*|]+?) *\| *(\d+) \| *(\d+) \|$/gm)].map(([, name, ...counts]) => [
    name as string,
    counts.map(Number),
  ]);
