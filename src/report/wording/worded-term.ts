import type { Glossary, Term } from '../../records/shared/glossary.js';
import type { Units } from '../text/display-units.js';
import { withQuantities } from '../text/with-quantities.js';

/** A term of the trade with its text in some units. */
export const wordedTerm = (term: Term, units: Units): Term => ({
  ...term,
  text: withQuantities(term.text, units),
});

/** The same of all terms. */
export const wordedGlossary = (glossary: Glossary, units: Units): Glossary => ({
  ...glossary,
  groups: glossary.groups.map(({ title, terms }) => ({
    title,
    terms: terms.map((term) => wordedTerm(term, units)),
  })),
});
