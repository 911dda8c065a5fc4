import { driller } from '../ball/drill/drill.js';
import { type InertiaNumbers, inertiaNumbers } from '../ball/drill/drilled-numbers.js';
import { type StaticWeights, staticWeights } from '../ball/drill/static-weights.js';
import type { MassProperties } from '../ball/mass/mass-properties.js';
import { oncePer } from '../base/once-per.js';
import type { Layout } from '../layout/layout.js';
import { placeLayout } from '../layout/placement.js';
import { asin } from '../math/atan.js';
import { ballPoint, overAndUp } from '../math/ball-point.js';
import type { Vec3 } from '../math/vec3.js';
import type { FreshSurface } from '../motion/lane/fresh-surface.js';
import type { Surface } from '../motion/lane/surface.js';
import { meanReaction, type Reaction, reactionNumbers } from '../motion/reaction/reaction.js';
import { leastClearance } from '../motion/reaction/rings.js';
import { ANSWER_STEP } from '../motion/shot/answer-step.js';
import type { RollingBody } from '../motion/shot/body.js';
import { Lender } from '../motion/shot/lender.js';
import type { Launch, Release } from '../motion/shot/release.js';
import { type LeanShot, rollLeanShot, rollShot, type Shot } from '../motion/shot/shot.js';
import { oiledSurface } from './oiled-surface.js';
import { ownLines } from './own-line.js';
import { isAtPocket } from './pocket.js';
import type { ShotProblem } from './shot-problem.js';
import { type AlteredBall, withInertiaNumber } from './unreal/altered-ball.js';
import type { MixedBall } from './unreal/mixed-ball.js';
import type { AssumedSurface } from './worlds/assumed-surface.js';
import type { Deviations } from './worlds/deviations.js';
import { asMade } from './worlds/made-ball.js';

/** What one layout does in one world: numbers only, cheap to send between threads. SI. */
export interface Outcome {
  /** The line that was played, before the world's scatter. */
  readonly launch: Launch;
  readonly shot: Shot['outcome'];
  readonly inertia: InertiaNumbers;
  readonly statics: StaticWeights;
  readonly reaction: Reaction;
  /** Least distance along the surface from any ring to any hole's edge, m; negative when a ring crosses one. */
  readonly ringClearance: number;
  /** Whether the shot that lines are aimed by, the nominal one as it leaves the hand at phase 0, came to the pocket; the mean may lie beside it. */
  readonly reachesPocket: boolean;
}

/** Simulates shots of one problem. Holds prepared balls and lanes; each worker makes its own. */
export interface Simulator {
  /** Everything that a shot with a layout in a world depends on, except the line. */
  inputs(layout: Layout, deviations: Deviations): WorldInputs;
  shot(layout: Layout, deviations: Deviations, launch: Launch): RolledShot;
  /** A layout's nominal shot on its own line, the one that brings it to the pocket. @param near  a line near it, if known */
  ownShot(layout: Layout, near?: Launch): RolledShot;
  /** The numbers of a shot. */
  read(rolled: RolledShot): Outcome;
  /** The numbers of a shot from a launch, or on the layout's own line if none is given. @param near  a line near that */
  outcome(layout: Layout, deviations: Deviations, launch?: Launch, near?: Launch): Outcome;
  /** The numbers of the nominal shot of a virtual ball, on its own line. */
  mixed(ball: MixedBall, near?: Launch): Outcome;
  /** The numbers of a shot of another virtual ball from a given launch. */
  altered(ball: AlteredBall, deviations: Deviations, launch: Launch): Outcome;
}

/** Everything that a shot depends on, except the line. SI. */
export interface WorldInputs {
  readonly body: RollingBody;
  readonly release: Release;
  readonly surface: Surface;
  readonly freshSurface: FreshSurface;
}

/** A shot with the drilled ball that rolled it. */
export interface RolledShot {
  readonly launch: Launch;
  readonly shot: LeanShot;
  readonly ball: MassProperties;
  /** Rolls it again for samples with all columns. */
  readonly full: () => Shot;
  /**
   * Rolls the same shot with the ball turned half a turn farther about its axis at release; null in a world that draws its spin
   * phase. The mean of both is the mean over all phases, since the effect of an offset centre of mass swings once a turn.
   */
  readonly opposite: (() => LeanShot) | null;
}

