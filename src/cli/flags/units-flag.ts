import type { UnitSystem } from '../../report/text/display-units.js';
import { UNIT_SYSTEMS } from './flag-table.js';
import { oneOf } from './flags.js';

/**
 * The units of `--units`: the trade's own where none are given.
 *
 * @throws {InputError} `flag` for an unknown system
 */
export const unitsFlag = (given: string | undefined): UnitSystem =>
  oneOf('--units', given ?? 'trade', UNIT_SYSTEMS, 'trade: in, ft, lb, oz, mph; metric: mm, m, kg, g, km/h.');

/** The units in which to say that something failed: the trade's own also where `--units` is itself at fault. */
export const unitsOrTrade = (given: string | undefined): UnitSystem =>
  UNIT_SYSTEMS.find((system) => system === given) ?? 'trade';
