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

/** One ball and one grip, made ready to drill: plain data, so that a worker can be handed it. SI. */
export interface BallProblem {
  /** What is published of the ball, or follows from its own core. */
  readonly published: PublishedNumbers;
  readonly pap_B: Vec3;
  readonly holes: readonly Hole[];
  readonly families: readonly CoreKind[];
  /** Differing cores that all have the published numbers, first the one most typical of the usual middle layout; of an own core only it. */
  readonly bodies: readonly BallBody[];
  readonly rankingRays: Excavation;
  readonly reportRays: Excavation;
  /** Arc from the pin to the marker, rad: a quarter of the ball to a mass-bias mark, else as far as the CG. */
  readonly pinToMarker: number;
  /** What the marker is called; null where it lies on the pin: then there is no drilling angle. */
  readonly marker: string | null;
  /** Where holes of earlier drillings lie, which are filled now. */
  readonly oldMouths: readonly OldMouth[];
  readonly ounce: OunceConvention;
  /** What is known of an own core; empty for a fitted one. */
  readonly known: readonly Assumption[];
  /** What speaks for caution with this ball, beyond what holds for any. */
  readonly warnings: readonly Caution[];
}

/**
 * Turns a ball and a bowler's grip into something that can be drilled.
 *
 * @throws {Refusal} when no core has the ball's numbers or its own cannot be (`coresOf`), or when holes cannot be placed
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
    // an assumed grip is not drilled: it stands for the one that is measured
    warnings: [...cores.warnings, ...(bowler.grip ? gripWalls(holes, radius, 'bowler.grip') : [])],
  };
}

/** Orders cores by how near their drilled numbers lie to the ensemble's medians, on the usual middle layout. */
function typicalFirst(bodies: readonly BallBody[], rays: Excavation, pap_B: Vec3): readonly BallBody[] {
  const { R_BC } = placeLayout(toLayout(MIDDLE_LAYOUT, bodies[0].radius), pap_B);
  const drilled = bodies.map((body) => ({ body, numbers: inertiaNumbers(driller(body, rays)(R_BC)) }));
  const median = medianNumbers(drilled.map(({ numbers }) => numbers));
  return drilled
    .map(({ body, numbers }, index) => ({ body, index, off: numbersApart(numbers, median) }))
    .sort((a, b) => a.off - b.off || a.index - b.index)
    .map(({ body }) => body);
}
