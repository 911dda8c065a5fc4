import type { Compared } from '../../picture/compared.js';
import { documentHtml } from './document-html.js';
import { type FirstScreen, firstScreenHtml } from './first-screen-html.js';
import { pageStyle } from './page-style.js';
import { type PageSection, sectionsHtml } from './section-html.js';
import { htmlText } from './table-html.js';

/** What a page about layouts says, from top to bottom. */
interface WebPage extends FirstScreen {
  readonly sections: readonly PageSection[];
  /** The layouts whose paths can be drawn. */
  readonly compared: readonly Pick<Compared, 'sign'>[];
  readonly foot: string;
}

/** One file that fetches nothing: text, tables and pictures for a telephone, a desk or paper. */
export function pageHtml({ sections, compared, foot, ...first }: WebPage): string {
  const { nav, body } = sectionsHtml(sections);
  return documentHtml(
    `${first.over}: ${first.title}`,
    pageStyle(compared.map(({ sign }) => sign)),
    `${firstScreenHtml(first)}\n${nav}\n${body}\n<footer><p>${htmlText(foot)}</p></footer>`,
  );
}
