import type { Units } from '../../text/display-units.js';

/** How each statement of a topic is said in some units: a code that is missing or unknown does not compile. */
export type Wording<T> = { readonly [C in keyof T]: (params: T[C], units: Units) => string };
