import type { Fault } from '../../../base/errors.js';
import type { Units } from '../../text/display-units.js';

/** How each refusal of a topic is said; a code without words, or words without a code, do not compile. */
export type RefusalWords<Topic> = {
  readonly [Code in keyof Topic]: (params: Topic[Code], units: Units) => Fault;
};
