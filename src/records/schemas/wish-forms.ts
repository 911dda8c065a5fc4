import { NUMBER_OF_WISH, REACTION_NUMBERS, type Wish, wishWords } from './reaction-numbers.js';

/** A number that is wished for, as an example of how to write one. */
const EXAMPLES: Readonly<Record<Wish, string>> = {
  hookStart: '41 ft',
  sharpness: '0.35 deg/ft',
  totalHook: '22 boards',
};

/** How a wish can be given: `"late", 1 to 5, or a number with its unit: "41 ft"`. */
export const wishForms = (wish: Wish): string =>
  `1 to 5, a word (${wishWords(wish).steps.join(', ')}), or a number with its unit, "${EXAMPLES[wish]}"`;

/** The unit in which answers give the number that a wish is about. */
export const wishUnit = (wish: Wish): string => REACTION_NUMBERS[NUMBER_OF_WISH[wish]].compared.unit;

/** The words for more and less of what a wish is about: `later`, `earlier`. */
export const changeWords = (wish: Wish): { readonly more: string; readonly less: string } =>
  REACTION_NUMBERS[NUMBER_OF_WISH[wish]].compared;

/** How a change can be given: `"later", "3 ft later", or a number with its unit: "41 ft"; 1 to 5 and their words as for recommend`. */
export const changeForms = (wish: Wish): string => {
  const { more, less } = changeWords(wish);
  const { steps } = wishWords(wish);
  const [by, to] = CHANGES[wish];
  return `"${more}", "${less}", "${by} ${more}", a number with its unit, "${to}", or 1 (${steps[0]}) to 5 (${steps[4]})`;
};

const CHANGES: Readonly<Record<Wish, readonly [by: string, to: string]>> = {
  hookStart: ['3 ft', '41 ft'],
  sharpness: ['0.05 deg/ft', '0.35 deg/ft'],
  totalHook: ['4 boards', '22 boards'],
};
