import type { Units } from '../../text/display-units.js';

/** The words for each code of a topic in some units, as a sentence or in parts. A missing or unknown code does not compile. */
export type Wording<T, Said = string> = { readonly [C in keyof T]: (params: T[C], units: Units) => Said };
