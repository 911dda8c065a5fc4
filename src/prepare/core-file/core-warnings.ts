import type { PublishedNumbers } from '../../ball/core/published.js';
import type { InertiaNumbers } from '../../ball/drill/drilled-numbers.js';
import { staticLever } from '../../ball/drill/static-weights.js';
import { from, GRAM_PER_CC, INCH, OUNCE, to } from '../../base/units.js';
import { norm, type Vec3 } from '../../math/vec3.js';
import type { OwnCoreBall } from '../../records/schemas/ball.js';
import { hasMassBias, LEAST_MASS_BIAS_IN } from '../../records/schemas/core-families.js';
import { loadRuleSet } from '../../records/shared/rules.js';
import { partName } from './part-name.js';

/** A ball around an own core, and what was worked out about it. */
export interface OwnFacts {
  readonly ball: OwnCoreBall;
  readonly numbers: PublishedNumbers;
  readonly inertia: InertiaNumbers;
  readonly p_BoBcm_C: Vec3; // m
  readonly fillerDensity: number; // kg/m³
}

/** What of an own core is worth a warning though it can be computed with. */
export const coreWarnings = (facts: OwnFacts): string[] => [
  ...densityWarnings(facts),
  ...markWarnings(facts),
  ...centreWarnings(facts),
  ...madeWarnings(facts),
  ...comparisons(facts),
];

/** Greatest density of a part, g/cc (component rule, from memory). */
const MOST_DENSITY_GCC = 3.8;

const densityWarnings = ({ ball }: OwnFacts): string[] =>
  ball.coreFile.core.parts.flatMap((part, i) =>
    part.densityGcc > MOST_DENSITY_GCC
      ? [
          `${partName(part, i)} of the core has ${part.densityGcc} g/cc, outside the sport's component rule, which allows up to ${MOST_DENSITY_GCC.toFixed(2)} g/cc.`,
        ]
      : [],
  );

/** How far an axis may lie from its mark, in (USBC equipment news, in force 31 Jan 2012). */
const PIN_RULE_IN = 1;
const MASS_BIAS_RULE_IN = 1.5;
/** Two radii of gyration that differ by less leave their axes uncertain, m. */
const CERTAIN = from(LEAST_MASS_BIAS_IN, INCH);

/** Axes that lie off the marks that stand for them; either end of an axis counts. */
function markWarnings({ numbers, inertia }: OwnFacts): string[] {
  const { radius, differential, intermediateDifferential } = numbers;
  const offIn = ([x, y, z]: Vec3): number => to(radius * Math.atan2(Math.hypot(x, y), Math.abs(z)), INCH);
  const warn = (axis: string, mark: string, distance: number, allowed: number): string[] =>
    distance > allowed
      ? [
          `Before drilling the core's ${axis} axis lies ${distance.toFixed(1)} in from the ${mark}; the sport's marking rule allows ${allowed.toFixed(1)} in.`,
        ]
      : [];
  const [x, y, z] = inertia.highAxis_B;
  return [
    ...(differential - intermediateDifferential >= CERTAIN
      ? warn('low-RG', 'pin', offIn(inertia.lowAxis_B), PIN_RULE_IN)
      : []),
    ...(intermediateDifferential >= CERTAIN
      ? warn('high-RG', 'marker', offIn([y, z, x]), MASS_BIAS_RULE_IN)
      : []),
  ];
}

/** How far the CG may lie beside the line from pin to marker, in: about what a mark is off by hand (our own choice). */
const CENTRE_ASIDE_IN = 0.5;

/** Of a symmetric ball the drilling angle is usually measured to the CG mark; here it goes to the marker. */
function centreWarnings({ numbers, p_BoBcm_C }: OwnFacts): string[] {
  const asideIn = to(numbers.radius * Math.asin(Math.abs(p_BoBcm_C[1]) / norm(p_BoBcm_C)), INCH);
  return !hasMassBias(numbers.family) && asideIn > CENTRE_ASIDE_IN
    ? [
        `The CG lies ${asideIn.toFixed(1)} in beside the line from pin to marker. Drilling angles are measured to the marker, not to the CG.`,
      ]
    : [];
}

/** Numbers outside what the sport allows of balls as made. */
function madeWarnings({ numbers }: OwnFacts): string[] {
  const { rgIn, mostDifferentialIn } = loadRuleSet().asManufactured;
  const rg = to(numbers.lowRg, INCH);
  const differential = to(numbers.differential, INCH);
  return [
    ...(rg < rgIn.least || rg > rgIn.most
      ? [
          `The core gives the undrilled ball an RG of ${rg.toFixed(3)} in; made balls must have ${rgIn.least.toFixed(2)} to ${rgIn.most.toFixed(2)} in.`,
        ]
      : []),
    ...(differential > mostDifferentialIn
      ? [
          `The core gives the undrilled ball a differential of ${differential.toFixed(3)} in; made balls may have up to ${mostDifferentialIn.toFixed(3)} in.`,
        ]
      : []),
  ];
}

/**
 * Numbers told beside the core that it does not bear out. Beyond reason: more than made balls scatter about their
 * design (3 %: a USBC research note) and scales and tapes err.
 */
function comparisons({ ball, numbers, fillerDensity }: OwnFacts): string[] {
  const { coreFile, rgIn, differentialIn, intermediateDifferentialIn, pinToCgIn, topWeightOz } = ball;
  const compare = (
    what: string,
    told: number | undefined,
    found: number,
    reason: number,
    digits: number,
    unit: string,
  ): string[] =>
    told !== undefined && Math.abs(told - found) > reason
      ? [
          `The core gives ${what} of ${found.toFixed(digits)} ${unit}, and the file says ${told} ${unit}. The core is what is computed with.`,
        ]
      : [];
  const differential = to(numbers.differential, INCH);
  const slack = Math.max(0.003, 0.06 * differential);
  return [
    ...compare('an RG', rgIn, to(numbers.lowRg, INCH), 0.02, 3, 'in'),
    ...compare('a differential', differentialIn, differential, slack, 3, 'in'),
    ...compare(
      'an intermediate differential',
      intermediateDifferentialIn,
      to(numbers.intermediateDifferential, INCH),
      slack,
      3,
      'in',
    ),
    ...compare('a pin-to-CG', pinToCgIn, to(numbers.pinToCg * numbers.radius, INCH), 0.75, 1, 'in'),
    ...compare(
      'a top weight',
      topWeightOz,
      to(numbers.topMoment / staticLever(numbers.radius, 'moment'), OUNCE),
      1,
      1,
      'oz',
    ),
    ...compare('a filler', coreFile.core.fillerDensityGcc, to(fillerDensity, GRAM_PER_CC), 0.05, 2, 'g/cc'),
  ];
}
