import { fromKeys } from '../../base/from-keys.js';
import type { MapAnswer, MapRow } from '../../records/answers/answer.js';
import { MAP_NUMBERS, type MapNumber } from '../../records/schemas/map-numbers.js';
import type { RuleSet } from '../../records/shared/rules.js';

/**
 * From how much on it counts that RG or a differential moves, in: twice the most by which made balls of a large total differential
 * differ from their design (3 % of 0.05 in, a USBC research note). A choice of this project.
 *
 * What it does, by physics, on the demo house shot, for two demo bowlers and four demo balls: of total differential 0.21 to 0.34 in
 * of flare and 0.04 to 0.07 ft of hook start; of RG at most 0.03 ft and no flare. Of intermediate differential it depends on the mark: up to 0.2 in
 * less flare with the mark a quarter of the ball from the PAP, up to 0.1 ft of hook start with it near the PAP. `map-reach.test.ts` holds it
 * to that.
 */
export const MATTERS_FROM = { in: 0.003, flareIn: 0.25, hookStartFt: 0.1 } as const;

/** How far each number moves over the rows of a map, and whether that counts. */
export function reachOf(rows: readonly MapRow[]): MapAnswer['reach'] {
  const numbers = fromKeys(MAP_NUMBERS, (key) => {
    const all = rows.map((row) => middleOf(row, key));
    const bands = rows.map((row) => bandOfRow(row, key));
    const [least, most] = [Math.min(...all), Math.max(...all)];
    const widths = bands.map(({ low, high }) => high - low).sort((a, b) => a - b);
    return {
      least,
      most,
      low: Math.min(...bands.map(({ low }) => low)),
      high: Math.max(...bands.map(({ high }) => high)),
      bandWidth: widths[Math.floor(widths.length / 2)],
      matters: key === 'asymmetry' ? null : most - least >= MATTERS_FROM.in,
    };
  });
  return {
    numbers,
    mattersFrom: MATTERS_FROM,
    matters: Object.values(numbers).some(({ matters }) => matters === true),
  };
}

const middleOf = ({ drilled, asymmetry }: MapRow, key: MapNumber): number =>
  key === 'asymmetry' ? asymmetry.middle : drilled[key];

const bandOfRow = ({ bands, asymmetry }: MapRow, key: MapNumber): { low: number; high: number } =>
  key === 'asymmetry' ? asymmetry : bands[key];

/** Drilling adds at most about this much to a differential, in (0.011 at most over all demo balls and rows of their maps). */
const ADDED_IN = 0.01;

/**
 * Scales on which all balls are drawn, in, so that what hardly moves looks so: what the sport allows of balls as made, and for the
 * differentials what drilling adds. Asymmetry is a share of the total differential, all of it at most.
 */
export function mapScales({ asManufactured }: RuleSet): MapAnswer['scales'] {
  const differential = { least: 0, most: asManufactured.mostDifferentialIn + ADDED_IN };
  return {
    rgIn: asManufactured.rgIn,
    differentialIn: differential,
    intermediateDifferentialIn: differential,
    asymmetry: { least: 0, most: 1 },
  };
}
