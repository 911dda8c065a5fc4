import { type DenseSolid, type OwnCore, ownBody } from '../ball/core/own-body.js';
import type { PublishedNumbers } from '../ball/core/published.js';
import { type BallBody, bodyMoments } from '../ball/drill/ball-body.js';
import { type InertiaNumbers, inertiaNumbers } from '../ball/drill/drilled-numbers.js';
import { fromMoments } from '../ball/mass/mass-properties.js';
import { solidMoments } from '../ball/solid/layered-core.js';
import { from, GRAM_PER_CC, INCH, OUNCE, POUND, to } from '../base/units.js';
import { atan2 } from '../math/atan.js';
import { hypot } from '../math/hypot.js';
import { norm, type Vec3 } from '../math/vec3.js';
import type { Assumption } from '../records/answers/statements/assumptions.js';
import type { Caution } from '../records/answers/statements/cautions.js';
import { Refusal } from '../records/refusals/refusal.js';
import { type OwnCoreBall, USUAL_CIRCUMFERENCE_IN } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { LEAST_MASS_BIAS_IN } from '../records/schemas/core-families.js';
import { LENGTH } from './core-file/core-pose.js';
import { coreRoom } from './core-file/core-room.js';
import { coreWarnings } from './core-file/core-warnings.js';
import { fillerFault } from './core-file/filler-fault.js';
import { partDoubts } from './core-file/part-doubts.js';
import { placeParts } from './core-file/place-parts.js';

/** A ball around a core that a file describes. */
export interface OwnBall {
  /** The numbers that a maker would publish; the family only shows whether there is a mass bias. */
  readonly numbers: PublishedNumbers;
  readonly body: BallBody;
  /** Radii of gyration and their axes, in C. */
  readonly inertia: InertiaNumbers;
  readonly p_BoBcm_C: Vec3; // m
  /** Volume of each part that no later part covers, m³, and its share of the part's volume. */
  readonly volumes: readonly number[];
  readonly shares: readonly number[];
  /** What is known of the core, and what follows from it. */
  readonly known: readonly Assumption[];
  readonly warnings: readonly Caution[];
}

/** The parts of a core file in their places, and the ball they make, or why they make none. */
interface ExaminedCore {
  readonly radius: number; // of the ball, m
  readonly coverThickness: number; // m
  /** In C, in their order. */
  readonly solids: readonly DenseSolid[];
  readonly made: OwnBall | Refusal;
}

/**
 * Builds the ball around its own core.
 *
 * @throws {Refusal} with every fault of its parts, or of its filler; as `readStl` does
 */
export function ownBall(ball: OwnCoreBall, hand: Bowler['hand']): OwnBall {
  const { made } = examineCore(ball, hand);
  if (made instanceof Refusal) throw made;
  return made;
}

/**
 * Places the parts of a core, and builds the ball around them where they make one.
 *
 * @param hand  a left-hander's ball is computed as its mirror image, and a core need not be symmetric
 * @throws {Refusal} as `readStl` does
 */
export function examineCore(ball: OwnCoreBall, hand: Bowler['hand']): ExaminedCore {
  const { core, path } = ball.coreFile;
  const radius = from(ball.circumferenceIn ?? USUAL_CIRCUMFERENCE_IN, INCH) / (2 * Math.PI);
  const mirrored = hand === 'left';
  const placed = placeParts(ball.coreFile, mirrored);
  const room = coreRoom(core, placed.solids, radius);
  const described: OwnCore = {
    coverThickness: from(core.cover.thickness, LENGTH[core.unit]),
    coverDensity: from(core.cover.densityGcc, GRAM_PER_CC),
    solids: placed.solids,
  };
  const { coverThickness, solids } = described;
  const examined = (made: ExaminedCore['made']): ExaminedCore => ({ radius, coverThickness, solids, made });

  const faults = [...placed.faults, ...room.faults];
  if (faults.length > 0) return examined(new Refusal(faults, path));
  const own = ownBody(described, radius, from(ball.weightLb, POUND));
  const unfilled = fillerFault(own, described, core.parts);
  if (unfilled) return examined(new Refusal([unfilled], path));

  const { body, volumes } = own;
  const { fillerDensity } = body;
  const { numbers, inertia, p_BoBcm_C } = numbersOf(body);
  const shares = solids.map((solid, i) => volumes[i] / solidMoments(solid).mass);
  return examined({
    numbers,
    body,
    inertia,
    p_BoBcm_C,
    volumes,
    shares,
    known: knownOf(ball, numbers, fillerDensity),
    warnings: [
      ...room.warnings,
      ...placed.warnings,
      ...partDoubts(core.parts, solids, shares),
      ...coreWarnings({ ball, numbers, inertia, p_BoBcm_C, fillerDensity, mirrored }),
    ],
  });
}

/** Less top weight than this is none, kg: no scale shows it, and rounding alone may put such a CG anywhere (our own choice). */
const LEAST_TOP_WEIGHT = from(0.05, OUNCE);

/** What would be published of a ball, from its body. A CG at the ball's centre counts as on the pin. */
function numbersOf(body: BallBody): {
  readonly numbers: PublishedNumbers;
  readonly inertia: InertiaNumbers;
  readonly p_BoBcm_C: Vec3; // m
} {
  const whole = fromMoments(bodyMoments(body));
  const { mass, p_BoBcm_B: p } = whole;
  const inertia = inertiaNumbers(whole);
  const { lowRg, differential, intermediateDifferential } = inertia;
  const topMoment = mass * norm(p);
  const isCentred = topMoment / body.radius < LEAST_TOP_WEIGHT;
  return {
    numbers: {
      mass,
      radius: body.radius,
      lowRg,
      differential,
      intermediateDifferential,
      pinToCg: isCentred ? 0 : atan2(hypot(p[0], p[1]), p[2]),
      topMoment: isCentred ? 0 : topMoment,
      family: intermediateDifferential > from(LEAST_MASS_BIAS_IN, INCH) ? 'asymmetric' : 'plain',
    },
    inertia,
    p_BoBcm_C: p,
  };
}

/** What is known of the core: what its file says, and what follows from it. */
const knownOf = (
  { coreFile: { core }, weightLb }: OwnCoreBall,
  numbers: PublishedNumbers,
  fillerDensity: number,
): Assumption[] => [
  { code: 'own-core', params: { name: core.name, parts: core.parts.length } },
  {
    code: 'own-core-cover',
    params: {
      thickness: core.cover.thickness,
      unit: core.unit,
      coverGcc: core.cover.densityGcc,
      fillerGcc: to(fillerDensity, GRAM_PER_CC),
      weightLb,
    },
  },
  {
    code: 'own-core-marks',
    params: {
      topWeightOz: to(numbers.topMoment / numbers.radius, OUNCE),
      pinToCgIn: to(numbers.pinToCg * numbers.radius, INCH),
    },
  },
];
