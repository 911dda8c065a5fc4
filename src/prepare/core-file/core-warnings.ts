import { GREATEST_DENSITY } from '../../ball/core/build.js';
import type { PublishedNumbers } from '../../ball/core/published.js';
import type { InertiaNumbers } from '../../ball/drill/drilled-numbers.js';
import { staticLever } from '../../ball/drill/static-weights.js';
import { toDigits } from '../../base/decimals.js';
import { from, GRAM_PER_CC, INCH, OUNCE, to } from '../../base/units.js';
import { asin, atan2 } from '../../math/atan.js';
import { hypot } from '../../math/hypot.js';
import { mulVec, transpose } from '../../math/mat3.js';
import { dot, norm, unit, type Vec3 } from '../../math/vec3.js';
import type { Caution } from '../../records/answers/statements/cautions.js';
import { type OwnCoreBall, publishedBallSchema } from '../../records/schemas/ball.js';
import { coreDirections } from '../../records/schemas/core.js';
import { hasMassBias, LEAST_MASS_BIAS_IN } from '../../records/schemas/core-families.js';
import { loadRuleSet } from '../../records/shared/rules.js';
import { coreFrame } from './core-pose.js';
import { partName } from './part-name.js';
import { USUAL_PART_GCC } from './usual-densities.js';

/** A ball around its own core, and the numbers computed for it. */
interface OwnFacts {
  readonly ball: OwnCoreBall;
  readonly numbers: PublishedNumbers;
  readonly inertia: InertiaNumbers;
  readonly p_BoBcm_C: Vec3; // m
  readonly fillerDensity: number; // kg/m³
  /** Whether C is the core's mirror image, as for a left-hander's ball. */
  readonly mirrored: boolean;
}

/** Warnings about a core that can be computed all the same. */
export const coreWarnings = (facts: OwnFacts): Caution[] => [
  ...lightWarnings(facts),
  ...densityWarnings(facts),
  ...markWarnings(facts),
  ...centreWarnings(facts),
  ...topHeavyWarnings(facts),
  ...madeWarnings(facts),
  ...comparisons(facts),
];

/** How much denser than the filler a part must be to matter. */
const LEAST_OVER_FILLER = 1.25;

/** A core that is no denser than what is around it, as when densities were typed in another unit. */
function lightWarnings({ ball, fillerDensity }: OwnFacts): Caution[] {
  const densestGcc = Math.max(...ball.coreFile.core.parts.map(({ densityGcc }) => densityGcc));
  const fillerGcc = to(fillerDensity, GRAM_PER_CC);
  return densestGcc < LEAST_OVER_FILLER * fillerGcc
    ? [{ code: 'core-light', params: { densestGcc, fillerGcc, usualGcc: USUAL_PART_GCC } }]
    : [];
}

const MOST_DENSITY_GCC = to(GREATEST_DENSITY, GRAM_PER_CC);

const densityWarnings = ({ ball }: OwnFacts): Caution[] =>
  ball.coreFile.core.parts
    .map((part, i) => ({ part: partName(part, i), densityGcc: part.densityGcc, mostGcc: MOST_DENSITY_GCC }))
    .filter(({ densityGcc, mostGcc }) => densityGcc > mostGcc)
    .map((params) => ({ code: 'part-too-dense', params }));

/** How far an axis may lie from its mark, in (USBC equipment news, in force 31 Jan 2012). */
const PIN_RULE_IN = 1;
const MASS_BIAS_RULE_IN = 1.5;
/** Two radii of gyration that differ by less leave their axes uncertain, m. */
const CERTAIN = from(LEAST_MASS_BIAS_IN, INCH);

/** Axes that lie off the marks that stand for them; either end of an axis counts. */
function markWarnings({ ball, numbers, inertia, mirrored }: OwnFacts): Caution[] {
  const { radius, differential, intermediateDifferential } = numbers;
  const { core } = ball.coreFile;
  const { pin, marker } = coreDirections(core);
  const R_FC = transpose(coreFrame(core, mirrored));
  /** The end of an axis on its mark's side, in the core file's directions; where it is square to the mark, the positive end. */
  const inFile = (axis_C: Vec3, mark_F: Vec3): number[] => {
    const [x, y, z] = mulVec(R_FC, axis_C);
    const toward = toDigits(dot([x, y, z], unit(mark_F)), 2) || x + y + z;
    const sense = toward < 0 ? -1 : 1;
    return [toDigits(sense * x, 2), toDigits(sense * y, 2), toDigits(sense * z, 2)];
  };
  const offIn = ([x, y, z]: Vec3): number => to(radius * atan2(hypot(x, y), Math.abs(z)), INCH);
  const [x, y, z] = inertia.highAxis_B;
  const low = {
    axis: 'low-rg' as const,
    offIn: offIn(inertia.lowAxis_B),
    mostIn: PIN_RULE_IN,
    along: inFile(inertia.lowAxis_B, pin),
    marked: [...pin],
  };
  const high = {
    axis: 'high-rg' as const,
    offIn: offIn([y, z, x]),
    mostIn: MASS_BIAS_RULE_IN,
    along: inFile(inertia.highAxis_B, marker),
    marked: [...marker],
  };
  return [
    ...(differential - intermediateDifferential >= CERTAIN ? [low] : []),
    ...(intermediateDifferential >= CERTAIN ? [high] : []),
  ]
    .filter((params) => params.offIn > params.mostIn)
    .map((params) => ({ code: 'axis-off-mark', params }));
}

