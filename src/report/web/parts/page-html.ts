import type { Compared } from '../../picture/compared.js';
import { type FirstScreen, firstScreenHtml } from './first-screen-html.js';
import { pageStyle } from './page-style.js';
import { type PageSection, sectionsHtml } from './section-html.js';
import { htmlText } from './table-html.js';

/** What a page about layouts says, from top to bottom. */
export interface WebPage extends FirstScreen {
  readonly sections: readonly PageSection[];
  /** The layouts whose paths can be drawn. */
  readonly compared: readonly Pick<Compared, 'sign'>[];
  readonly foot: string;
}

/** One file that fetches nothing: text, tables and pictures for a telephone, a desk or paper. */
export function pageHtml({ sections, compared, foot, ...first }: WebPage): string {
  const { nav, body } = sectionsHtml(sections);
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${htmlText(`${first.over}: ${first.title}`)}</title>
<link rel="icon" href="data:,">
<style>${pageStyle(compared.map(({ sign }) => sign))}</style>
</head>
<body>
<main>
${firstScreenHtml(first)}
${nav}
${body}
<footer><p>${htmlText(foot)}</p></footer>
</main>
</body>
</html>
`;
}
