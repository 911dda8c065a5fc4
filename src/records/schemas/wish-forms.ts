import { type Wish, wishWords } from './reaction-numbers.js';

/** A number that is wished for, as an example of how to write one. */
const EXAMPLES: Readonly<Record<Wish, string>> = {
  hookStart: '41 ft',
  sharpness: '0.35 deg/ft',
  totalHook: '22 boards',
};

/** How a wish can be given: `"late", 1 to 5, or a number with its unit: "41 ft"`. */
export const wishForms = (wish: Wish): string =>
  `1 to 5, a word (${wishWords(wish).steps.join(', ')}), or a number with its unit, "${EXAMPLES[wish]}"`;
