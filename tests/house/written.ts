import { FOLDERS } from './folders.js';
import { importRules } from './lint-rules.js';

/** Where the rules begin in the linter's settings; each stands on a line of its own, in the order of the list. */
const RULES = '    // imports\n';
const RULES_END = '  ]\n}\n';
const MAP = ['<!-- map: written by `npm run house` -->', '<!-- end of the map -->'] as const;

/** The linter's settings with the import rules of the list. */
export function lintSettings(settings: string): string {
  const [before] = settings.split(RULES);
  return `${before}${RULES}${importRules()
    .map((rule) => `    ${JSON.stringify(rule)}`)
    .join(',\n')}\n${RULES_END}`;
}

/** The developers' page with the list of folders as its map. */
export function withMap(page: string): string {
  const [before, rest] = page.split(MAP[0]);
  const after = rest?.split(MAP[1])[1];
  if (after === undefined) throw new Error('DEVELOPERS.md has lost the marks of its map');
  const rows = FOLDERS.map(({ path, holds }) => `| [\`src/${path}\`](src/${path}) | ${holds} |`);
  return `${before}${MAP[0]}\n| folder | what it holds |\n|---|---|\n${rows.join('\n')}\n${MAP[1]}${after}`;
}