/** Prepares to simulate shots of a problem, whose first world is the nominal one. */
export function simulator(problem: ShotProblem): Simulator {
  const { ball, release, pattern } = problem;
  const [nominal] = problem.worlds;
  const { radius } = ball.published;
  const surfaceIn = oncePer((world: AssumedSurface) => oiledSurface(pattern, problem.grit, world));
  const lender = new Lender();

  const drilled = (layout: Layout, deviations: Deviations): MassProperties => {
    const { R_BC } = placeLayout(markedLayout(layout, deviations), ball.pap_B);
    const drill = driller(ball.bodies[deviations.body], ball.rankingRays);
    return asMade(drill(R_BC), R_BC, ball.published, deviations.made);
  };

  const inputs = (layout: Layout, deviations: Deviations): WorldInputs => ({
    body: { ...drilled(layout, deviations), radius },
    release: {
      ...release,
      speed: release.speed + deviations.speed,
      spin: Math.max(0, release.spin + deviations.spin),
      axisTilt: Math.max(0, release.axisTilt + deviations.axisTilt),
      axisRotation: release.axisRotation + deviations.axisRotation,
      pap_B: truePap(ball.pap_B, deviations),
      spinPhase: deviations.spinPhase ?? 0,
    },
    surface: surfaceIn(deviations.surface),
    freshSurface: deviations.surface,
  });

  /** Makes a ball ready to roll in a world, from any launch. Each shot has columns of its own, or lent ones. */
  const rolling = (
    { body, release: scattered, surface, freshSurface }: WorldInputs,
    deviations: Deviations,
    lent?: Lender,
  ): ((launch: Launch) => RolledShot) => {
    const settings = { step: ANSWER_STEP, freshSurface };
    return (launch) => {
      const played = scatteredLaunch(launch, deviations);
      const opposite = () =>
        rollLeanShot(body, { ...scattered, spinPhase: Math.PI }, played, surface, settings, lent?.next());
      return {
        launch,
        shot: rollLeanShot(body, scattered, played, surface, settings, lent?.next()),
        ball: body,
        full: () => rollShot(body, scattered, played, surface, settings),
        opposite: deviations.spinPhase === null ? opposite : null,
      };
    };
  };
  const ready = (layout: Layout, deviations: Deviations, lent?: Lender): ((launch: Launch) => RolledShot) =>
    rolling(inputs(layout, deviations), deviations, lent);
  const shot = (layout: Layout, deviations: Deviations, launch: Launch): RolledShot =>
    ready(layout, deviations)(launch);
  const onOwnLine = ownLines(problem, (layout) => ready(layout, nominal));
  const ownShot = (layout: Layout, near?: Launch, lent?: Lender): RolledShot =>
    onOwnLine(ready(layout, nominal, lent), near);

  const mixedInputs = ({ centreOf, inertiaOf, carriesOil, grit }: MixedBall): WorldInputs => {
    const { body, surface, freshSurface, ...rest } = inputs(inertiaOf, nominal);
    return {
      ...rest,
      body: { ...body, p_BoBcm_B: drilled(centreOf, nominal).p_BoBcm_B },
      surface: grit === undefined ? surface : oiledSurface(pattern, grit, nominal.surface),
      freshSurface: carriesOil ? freshSurface : { ...freshSurface, carriedShare: 0 },
    };
  };

  const reactionOf = ({ shot: rolled, opposite }: RolledShot): Reaction => {
    const reaction = reactionNumbers(rolled, radius);
    const other = opposite?.();
    return other?.outcome === rolled.outcome
      ? meanReaction(reaction, reactionNumbers(other, radius))
      : reaction;
  };

  const read = (rolled: RolledShot): Outcome => ({
    launch: rolled.launch,
    shot: rolled.shot.outcome,
    inertia: inertiaNumbers(rolled.ball),
    statics: staticWeights(rolled.ball, radius, ball.ounce),
    reaction: reactionOf(rolled),
    ringClearance: radius * ringClearance(rolled.shot, problem),
    reachesPocket: isAtPocket(rolled.shot.outcome, rolled.shot.x[rolled.shot.x.length - 1]),
  });

  // the shots of one outcome are rolled in lent columns, since only numbers are kept of them
  const outcome = (layout: Layout, deviations: Deviations, launch?: Launch, near?: Launch): Outcome => {
    lender.beginAnew();
    if (launch) return read(ready(layout, deviations, lender)(launch));
    const own = ownShot(layout, near, lender);
    return read(deviations === nominal ? own : ready(layout, deviations, lender)(own.launch));
  };

  const mixed = (ball: MixedBall, near?: Launch): Outcome => {
    lender.beginAnew();
    return read(onOwnLine(rolling(mixedInputs(ball), nominal, lender), near));
  };

  const altered = (
    { layout, grit, inertia }: AlteredBall,
    deviations: Deviations,
    launch: Launch,
  ): Outcome => {
    const own = inputs(layout, deviations);
    const made: WorldInputs = {
      ...own,
      body: inertia ? withInertiaNumber(own.body, inertia.number, inertia.value) : own.body,
      surface: grit === undefined ? own.surface : oiledSurface(pattern, grit, deviations.surface),
    };
    lender.beginAnew();
    return read(rolling(made, deviations, lender)(launch));
  };

  return { inputs, shot, ownShot: (layout, near) => ownShot(layout, near), read, outcome, mixed, altered };
}

/** A line with a world's scatter added. */
export const scatteredLaunch = (launch: Launch, deviations: Deviations): Launch => ({
  ...launch,
  angle: launch.angle + deviations.launchAngle,
});

/** The true PAP in a world; the layout was marked from the measured one. */
function truePap(pap_B: Vec3, { papOver, papUp }: Deviations): Vec3 {
  const { over, up } = overAndUp(pap_B);
  return papOver === 0 && papUp === 0 ? pap_B : ballPoint(over + papOver, up + papUp);
}

/** The layout as marked on the ball in a world: marking errors added, pin-to-PAP at least 0. */
export const markedLayout = (layout: Layout, deviations: Deviations): Layout => ({
  drillingAngle: layout.drillingAngle + deviations.drillingAngle,
  pinToPap: Math.max(0, layout.pinToPap + deviations.pinToPap),
  valAngle: layout.valAngle + deviations.valAngle,
});

const ringClearance = (shot: LeanShot, { ball }: ShotProblem): number =>
  Math.min(
    ...ball.holes.map((hole) =>
      leastClearance(shot, hole.mouth_B, asin(hole.open.radius / ball.published.radius)),
    ),
  );
