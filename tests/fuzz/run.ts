import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { fuzzPage, type Row, rowsOf } from './fuzz-page.js';
import { type Failure, fuzzTarget, replay } from './fuzz-target.js';
import { TARGETS } from './targets.js';

/*
 * npm run fuzz -- [--share 0.01] [--only NAME]... [--seed N] [--page]  tries all targets, or some; saves failures
 * npm run fuzz -- --replay FILE                                       gives a saved failure's input again
 */

const { values } = parseArgs({
  options: {
    share: { type: 'string', default: '1' },
    only: { type: 'string', multiple: true },
    seed: { type: 'string', default: '1' },
    replay: { type: 'string' },
    failures: { type: 'string', default: 'fuzz-failures' },
    page: { type: 'boolean', default: false },
  },
});

const PAGE = new URL('FUZZ.md', import.meta.url);

if (values.replay === undefined) await fuzzAll();
else await replayFile(values.replay);

async function fuzzAll(): Promise<void> {
  const seed = Number(values.seed);
  const share = Number(values.share);
  for (const target of TARGETS.filter(({ name }) => values.only?.includes(name) ?? true)) {
    const inputs = Math.ceil(share * target.inputs);
    const { counted, failures } = await fuzzTarget(target, inputs, seed, (from) =>
      process.stderr.write(`${target.name}, seed ${from}\r`),
    );
    process.stdout.write(`${target.name}: ${JSON.stringify(counted)}\n`);
    if (values.page) writeRow({ target, counted }, seed);
    failures.forEach(save);
  }
}

/** Writes what became of a target on the page, in place of what it says of that target, and leaves the others. */
function writeRow(row: Row, seed: number): void {
  const known = existsSync(PAGE) ? rowsOf(readFileSync(PAGE, 'utf8'), TARGETS) : [];
  const rows = TARGETS.flatMap((target): Row[] =>
    target === row.target ? [row] : known.filter((each) => each.target === target),
  );
  writeFileSync(PAGE, fuzzPage(rows, seed));
}

function save(failure: Failure, i: number): void {
  mkdirSync(values.failures, { recursive: true });
  const file = join(values.failures, `${failure.target.replaceAll(' ', '-')}-${failure.seed}-${i}.json`);
  writeFileSync(file, `${JSON.stringify(failure, null, 2)}\n`);
  process.stdout.write(
    `  ${failure.outcome}: ${failure.detail.slice(0, 2000)}\n  ${failure.input.slice(0, 500)}\n  saved as ${file}\n`,
  );
  process.exitCode = 1;
}

async function replayFile(file: string): Promise<void> {
  const saved = JSON.parse(readFileSync(file, 'utf8')) as Failure;
  const target = TARGETS.find(({ name }) => name === saved.target);
  if (!target) throw new Error(`no target is called ${saved.target}`);
  const failure = await replay(target, saved);
  process.stdout.write(failure ? `${failure.outcome}: ${failure.detail}\n${failure.input}\n` : 'mended\n');
  if (failure) process.exitCode = 1;
}
