import { mean as averageOf } from 'simple-statistics';
import { expect } from 'vitest';
import { type Driller, driller } from '../../../src/ball/drill/drill.js';
import { BOARD } from '../../../src/base/constants.js';
import { DEGREE, FOOT, INCH, OUNCE } from '../../../src/base/units.js';
import type { Layout } from '../../../src/layout/layout.js';
import { placeLayout } from '../../../src/layout/placement.js';
import { boardToX } from '../../../src/motion/lane/boards.js';
import { layOil } from '../../../src/motion/lane/oil.js';
import { surfaceOf } from '../../../src/motion/lane/surface.js';
import { type Reaction, reactionNumbers } from '../../../src/motion/reaction/reaction.js';
import { ANSWER_STEP } from '../../../src/motion/shot/answer-step.js';
import { rollShot } from '../../../src/motion/shot/shot.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import type { SharedId } from '../../../src/records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../../../src/records/text/layout-text.js';
import { score } from '../../../src/search/scoring/score.js';
import type { Target } from '../../../src/search/scoring/target.js';
import { POCKET_BOARD } from '../../../src/simulate/pocket.js';
import type { Setting } from '../../../src/simulate/setting.js';
import { simulator } from '../../../src/simulate/simulator.js';
import type { MixedBall } from '../../../src/simulate/unreal/mixed-ball.js';
import { NOMINAL_SURFACE } from '../../../src/simulate/worlds/assumed-surface.js';
import { frictionOf } from '../../../src/simulate/worlds/friction-of.js';

/*
 * Balls of two layouts at once, mixed and rolled without the engine's own mixing: the check on the causes that reasons name. Drilling,
 * aiming and the shot itself are the engine's; they have oracles of their own. Where a line ends is told, to be looked at.
 */

interface Mixture {
  readonly centreOf: LayoutNumbers;
  readonly inertiaOf: LayoutNumbers;
  readonly carriesOil?: boolean;
  readonly grit?: number;
}

export interface MixedNumbers extends Readonly<Record<SharedId, number>> {
  readonly score: number;
  /** How far from the pocket the shot that was aimed ends. */
  readonly fromPocketBoards: number;
  readonly laydownX: number;
}

/** Prepares to mix balls in the nominal world of a setting, and to roll each on its own line. */
export function ownMixtures({ problem }: Pick<Setting, 'problem'>, targets: readonly Target[]) {
  const { ball, pattern, release } = problem;
  const engine = simulator(problem);
  const { radius } = ball.published;
  const drill: Driller = driller(ball.bodies[0]!, ball.rankingRays);
  const oil = layOil(pattern)(NOMINAL_SURFACE);
  const drilled = (layout: LayoutNumbers) => drill(placeLayout(toLayout(layout, radius), ball.pap_B).R_BC);

  const mixed = ({ centreOf, inertiaOf, carriesOil = true, grit = problem.grit }: Mixture): MixedNumbers => {
    const { mass, I_Bcm_B } = drilled(inertiaOf);
    const body = { mass, I_Bcm_B, p_BoBcm_B: drilled(centreOf).p_BoBcm_B, radius };
    const surface = surfaceOf(oil, frictionOf(pattern, grit, NOMINAL_SURFACE));
    const { bandWidth, carriedShare, wornPerPass } = NOMINAL_SURFACE;
    const settings = {
      step: ANSWER_STEP,
      freshSurface: { bandWidth, carriedShare: carriesOil ? carriedShare : 0, wornPerPass },
    };
    const marked = (layout: LayoutNumbers): Layout => toLayout(layout, radius);
    const played: MixedBall = { centreOf: marked(centreOf), inertiaOf: marked(inertiaOf), carriesOil, grit };
    const { launch } = engine.mixed(played);
    const ends = [0, Math.PI].map((spinPhase) =>
      rollShot(body, { ...release, spinPhase }, launch, surface, settings),
    );
    expect(ends[0]!.outcome).toBe('pins');
    // half a turn farther round it may find the gutter; then the one that was aimed speaks alone
    const reached = ends
      .filter(({ outcome }) => outcome === 'pins')
      .map((shot) => reactionNumbers(shot, radius));
    const mean = (of: (reaction: Reaction) => number): number => averageOf(reached.map(of));
    const reaction = {
      hookStart: mean((r) => r.hookStart),
      sharpness: mean((r) => r.sharpness),
      totalHook: mean((r) => r.totalHook),
      entryAngle: mean((r) => r.entryAngle),
    };
    return {
      hookStartFt: reaction.hookStart / FOOT,
      sharpnessDegPerFt: reaction.sharpness / (DEGREE / FOOT),
      totalHookBoards: reaction.totalHook / BOARD,
      flareIn: mean((r) => r.flare) / INCH,
      score: score({ shot: 'pins', reaction }, targets),
      fromPocketBoards: Math.abs(ends[0]!.x[ends[0]!.x.length - 1]! - boardToX(POCKET_BOARD)) / BOARD,
      laydownX: launch.x,
    };
  };

  /** Moment of a drilled ball over its radius, oz: side, finger, top. */
  const statics = (layout: LayoutNumbers): readonly number[] => {
    const { mass, p_BoBcm_B } = drilled(layout);
    return p_BoBcm_B.map((along) => (mass * along) / radius / OUNCE);
  };
  return { mixed, statics };
}
