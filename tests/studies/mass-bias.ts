import { inertiaNumbers } from '../../src/ball/drill/drilled-numbers.js';
import { DEGREE, INCH, to } from '../../src/base/units.js';
import { arcAngle } from '../../src/math/sphere.js';
import type { Vec3 } from '../../src/math/vec3.js';
import type { Launch } from '../../src/motion/shot/release.js';
import type { Shot } from '../../src/motion/shot/shot.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import {
  type AssumedSurface,
  HIGH_SURFACE,
  NOMINAL_SURFACE,
} from '../../src/simulate/worlds/assumed-surface.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';
import { withMassBias } from './alterations.js';
import { type Case, rigOf } from './case.js';
import { cleanShare } from './clean-share.js';
import { type Numbers, numbersOf } from './quantities.js';

/** How much oil comes back with the ball. */
export const CARRIED = {
  none: { ...NOMINAL_SURFACE, carriedShare: 0 },
  nominal: NOMINAL_SURFACE,
  most: {
    ...NOMINAL_SURFACE,
    carriedShare: HIGH_SURFACE.carriedShare,
    bandWidth: HIGH_SURFACE.bandWidth,
    wornPerPass: 0,
  },
} satisfies Record<string, AssumedSurface>;

/** What a drilled mass bias of some size and direction does, all else kept. */
export interface MassBiasRow {
  readonly biasIn: number;
  /** Arc from the PAP to the nearer end of the high-RG axis, in. */
  readonly papToHighIn: number;
  /** Arc on the ball's surface between the axis at release and at roll start, in. */
  readonly wanderIn: number;
  /** Share of clean cover under the contact, 30 ft to roll start. */
  readonly clean: number;
  readonly reactions: Readonly<Record<keyof typeof CARRIED, Numbers>>;
}

const BIASES_IN = [0.01, 0.02];
const TURNS_DEG = [0, 45, 90, 135];

/** Follows one asymmetric ball whose drilled mass bias is set to several sizes and directions. */
export function massBiasStudy(base: Case, lane: Lane, launch: Launch): readonly MassBiasRow[] {
  const settings = [
    { biasIn: 0, turnDeg: 0 },
    ...BIASES_IN.flatMap((biasIn) => TURNS_DEG.map((turnDeg) => ({ biasIn, turnDeg }))),
  ];
  return settings.map(({ biasIn, turnDeg }) => {
    const rig = rigOf({ ...base, alter: withMassBias(biasIn, turnDeg * DEGREE) }, lane, launch);
    const { radius } = rig.problem.ball.published;
    const numbers = (surface: AssumedSurface) => numbersOf(rig.react({ ...NO_DEVIATIONS, surface }));
    const nominal = rig.shot(NO_DEVIATIONS);
    const end = nominal.rollStart < 0 ? nominal.time.length - 1 : nominal.rollStart;
    const toHigh = arcAngle(inertiaNumbers(rig.drilled).highAxis_B, rig.problem.ball.pap_B);
    return {
      biasIn,
      papToHighIn: to(Math.min(toHigh, Math.PI - toHigh) * radius, INCH),
      wanderIn: to(arcAngle(axisAt(nominal, 0), axisAt(nominal, end)) * radius, INCH),
      clean: cleanShare(nominal),
      reactions: {
        none: numbers(CARRIED.none),
        nominal: numbers(CARRIED.nominal),
        most: numbers(CARRIED.most),
      },
    };
  });
}

const axisAt = ({ axis_B }: Shot, i: number): Vec3 => [axis_B[3 * i], axis_B[3 * i + 1], axis_B[3 * i + 2]];
