import type { Units } from '../../text/display-units.js';

/** How each code of a topic is said in some units, as a sentence or in parts: one that is missing or unknown does not compile. */
export type Wording<T, Said = string> = { readonly [C in keyof T]: (params: T[C], units: Units) => Said };
