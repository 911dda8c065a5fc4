import type { Objections } from '../../../records/answers/statements/objections.js';
import { withUnit } from '../../text/display-units.js';
import type { Wording } from './wording.js';

/** Why a layout is set aside, each a clause that may stand after "because". */
export const OBJECTIONS: Wording<Objections> = {
  'pin-near-hole': () => 'the pin would lie in or too near to a hole',
  'marker-near-hole': () => 'the marker would lie in or too near to a hole',
  'static-weight-over-limit': ({ ruleSet }) => `a static weight exceeds the limit of the ${ruleSet}`,
  'ball-goes-into-gutter': () => 'the ball would go into the gutter on this line',
  'gutter-half-a-turn-on': () =>
    'the line runs at the edge of the gutter: released half a turn of the ball later, the same shot would go into it',
  'ball-stops-short': () => 'the ball would not reach the pins',
  'no-line-to-pocket': () => 'no line brings the ball to the pocket',
  'ring-near-hole': () => 'an oil ring would run over or too near to a hole',
  'ring-at-hole': ({ hole, clearanceIn, leastIn }, { fineTape }) =>
    clearanceIn < 0
      ? `an oil ring would run over the ${holeWords(hole)}, ${withUnit(-clearanceIn, fineTape)} inside its edge`
      : `an oil ring would come within ${withUnit(clearanceIn, fineTape)} of the ${holeWords(hole)}; ${withUnit(leastIn, fineTape)} is the least that is kept clear`,
};

/** A vent says which hole it leads into; the others are named by finger. */
const holeWords = (hole: string): string => (hole.startsWith('vent') ? hole : `${hole} hole`);
