import { fromKeys } from '../../src/base/from-keys.js';
import { OUTCOMES } from './outcome.js';
import type { Counted } from './tally.js';
import type { Target } from './target.js';

/** A target and what became of its inputs. */
export interface Row {
  readonly target: Target;
  readonly counted: Counted;
}

const digits = (count: number): string => count.toLocaleString('en');

/** What became of all inputs, as a page. */
export const fuzzPage = (rows: readonly Row[], seed: number): string => {
  const total = (of: (counted: Counted) => number): number =>
    rows.reduce((sum, { counted }) => sum + of(counted), 0);
  const cells = (name: string, of: (read: (counted: Counted) => number) => number): string =>
    `| ${[name, ...COLUMNS.map(([, read]) => digits(of(read)))].join(' | ')} |`;
  return `# Random inputs

Written by \`npm run fuzz -- --page\`, seed ${seed}, Node ${process.versions.node}; a row is of the latest run of that target. Each target takes random inputs, most of them sound ones
that were spoiled, and its answer is looked at: *refused* means that the error names field, rule, value and remedy, *unworded* that one of
them is missing, *crash* any other error, *not finite* an answer that holds NaN or infinity, *slow* more than two seconds of processor
time where nothing else is said. *Distinct* counts inputs that differ, *rules* the rules by which they were refused, numbers in them aside. What fails is made smaller
and saved in \`fuzz-failures\`; \`npm run fuzz -- --replay FILE\` gives it again.

| target | ${COLUMNS.map(([head]) => head).join(' | ')} |
|---|${COLUMNS.map(() => '---:').join('|')}|
${rows.map(({ target, counted }) => cells(target.name, (read) => read(counted))).join('\n')}
${cells('**all**', total)}

What is tried:

${rows.map(({ target }) => `- **${target.name}**: ${target.what}`).join('\n')}
`;
};

/** The rows of a page that was written so, of targets that there still are. */
export const rowsOf = (page: string, targets: readonly Target[]): readonly Row[] =>
  targets.flatMap((target): Row[] => {
    const lines = page.split('\n').map((line) => line.split('|').map((cell) => cell.trim()));
    const line = lines.find(([, name]) => name === target.name);
    const cells = line?.slice(2, -1).map((cell) => Number(cell.replaceAll(',', '')));
    if (cells?.length !== COLUMNS.length) return [];
    const [inputs, distinct, rules, ...outcomes] = cells;
    return [
      {
        target,
        counted: {
          inputs,
          distinct,
          rules,
          outcomes: fromKeys(OUTCOMES, (outcome) => outcomes[OUTCOMES.indexOf(outcome)]),
        },
      },
    ];
  });

const COLUMNS: readonly (readonly [head: string, read: (counted: Counted) => number])[] = [
  ['inputs', ({ inputs }) => inputs],
  ['distinct', ({ distinct }) => distinct],
  ['rules', ({ rules }) => rules],
  ...OUTCOMES.map((outcome) => [outcome, ({ outcomes }: Counted) => outcomes[outcome]] as const),
];
