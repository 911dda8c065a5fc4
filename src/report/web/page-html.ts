import type { Compared } from '../picture/compared.js';
import { choiceHtml } from './choice-html.js';
import { pageStyle } from './page-style.js';
import { type PageSection, paragraphHtml, sectionsHtml } from './section-html.js';
import { htmlText, listHtml } from './table-html.js';

/** What a page about layouts says, from top to bottom. */
export interface WebPage {
  readonly over: string;
  readonly title: string;
  /** Below the title, the first of them in bold. */
  readonly opening: readonly string[];
  /** Said of invented records; null where there are none. */
  readonly invented: string | null;
  readonly cautions: readonly string[];
  readonly compared: readonly Compared[];
  readonly sections: readonly PageSection[];
  readonly foot: string;
}

/** One file that fetches nothing: text, tables and pictures for a telephone, a desk or paper. */
export function pageHtml({
  over,
  title,
  opening: [first = '', ...opening],
  invented,
  cautions,
  compared,
  sections,
  foot,
}: WebPage): string {
  const { nav, body } = sectionsHtml(sections);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${htmlText(`${over}: ${title}`)}</title>
<link rel="icon" href="data:,">
<style>${pageStyle(compared)}</style>
</head>
<body>
<main>
<header>
<div>
<p class="over">${htmlText(over)}</p>
<h1>${htmlText(title)}</h1>
<p><strong>${htmlText(first)}</strong></p>
${opening.map(paragraphHtml).join('\n')}
${invented === null ? '' : `<p class="notice">${htmlText(invented)}</p>\n`}</div>
<div class="cautions">
<h2>Before drilling</h2>
${listHtml(cautions)}
</div>
</header>
${nav}
${choiceHtml(compared)}
${body}
<footer><p>${htmlText(foot)}</p></footer>
</main>
</body>
</html>
`;
}
