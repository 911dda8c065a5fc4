import { z } from 'zod';
import { nearestWord } from '../text/nearest-word.js';
import { readShared } from './shared-data.js';

const glossarySchema = z.strictObject({
  about: z.string(),
  groups: z.array(
    z.strictObject({
      title: z.string(),
      terms: z.array(
        z.strictObject({
          term: z.string(),
          also: z.array(z.string()).default([]),
          text: z.string(),
          see: z.array(z.string()).default([]),
        }),
      ),
    }),
  ),
});

/**
 * The trade's words in groups, each with its other names and what to read next. A number in braces is in the trade's
 * unit of the quantity named behind it: `{3 3/8 tape}`.
 */
export type Glossary = z.infer<typeof glossarySchema>;
export type Term = Glossary['groups'][number]['terms'][number];

export const loadGlossary = (): Glossary => glossarySchema.parse(readShared('glossary.json'));

/**
 * The term that a person asked for, by any of its names; capitals, hyphens and spaces do not count.
 *
 * @returns the term, or else the nearest known name, or null
 */
export function findTerm(
  glossary: Glossary,
  asked: string,
): { readonly term: Term } | { readonly near: string | null } {
  const names = glossary.groups.flatMap(({ terms }) =>
    terms.flatMap((term) => [term.term, ...term.also].map((name) => ({ name, term }))),
  );
  const found = names.find(({ name }) => plain(name) === plain(asked));
  if (found) return { term: found.term };
  const near = nearestWord(
    asked,
    names.map(({ name }) => name),
  );
  return { near };
}

const plain = (name: string): string =>
  name
    .toLowerCase()
    .replace(/[\s-]+/g, ' ')
    .trim();