/** How far the CG may lie beside the line from pin to marker, in: about what a mark is off by hand (our own choice). */
const CENTRE_ASIDE_IN = 0.5;
/** Top weight from which on it matters where the CG lies, oz (our own choice). */
const TOP_WEIGHT_OZ = 0.5;

/** More top weight than a ball's record may have; and what is usual, oz (common practice, no source). */
const MOST_TOP_WEIGHT_OZ = publishedBallSchema.shape.topWeightOz.maxValue ?? Number.POSITIVE_INFINITY;
const USUAL_TOP_WEIGHT_OZ = { least: 2, most: 4 };

/** More top weight than balls are made with, as when a core was shifted twice or not at all. */
function topHeavyWarnings({ numbers: { radius, topMoment } }: OwnFacts): Caution[] {
  const topWeightOz = to(topMoment / radius, OUNCE);
  return topWeightOz > MOST_TOP_WEIGHT_OZ
    ? [{ code: 'core-top-heavy', params: { topWeightOz, usualOz: USUAL_TOP_WEIGHT_OZ } }]
    : [];
}

/**
 * A CG on the far side of the ball from the pin, as when a core stands upside down; and for a symmetric ball, whose drilling angle is
 * usually measured to the CG mark, a CG away from the marker, or beside it.
 */
function centreWarnings({ numbers, p_BoBcm_C: p }: OwnFacts): Caution[] {
  const { radius, pinToCg, topMoment } = numbers;
  if (to(topMoment / radius, OUNCE) < TOP_WEIGHT_OZ) return [];
  if (pinToCg > Math.PI / 2)
    return [{ code: 'core-upside-down', params: { pinToCgIn: to(pinToCg * radius, INCH) } }];
  if (hasMassBias(numbers.family)) return [];
  const offPinIn = to(radius * pinToCg, INCH);
  if (p[0] < 0 && offPinIn > CENTRE_ASIDE_IN) return [{ code: 'marker-turned', params: { offPinIn } }];
  const asideIn = to(radius * asin(Math.abs(p[1]) / norm(p)), INCH);
  return asideIn > CENTRE_ASIDE_IN ? [{ code: 'cg-beside-line', params: { asideIn } }] : [];
}

/** Numbers outside what the sport allows for undrilled balls. */
function madeWarnings({ numbers }: OwnFacts): Caution[] {
  const { rgIn: allowedIn, mostDifferentialIn: mostIn } = loadRuleSet().asManufactured;
  const rgIn = to(numbers.lowRg, INCH);
  const differentialIn = to(numbers.differential, INCH);
  const warnings: Caution[] = [];
  if (rgIn < allowedIn.least || rgIn > allowedIn.most)
    warnings.push({ code: 'rg-not-as-made', params: { rgIn, allowedIn } });
  if (differentialIn > mostIn)
    warnings.push({ code: 'differential-not-as-made', params: { differentialIn, mostIn } });
  return warnings;
}

/**
 * Numbers in the record that do not agree with the core: they differ by more than the scatter of manufacture (3 %: a USBC research note)
 * and the errors of scales and tapes explain.
 */
function comparisons({ ball, numbers, fillerDensity }: OwnFacts): Caution[] {
  const { coreFile, rgIn, differentialIn, intermediateDifferentialIn, pinToCgIn, topWeightOz } = ball;
  const compare = (
    number: BesideCore,
    inFile: number | undefined,
    ofCore: number,
    slack: number,
  ): Caution[] =>
    inFile !== undefined && Math.abs(inFile - ofCore) > slack
      ? [{ code: 'core-against-file', params: { number, ofCore, inFile } }]
      : [];
  const differential = to(numbers.differential, INCH);
  const intermediate = to(numbers.intermediateDifferential, INCH);
  const topWeight = to(numbers.topMoment / staticLever(numbers.radius, 'moment'), OUNCE);
  const slack = Math.max(0.003, 0.06 * differential);
  return [
    ...compare('rgIn', rgIn, to(numbers.lowRg, INCH), 0.02),
    ...compare('differentialIn', differentialIn, differential, slack),
    ...compare('intermediateDifferentialIn', intermediateDifferentialIn, intermediate, slack),
    ...compare('pinToCgIn', pinToCgIn, to(numbers.pinToCg * numbers.radius, INCH), 0.75),
    ...compare('topWeightOz', topWeightOz, topWeight, 1),
    ...compare('fillerDensityGcc', coreFile.core.fillerDensityGcc, to(fillerDensity, GRAM_PER_CC), 0.05),
  ];
}

type BesideCore = Extract<Caution, { code: 'core-against-file' }>['params']['number'];
