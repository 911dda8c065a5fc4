import type { Fault } from '../../../base/errors.js';
import type { Wording } from '../statements/wording.js';

/** The words for each refusal of a topic. */
export type RefusalWords<Topic> = Wording<Topic, Fault>;
