import type { PublishedNumbers } from '../ball/core/published.js';
import type { BallBody } from '../ball/drill/ball-body.js';
import { driller } from '../ball/drill/drill.js';
import { inertiaNumbers } from '../ball/drill/drilled-numbers.js';
import { type Excavation, excavate } from '../ball/drill/excavation.js';
import type { OunceConvention } from '../ball/drill/static-weights.js';
import { from, INCH } from '../base/units.js';
import type { Hole } from '../layout/hole.js';
import { papDirection, placeLayout } from '../layout/placement.js';
import type { Vec3 } from '../math/vec3.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { type Budget, USUAL_BUDGET } from './budget.js';
import { type CoreKind, coresOf } from './cores-of.js';
import type { CoreFitter } from './fit-cores.js';
import { gripHoles } from './grip-holes.js';
import { apart, medianNumbers } from './median-numbers.js';
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
  readonly known: readonly string[];
  /** What speaks for caution with this ball, beyond what holds for any. */
  readonly warnings: readonly string[];
}

/**
 * Turns a ball and a bowler's grip into something that can be drilled.
 *
 * @throws {InputError} `no-such-core` when no core of the ball's family has the published numbers; `bad-core` or
 *   `bad-stl` when its own core cannot be; `grip-impossible` or `layout-impossible` when the holes, or those of an earlier drilling, cannot be placed
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
  const bodies = plugs.length > 0 ? cores.bodies.map((body) => ({ ...body, plugs })) : cores.bodies;
  const pap_B = papDirection(from(bowler.pap.overIn, INCH) / radius, from(bowler.pap.upIn, INCH) / radius);
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
  };
}

/** Orders cores by how near their drilled numbers lie to the ensemble's medians, on the usual middle layout. */
function typicalFirst(bodies: readonly BallBody[], rays: Excavation, pap_B: Vec3): readonly BallBody[] {
  const drilled = bodies.map((body) => {
    const { R_BC } = placeLayout(toLayout(MIDDLE_LAYOUT, body.radius), pap_B);
    return { body, numbers: inertiaNumbers(driller(body, rays)(R_BC)) };
  });
  const median = medianNumbers(drilled.map(({ numbers }) => numbers));
  return drilled
    .map(({ body, numbers }, index) => ({ body, index, off: apart(numbers, median) }))
    .sort((a, b) => a.off - b.off || a.index - b.index)
    .map(({ body }) => body);
}
