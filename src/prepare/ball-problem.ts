import type { PublishedNumbers } from '../ball/core/published.js';
import type { BallBody } from '../ball/drill/ball-body.js';
import { driller } from '../ball/drill/drill.js';
import { inertiaNumbers } from '../ball/drill/drilled-numbers.js';
import { type Excavation, excavate } from '../ball/drill/excavation.js';
import { fillHoles } from '../ball/drill/fill-holes.js';
import type { OunceConvention } from '../ball/drill/static-weights.js';
import { from, INCH } from '../base/units.js';
import type { Hole } from '../layout/hole.js';
import { placeLayout } from '../layout/placement.js';
import { ballPoint } from '../math/ball-point.js';
import type { Vec3 } from '../math/vec3.js';
import type { Assumption } from '../records/answers/statements/assumptions.js';
import type { Caution } from '../records/answers/statements/cautions.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { type Budget, USUAL_BUDGET } from './budget.js';
import { type CoreKind, coresOf } from './cores-of.js';
import type { CoreFitter } from './fit-cores.js';
import { gripHoles } from './grip-holes.js';
import { gripWalls } from './grip-walls.js';
import { medianNumbers, numbersApart } from './median-numbers.js';
import { MIDDLE_LAYOUT } from './middle-layout.js';
import { type OldMouth, oldHoles } from './old-holes.js';
import { toLayout } from './to-layout.js';

/** One ball and one grip, ready to drill, as plain data that can be passed to a worker. SI. */
export interface BallProblem {
  /** The ball's published numbers, or those that follow from its own core. */
  readonly published: PublishedNumbers;
  readonly pap_B: Vec3;
  readonly holes: readonly Hole[];
  readonly families: readonly CoreKind[];
  /** Different cores that all give the published numbers, the most typical for the usual middle layout first; only one if its own core is known. */
  readonly bodies: readonly BallBody[];
  readonly rankingRays: Excavation;
  readonly reportRays: Excavation;
  /** Arc from the pin to the marker, rad: a quarter of the ball to a mass-bias mark, else as far as the CG. */
  readonly pinToMarker: number;
  /** Name of the marker; null where it lies on the pin, so that there is no drilling angle. */
  readonly marker: string | null;
  /** The mouths of earlier drillings' holes, which are filled now. */
  readonly oldMouths: readonly OldMouth[];
  readonly ounce: OunceConvention;
  /** Facts about the ball's own core; empty for a fitted one. */
  readonly known: readonly Assumption[];
  /** Warnings about this ball, in addition to those for any ball. */
  readonly warnings: readonly Caution[];
}

/**
 * Prepares a ball and a bowler's grip for drilling.
 *
 * @throws {Refusal} when no core has the ball's numbers or its own core is impossible (`coresOf`), or when holes cannot be placed
 *   (`gripHoles`, `gripWalls`, `oldHoles`)
 */
export function ballProblem(
  ball: Ball,
  bowler: Bowler,
  ounce: OunceConvention,
  fitter?: CoreFitter,
  { cores: count, rays }: Pick<Budget, 'cores' | 'rays'> = USUAL_BUDGET,
): BallProblem {
  const { numbers, ...cores } = coresOf(ball, bowler.hand, ounce, count, fitter);
  const { radius } = numbers;
  const holes = gripHoles(bowler, radius);
  const { plugs, mouths } = oldHoles(ball, bowler.hand, radius, cores.pinToMarker);
  const bodies = cores.bodies.map((body) => fillHoles(body, plugs));
  const pap_B = ballPoint(from(bowler.pap.overIn, INCH) / radius, from(bowler.pap.upIn, INCH) / radius);
  const rankingRays = excavate(holes, radius, rays.ranking);
  return {
    ...cores,
    published: numbers,
    pap_B,
    holes,
    bodies: typicalFirst(bodies, rankingRays, pap_B),
    rankingRays,
    reportRays: excavate(holes, radius, rays.report),
    oldMouths: mouths,
    ounce,
    // no warnings about an assumed grip, since it is not drilled
    warnings: [...cores.warnings, ...(bowler.grip ? gripWalls(holes, radius, 'bowler.grip') : [])],
  };
}

/** Cores in order of how near their drilled numbers are to the medians of all, with the usual middle layout. */
function typicalFirst(bodies: readonly BallBody[], rays: Excavation, pap_B: Vec3): readonly BallBody[] {
  const { R_BC } = placeLayout(toLayout(MIDDLE_LAYOUT, bodies[0].radius), pap_B);
  const drilled = bodies.map((body) => ({ body, numbers: inertiaNumbers(driller(body, rays)(R_BC)) }));
  const median = medianNumbers(drilled.map(({ numbers }) => numbers));
  return drilled
    .map(({ body, numbers }, index) => ({ body, index, off: numbersApart(numbers, median) }))
    .sort((a, b) => a.off - b.off || a.index - b.index)
    .map(({ body }) => body);
}
