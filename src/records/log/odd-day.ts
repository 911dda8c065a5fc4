import type { Oddity } from '../answers/statements/log-remarks.js';
import type { DrilledLayout } from '../schemas/drilled-layout.js';

/**
 * What looks odd about the day of a shot; nothing where the log has a night of that day already.
 *
 * @param today  by the clock
 */
export function oddDay(
  on: string | undefined,
  { nights, drilledOn }: Pick<DrilledLayout, 'nights' | 'drilledOn'>,
  today: string,
): readonly Oddity[] {
  if (on === undefined || nights.some((night) => night.on === on)) return [];
  if (on > today) return [{ code: 'night-to-come', params: { on, today } }];
  if (drilledOn !== undefined && on < drilledOn)
    return [{ code: 'night-before-drilling', params: { on, drilledOn } }];
  return [];
}
