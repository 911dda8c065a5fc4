import { INCH, to } from '../base/units.js';
import { hasWish, type Want, wishedIds } from '../records/schemas/want.js';
import type { Setting } from '../simulate/setting.js';
import { markClearanceIn } from './candidates/candidates.js';
import type { OrderRules } from './order.js';
import type { VoicesResult } from './search.js';
import type { Sizes } from './visibility.js';

/** The rules by which layouts are ordered beyond their scores, for one setting. @param voices  null where practice has no weight */
export const orderRules = (
  want: Want,
  scatter: Sizes,
  voices: Pick<VoicesResult, 'beliefs'> | null,
  { ball, practiceWeight }: Pick<Setting, 'ball' | 'practiceWeight'>,
): OrderRules => ({
  ids: wishedIds(want),
  hasWish: hasWish(want),
  scatter,
  byPractice: voices && practiceWeight > 0 ? voices.beliefs.byPractice : () => 0,
  clearanceIn: ({ layout, nominal }) =>
    Math.min(markClearanceIn(layout, ball).pin, to(nominal.ringClearance, INCH)),
});
