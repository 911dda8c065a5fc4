import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { FOLDERS } from './folders.js';
import { FORMULAS } from './formulas.js';
import { importRules } from './lint-rules.js';

const SRC = fileURLToPath(new URL('../../src/', import.meta.url));

/** Where the rules begin in the linter's settings; each stands on a line of its own, in the order of the list. */
const RULES = '    // imports\n';
const RULES_END = '  ]\n}\n';

/** The linter's settings with the import rules of the list. */
export function lintSettings(settings: string): string {
  const [before] = settings.split(RULES);
  return `${before}${RULES}${importRules()
    .map((rule) => `    ${JSON.stringify(rule)}`)
    .join(',\n')}\n${RULES_END}`;
}

/** The developers' page with its map of folders and its index of formulas. */
export const withMaps = (page: string): string =>
  between(between(page, 'map', mapTable()), 'formulas', formulaTables());

/** Puts a text between the two marks of its name. */
function between(page: string, name: string, text: string): string {
  const marks = [`<!-- ${name}: written by \`npm run house\` -->`, `<!-- end of ${name} -->`] as const;
  const [before, rest] = page.split(marks[0]);
  const after = rest?.split(marks[1])[1];
  if (after === undefined) throw new Error(`DEVELOPERS.md has lost the marks of its ${name}`);
  return `${before}${marks[0]}\n${text}\n${marks[1]}${after}`;
}

const mapTable = (): string =>
  [
    '| folder | what it holds |',
    '|---|---|',
    ...FOLDERS.map(({ path, holds }) => `| [\`src/${path}\`](src/${path}) | ${holds} |`),
  ].join('\n');

function formulaTables(): string {
  const places = exportsOf();
  return Object.entries(FORMULAS)
    .map(([part, formulas]) => {
      const rows = formulas.map(({ says, name }) => {
        const found = places.get(name) ?? [];
        if (found.length !== 1)
          throw new Error(`${name} is exported by ${found.length} files: ${found.join()}`);
        return `| ${says.replaceAll('|', '\\|')} | [\`${name}\`](src/${found[0]}) |`;
      });
      return [`**${part}**`, '', '| formula | where |', '|---|---|', ...rows].join('\n');
    })
    .join('\n\n');
}

/** File and line, `math/vec3.ts#L6`, of every function, constant and class that `src` exports. */
function exportsOf(): ReadonlyMap<string, readonly string[]> {
  const places = new Map<string, string[]>();
  for (const file of readdirSync(SRC, { recursive: true, encoding: 'utf8' }).sort()) {
    if (!file.endsWith('.ts')) continue;
    readFileSync(join(SRC, file), 'utf8')
      .split('\n')
      .forEach((line, i) => {
        const name = line.match(/^export (?:async )?(?:function|const|class) (\w+)/)?.[1];
        if (name) places.set(name, [...(places.get(name) ?? []), `${file.replaceAll('\\', '/')}#L${i + 1}`]);
      });
  }
  return places;
}
