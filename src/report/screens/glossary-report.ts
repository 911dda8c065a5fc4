import type { Glossary, Term } from '../../records/shared/glossary.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { joinSections, paragraph, section } from '../text/section.js';
import { wrap } from '../text/wrap.js';
import { wordedTerm } from '../wording/worded-term.js';

/** One term of the trade: its name, other names for it, what it means, what to read next. */
export function termReport(given: Term, page: Page): string {
  const { term, also, text, see } = withPlainText(wordedTerm(given, page.units), page.ascii);
  return joinSections([
    [
      page.paint.heading(term),
      ...paragraph(text, page),
      ...(also.length === 0 ? [] : paragraph(`Also: ${also.join(', ')}.`, page)),
      ...(see.length === 0 ? [] : paragraph(`See: ${see.join(', ')}.`, page)),
    ],
  ]);
}

/** All terms by group, to choose from. */
export const glossaryReport = (given: Glossary, page: Page): string =>
  joinSections([
    ...withPlainText(given, page.ascii).groups.map(({ title, terms }) =>
      section(title, wrap(terms.map(({ term }) => term).join(', '), page.width, '  '), page),
    ),
    wrap('One of them: flarewise explain "pin buffer"', page.width),
  ]);
