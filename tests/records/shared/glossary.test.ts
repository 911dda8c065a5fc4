import { expect, test } from 'vitest';
import { findTerm, loadGlossary } from '../../../src/records/shared/glossary.js';

const glossary = loadGlossary();
const terms = glossary.groups.flatMap((group) => group.terms);
const names = terms.flatMap(({ term, also }) => [term, ...also]);

test('glossary: no name stands for two terms', () => {
  const plain = names.map((name) => name.toLowerCase());
  expect(plain.filter((name, i) => plain.indexOf(name) !== i)).toEqual([]);
});

test('glossary: what it points to is there', () => {
  const known = new Set(terms.map(({ term }) => term));
  expect(terms.flatMap(({ see }) => see).filter((name) => !known.has(name))).toEqual([]);
});

test.each([
  ['PAP', 'PAP'],
  ['Pin Buffer', 'pin buffer'],
  ['pin-buffer', 'pin buffer'],
  ['mass bias', 'intermediate differential'],
  ['revs', 'rev rate'],
  ['sure', 'sure'],
  ['pin up', 'pin up'],
  ['Pin-down', 'pin down'],
  ['weight hole', 'weight hole'],
  ['rev-dominant', 'rev dominant'],
  ['speed dominant', 'speed dominant'],
])('findTerm: %j is %j', (asked, term) => {
  expect(findTerm(glossary, asked)).toMatchObject({ term: { term } });
});

test('findTerm: a slip of the finger gets the nearest name', () => {
  expect(findTerm(glossary, 'diferential')).toEqual({ near: 'differential' });
  expect(findTerm(glossary, 'xylophone')).toEqual({ near: null });
});
