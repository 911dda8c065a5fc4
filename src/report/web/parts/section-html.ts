import { htmlText, proseHtml } from './table-html.js';

/** A part of a page that can be jumped to. */
export interface PageSection {
  readonly id: string;
  /** What it finds. */
  readonly heading: string;
  /** What it is about, in the list of contents; its heading where that is short. */
  readonly about?: string;
  /** HTML; nothing at all is shown where it is empty. */
  readonly parts: readonly string[];
}

export const paragraphHtml = (text: string): string => (text === '' ? '' : `<p>${proseHtml(text)}</p>`);

/** What a table's columns mean, in small letters. */
export const noteHtml = (text: string): string =>
  text === '' ? '' : `<p class="note">${proseHtml(text)}</p>`;

const isFilled = ({ parts }: PageSection): boolean => parts.some((part) => part !== '');

/** Sections one below the other, with a list of them to jump from. */
export function sectionsHtml(sections: readonly PageSection[]): {
  readonly nav: string;
  readonly body: string;
} {
  const shown = sections.filter(isFilled);
  return {
    nav: `<nav aria-label="Contents">\n<ul>\n${shown
      .map(({ id, heading, about = heading }) => `<li><a href="#${id}">${htmlText(about)}</a></li>`)
      .join('\n')}\n</ul>\n</nav>`,
    body: shown
      .map(
        ({ id, heading, parts }) =>
          `<section id="${id}" aria-labelledby="${id}-heading">\n<h2 id="${id}-heading">${htmlText(heading)}</h2>\n${parts
            .filter((part) => part !== '')
            .join('\n')}\n</section>`,
      )
      .join('\n'),
  };
}
