import { FOLDERS } from '../house/folders.js';
import { tableOf } from '../studies/text.js';
import type { FolderOutcome, Mutant } from './outcomes.js';
import { REASONS } from './reasons.js';

const countOf = (mutants: readonly Mutant[], outcome: Mutant['outcome']): number =>
  mutants.filter((mutant) => mutant.outcome === outcome).length;

/** Killed mutants of all, and its standard error where they are a sample without putting back (Cochran, Sampling Techniques, §3.2). */
function scoreOf(folders: readonly FolderOutcome[]): string {
  const parts = folders.map(({ share, mutants }) => ({
    share,
    tried: mutants.length,
    weight: mutants.length / share,
    killed: countOf(mutants, 'killed') / mutants.length,
  }));
  const all = parts.reduce((sum, { weight }) => sum + weight, 0);
  const score = parts.reduce((sum, { weight, killed }) => sum + (weight / all) * killed, 0);
  const variance = parts.reduce(
    (sum, { share, tried, weight, killed }) =>
      sum + (weight / all) ** 2 * (1 - share) * ((killed * (1 - killed)) / Math.max(1, tried - 1)),
    0,
  );
  const percent = (value: number): string => (100 * value).toFixed(1);
  return variance > 0 ? `${percent(score)} ± ${percent(Math.sqrt(variance))}` : percent(score);
}

const row = (name: string, folders: readonly FolderOutcome[]): readonly string[] => {
  const mutants = folders.flatMap((each) => each.mutants);
  const shares = [...new Set(folders.map(({ share }) => share))];
  return [
    name,
    shares.length === 1 ? `${100 * shares[0]} %` : '',
    ...[
      mutants.length,
      ...(['killed', 'survived', 'not reached'] as const).map((of) => countOf(mutants, of)),
    ].map(String),
    scoreOf(folders),
  ];
};

const HEAD = ['folder', 'drawn', 'tried', 'killed', 'survived', 'not reached', 'killed, %'];

/** What became of all mutants, and why those that live may, as a page. */
export function mutantsPage(folders: readonly FolderOutcome[]): string {
  const alive = folders.flatMap(({ mutants }) => mutants.filter(({ outcome }) => outcome !== 'killed'));
  const why = (mutant: Mutant): string => REASONS.find(({ holds }) => holds(mutant))?.why ?? NOT_LOOKED_INTO;
  const groups = [...REASONS.map((reason) => reason.why), NOT_LOOKED_INTO]
    .map((reason) => ({ reason, mutants: alive.filter((mutant) => why(mutant) === reason) }))
    .filter(({ mutants }) => mutants.length > 0);
  const missing = notTried(folders);
  return `# Mutants

Written by \`npm run mutate -- --page\` from the runs kept on the machine; not by hand. Stryker changes the code of one folder of \`src\`,
change by change, and asks the quick tests of that folder (\`tests/mutation/tests-of.ts\`) whether they notice: _killed_ when one fails or
never ends, _survived_ when none does, _not reached_ when none runs the code. The slower tests and those of whole answers are not asked, so
more is noticed than is counted here. Where not all mutants were tried they are a sample, drawn by a hash of what each is
(\`tests/mutation/sample.mjs\`), with its standard error.

${tableOf(HEAD, [...folders.map((each) => row(`\`${each.folder}\``, [each])), row('**all**', folders)])}

${missing.length > 0 ? `Not tried yet: ${missing.join(', ')}.\n\n` : ''}## What lives, and why

${groups.map(({ reason, mutants }) => group(reason, mutants)).join('\n\n')}
`;
}

/** Folders whose numbers the tests answer for, and of which no run is kept. */
const notTried = (folders: readonly FolderOutcome[]): readonly string[] =>
  FOLDERS.map(({ path }) => path)
    .filter(
      (path) => /^(motion|ball|layout|search)\b/.test(path) && !folders.some(({ folder }) => folder === path),
    )
    .map((path) => `\`${path}\``);

const NOT_LOOKED_INTO = 'Not looked into, or not yet killed.';

const group = (why: string, mutants: readonly Mutant[]): string =>
  `${why} (${mutants.length})\n\n${mutants.map(lineOf).join('\n')}`;

const lineOf = ({ file, line, code, instead }: Mutant): string =>
  `- ${file.replace(/^src\//, '')}:${line} ${quoted(code)} → ${quoted(instead)}`;

const quoted = (code: string): string => {
  const first = code.split('\n')[0].replaceAll('`', 'ˋ').trim();
  return `\`${first.length > 70 ? `${first.slice(0, 67)}…` : first}\``;
};
