import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { schema } from '@stryker-mutator/api/core';
import { Stryker } from '@stryker-mutator/core';
import { mutantsPage } from './mutants-page.js';
import { keptOutcomes } from './outcomes.js';
import { strykerOptions } from './stryker-options.js';

/*
 * npm run mutate -- FOLDER [--file NAME.ts]... [--share 0.1] [--anew]
 * npm run mutate -- --page
 *
 * Changes the code of one folder of `src`, change by change, and says which changes no quick test notices. What earlier runs found is
 * kept in the system's folder for passing files and not asked again, until code or tests change; `--anew` asks again. `--page` writes
 * what the kept runs found of all folders.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    file: { type: 'string', multiple: true, default: ['*.ts'] },
    share: { type: 'string', default: '1' },
    anew: { type: 'boolean', default: false },
    page: { type: 'boolean', default: false },
  },
});

if (values.page)
  writeFileSync(new URL('../studies/MUTANTS.md', import.meta.url), mutantsPage(keptOutcomes()));
else await mutate(positionals[0] ?? '');

async function mutate(folder: string): Promise<void> {
  if (folder === '' || !existsSync(new URL(`../../src/${folder}`, import.meta.url)))
    throw new Error('name a folder of src, such as ball/drill');
  // read by vitest's settings and by the sample, in processes of Stryker's
  process.env.MUTATED_FOLDER = folder;
  process.env.MUTATED_SHARE = values.share;
  // first with the tests that reach a mutant while they run; then, with all, what is met before they begin and not killed yet
  for (const ignoreStatic of [true, false]) {
    const options = strykerOptions(folder, Number(values.share), values.file);
    const force = values.anew && ignoreStatic;
    if (!ignoreStatic) askAgain(options.incrementalFile);
    const mutants = await new Stryker({ ...options, ignoreStatic, force }).runMutationTest();
    if (!mutants.some((mutant) => mutant.static && isLeft(mutant.status))) break;
  }
}

function isLeft(status: schema.MutantStatus): boolean {
  return status === 'Ignored' || status === 'Survived';
}

/**
 * Forgets what is known of mutants that live and are met before tests begin (`beforeAll`) as well as in some of them: only these were
 * asked, though others work on what was made before.
 */
function askAgain(file: string): void {
  const known = JSON.parse(readFileSync(file, 'utf8')) as schema.MutationTestResult;
  for (const each of Object.values(known.files))
    each.mutants = each.mutants.filter((mutant) => !(mutant.static && isLeft(mutant.status)));
  writeFileSync(file, JSON.stringify(known));
}
