import { paragraphHtml } from './section-html.js';
import { codeHtml, htmlText, listHtml, proseHtml } from './table-html.js';

/** What a person reads first: the answer, why, how sure, how much it matters, and what to do next. */
export interface FirstScreen {
  /** For whom, with which ball, where. */
  readonly over: string;
  readonly title: string;
  /** Below the title. */
  readonly opening: readonly string[];
  /** Said of invented records; null where there are none. */
  readonly invented: string | null;
  readonly facts?: readonly { readonly label: string; readonly texts: readonly string[] }[];
  /** As HTML: the chart that is seen first, a figure beside the facts, and what stands below them; nothing where there is none. */
  readonly lead?: string;
  readonly beside?: string;
  readonly below?: string;
  /** A command that may follow; null or left out where none is known. */
  readonly next?: string | null;
  readonly cautions: readonly string[];
  /** "Before drilling" when left out. */
  readonly cautionsHeading?: string;
}

/** The head of a page, which fits a screen; one with charts has a printed page to itself. In the order in which a telephone shows it. */
export function firstScreenHtml({
  over,
  title,
  opening,
  invented,
  facts = [],
  lead = '',
  beside = '',
  below = '',
  next = null,
  cautions,
  cautionsHeading = 'Before drilling',
}: FirstScreen): string {
  const told = facts.filter(({ texts }) => texts.length > 0);
  const parts = {
    answer: `<p class="over">${htmlText(over)}</p>
<h1>${htmlText(title)}</h1>
${opening.map(paragraphHtml).join('\n')}
${invented === null ? '' : `<p class="notice">${htmlText(invented)}</p>\n`}<dl>
${told.map(({ label, texts }) => `<div><dt>${htmlText(label)}</dt><dd>${proseHtml(texts.join(' '))}</dd></div>`).join('\n')}
</dl>`,
    lead,
    next: next === null ? '' : `<p>Next: ${codeHtml(next)}</p>`,
    beside,
    below,
    cautions: cautions.length === 0 ? '' : `<h2>${htmlText(cautionsHeading)}</h2>\n${listHtml(cautions)}`,
  };
  const has = [
    ...(beside === '' ? [] : ['pictured']),
    ...(lead === '' ? [] : ['led']),
    ...(below === '' ? [] : ['whole']),
  ];
  return `<header${has.length === 0 ? '' : ` class="${has.join(' ')}"`}>
${Object.entries(parts)
  .filter(([, html]) => html !== '')
  .map(([name, html]) => `<div class="${name}">\n${html}\n</div>`)
  .join('\n')}
</header>`;
}
