import { INCH, to } from '../base/units.js';
import { type Want, wishedIds } from '../records/schemas/want.js';
import type { Setting } from '../simulate/setting.js';
import { markClearanceIn } from './candidates/candidates.js';
import type { OrderRules } from './order.js';
import type { VoicesResult } from './search.js';
import type { Sizes } from './visibility.js';

/** What the order of layouts goes by beside their scores, for one setting. */
export const orderRules = (
  want: Want,
  scatter: Sizes,
  { beliefs }: Pick<VoicesResult, 'beliefs'>,
  { ball, practiceWeight }: Pick<Setting, 'ball' | 'practiceWeight'>,
): OrderRules => ({
  ids: wishedIds(want),
  scatter,
  byPractice: practiceWeight > 0 ? beliefs.byPractice : () => 0,
  clearanceIn: ({ layout, nominal }) =>
    Math.min(markClearanceIn(layout, ball).pin, to(nominal.ringClearance, INCH)),
});
