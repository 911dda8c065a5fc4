import type { OwnBody, OwnCore } from '../../ball/core/own-body.js';
import { shellMoments, sphereMoments } from '../../ball/drill/ball-body.js';
import type { Fault } from '../../base/errors.js';
import { GRAM_PER_CC, POUND, to } from '../../base/units.js';
import type { CorePart } from '../../records/schemas/core.js';
import { partName } from './part-name.js';

/** Bounds of a filler, kg/m³: 0.6 to 1.4 g/cc is poured (common practice, no source), in light balls less. */
const LIGHTEST_FILLER = 350;
const HEAVIEST_FILLER = 1400;
/** Bounds of a part's density that is worth proposing, kg/m³. */
const LEAST_DENSITY = 300;
const GREATEST_DENSITY = 3800;

/**
 * What is at fault when no filler makes the weight come out: the density, of the part that weighs most, that
 * would mend it; failing that the parts' sizes. Null when the filler is one that is poured.
 */
export function fillerFault(own: OwnBody, core: OwnCore, parts: readonly CorePart[]): Fault | null {
  const { fillerDensity } = own.body;
  if (fillerDensity >= LIGHTEST_FILLER && fillerDensity <= HEAVIEST_FILLER) return null;
  const isTooLight = fillerDensity < LIGHTEST_FILLER;
  const bound = isTooLight ? LIGHTEST_FILLER : HEAVIEST_FILLER;

  const weights = core.solids.map(({ density }, i) => density * own.volumes[i]);
  const heaviest = weights.indexOf(Math.max(...weights));
  const shell = shellMoments({ ...core, radius: own.body.radius, fillerDensity: 0 }).mass;
  const room = sphereMoments(own.body.radius - core.coverThickness, 1).mass - sum(own.volumes);
  const over = room * (bound - fillerDensity); // what the core weighs too much (or, below zero, too little)
  const needed = (weights[heaviest] - over) / own.volumes[heaviest];

  const got =
    `cover ${pounds(shell)} and core ${pounds(sum(weights))}, which leave ${pounds(room * fillerDensity)} ` +
    `for the filler: ${grams(fillerDensity)}`;
  const makes = `with a filler of ${grams(LIGHTEST_FILLER)} to ${grams(HEAVIEST_FILLER)} this core makes a ball of ${pounds(shell + sum(weights) + room * LIGHTEST_FILLER)} to ${pounds(shell + sum(weights) + room * HEAVIEST_FILLER)}`;
  const name = partName(parts[heaviest], heaviest);
  if (needed < LEAST_DENSITY || (needed > GREATEST_DENSITY && !isTooLight))
    return {
      field: 'parts',
      rule: `must leave a filler of ${grams(LIGHTEST_FILLER)} to ${grams(HEAVIEST_FILLER)}`,
      got,
      hint: `Sizes or the weight are off: ${name} is the heaviest, and ${makes}.`,
    };
  return {
    field: `${name}.densityGcc`,
    rule: `must be at ${isTooLight ? 'most' : 'least'} ${grams(needed)} for the weight to come out`,
    got: `${grams(core.solids[heaviest].density)}: ${got}`,
    hint: `Or a size is off; ${makes}.`,
  };
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
const pounds = (kg: number): string => `${to(kg, POUND).toFixed(1)} lb`;
const grams = (density: number): string => `${to(density, GRAM_PER_CC).toFixed(2)} g/cc`;
