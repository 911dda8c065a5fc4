import type { Fault } from '../../../base/errors.js';
import type { Wording } from '../statements/wording.js';

/** How each refusal of a topic is said. */
export type RefusalWords<Topic> = Wording<Topic, Fault>;
