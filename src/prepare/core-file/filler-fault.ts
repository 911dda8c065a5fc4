import { GREATEST_DENSITY, HEAVIEST_FILLER, LIGHTEST_FILLER } from '../../ball/core/build.js';
import type { OwnBody, OwnCore } from '../../ball/core/own-body.js';
import { shellMoments, sphereMoments } from '../../ball/drill/ball-body.js';
import { from, GRAM_PER_CC, POUND, to } from '../../base/units.js';
import type { RefusalStatement } from '../../records/refusals/refusal.js';
import type { CorePart } from '../../records/schemas/core.js';
import { partName } from './part-name.js';
import { USUAL_COVER_GCC, USUAL_PART_GCC } from './usual-densities.js';

/** Least density of a part that is worth proposing, kg/m³. */
const LEAST_DENSITY = 300;

/** Cover or part of a core: what it weighs beside the filler. */
interface Weighed {
  readonly name: string;
  readonly density: number; // kg/m³
  readonly volume: number; // m³
  readonly usualGcc: { readonly least: number; readonly most: number };
}

/**
 * What is at fault when no filler makes the weight come out: the density that would mend it, of the cover or part whose own is least
 * usual, or of the part that weighs most; failing that the parts' sizes. Null when the filler is one that is poured.
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

  const weighed = core.solids.map(
    ({ density }, i): Weighed => ({
      name: partName(parts[i], i),
      density,
      volume: own.volumes[i],
      usualGcc: USUAL_PART_GCC,
    }),
  );
  const weights = weighed.map(weightOf);
  const heaviest = weighed[weights.indexOf(Math.max(...weights))];
  const shell = shellMoments({ ...core, radius: own.body.radius, fillerDensity: 0 }).mass;
  const cover: Weighed = {
    name: 'cover',
    density: core.coverDensity,
    volume: shell / core.coverDensity,
    usualGcc: USUAL_COVER_GCC,
  };
  const room = sphereMoments(own.body.radius - core.coverThickness, 1).mass - sum(own.volumes);
  const over = room * (bound - fillerDensity); // excess weight of the core; negative where it is too light
  const needed = (each: Weighed): number => each.density - over / each.volume;

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
  const mends = (each: Weighed): boolean =>
    needed(each) >= LEAST_DENSITY && (isTooLight || needed(each) <= GREATEST_DENSITY);
  const oddness = (each: Weighed): number => oddnessOf(each, isTooLight);
  const [odd] = [cover, ...weighed].filter(mends).sort((a, b) => oddness(b) - oddness(a));
  const suspect = odd && oddness(odd) > 1 ? odd : heaviest;
  if (!mends(suspect)) return { code: 'no-filler', params: { heaviestPart: heaviest.name, ...masses } };
  return {
    code: 'part-density',
    params: {
      part: suspect.name,
      densityGcc: to(suspect.density, GRAM_PER_CC),
      bound: isTooLight ? 'most' : 'least',
      boundGcc: to(needed(suspect), GRAM_PER_CC),
      ...masses,
    },
  };
}

/** How many times denser than usual something is, where too much weighs on the filler, or how many times lighter; 1 or less is usual. */
const oddnessOf = ({ density, usualGcc: { least, most } }: Weighed, isTooHeavy: boolean): number =>
  isTooHeavy ? density / from(most, GRAM_PER_CC) : from(least, GRAM_PER_CC) / density;

const weightOf = ({ density, volume }: Weighed): number => density * volume;

const sum = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0);
