import { GREATEST_DENSITY, HEAVIEST_FILLER, LIGHTEST_FILLER } from '../../ball/core/build.js';
import type { OwnBody, OwnCore } from '../../ball/core/own-body.js';
import { shellMoments, sphereMoments } from '../../ball/drill/ball-body.js';
import { GRAM_PER_CC, POUND, to } from '../../base/units.js';
import type { RefusalStatement } from '../../records/refusals/refusal.js';
import type { CorePart } from '../../records/schemas/core.js';
import { partName } from './part-name.js';

/** Least density of a part that is worth proposing, kg/m³. */
const LEAST_DENSITY = 300;

/**
 * What is at fault when no filler makes the weight come out: the density, of the part that weighs most, that
 * would mend it; failing that the parts' sizes. Null when the filler is one that is poured.
 */
export function fillerFault(
  own: OwnBody,
  core: OwnCore,
  parts: readonly CorePart[],
): RefusalStatement | null {
  const { fillerDensity } = own.body;
  if (fillerDensity >= LIGHTEST_FILLER && fillerDensity <= HEAVIEST_FILLER) return null;
  const isTooLight = fillerDensity < LIGHTEST_FILLER;
  const bound = isTooLight ? LIGHTEST_FILLER : HEAVIEST_FILLER;

  const weights = core.solids.map(({ density }, i) => density * own.volumes[i]);
  const heaviest = weights.indexOf(Math.max(...weights));
  const shell = shellMoments({ ...core, radius: own.body.radius, fillerDensity: 0 }).mass;
  const room = sphereMoments(own.body.radius - core.coverThickness, 1).mass - sum(own.volumes);
  const over = room * (bound - fillerDensity); // excess weight of the core; negative where it is too light
  const needed = (weights[heaviest] - over) / own.volumes[heaviest];

  const made = shell + sum(weights);
  const masses = {
    coverLb: to(shell, POUND),
    coreLb: to(sum(weights), POUND),
    fillerLb: to(room * fillerDensity, POUND),
    fillerGcc: to(fillerDensity, GRAM_PER_CC),
    leastFillerGcc: to(LIGHTEST_FILLER, GRAM_PER_CC),
    mostFillerGcc: to(HEAVIEST_FILLER, GRAM_PER_CC),
    leastBallLb: to(made + room * LIGHTEST_FILLER, POUND),
    mostBallLb: to(made + room * HEAVIEST_FILLER, POUND),
  };
  const part = partName(parts[heaviest], heaviest);
  if (needed < LEAST_DENSITY || (needed > GREATEST_DENSITY && !isTooLight))
    return { code: 'no-filler', params: { heaviestPart: part, ...masses } };
  return {
    code: 'part-density',
    params: {
      part,
      densityGcc: to(core.solids[heaviest].density, GRAM_PER_CC),
      bound: isTooLight ? 'most' : 'least',
      boundGcc: to(needed, GRAM_PER_CC),
      ...masses,
    },
  };
}

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
