import type { Objections } from '../../../records/answers/statements/objections.js';
import type { Wording } from './wording.js';

/** Why a layout is set aside, each a clause that may stand after "because". */
export const OBJECTIONS: Wording<Objections> = {
  'pin-near-hole': () => 'the pin would lie in or too near to a hole',
  'marker-near-hole': () => 'the marker would lie in or too near to a hole',
  'static-weight-over-limit': ({ ruleSet }) => `a static weight exceeds the limit of the ${ruleSet}`,
  'ball-goes-into-gutter': () => 'the ball would go into the gutter on this line',
  'ball-stops-short': () => 'the ball would not reach the pins',
  'no-line-to-pocket': () => 'no line brings the ball to the pocket',
  'ring-near-hole': () => 'an oil ring would run over or too near to a hole',
};
