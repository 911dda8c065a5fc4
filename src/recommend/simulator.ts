import { type Driller, driller } from '../ball/drill.js';
import { type InertiaNumbers, inertiaNumbers } from '../ball/drilled-numbers.js';
import type { MassProperties } from '../ball/mass-properties.js';
import { type StaticWeights, staticWeights } from '../ball/static-weights.js';
import type { Layout } from '../layout/layout.js';
import { placeLayout } from '../layout/placement.js';
import { oiledLane, withFriction } from '../motion/oil.js';
import { type Reaction, reactionNumbers } from '../motion/reaction.js';
import type { Launch } from '../motion/release.js';
import { leastClearance } from '../motion/rings.js';
import { rollShot, type Shot } from '../motion/shot.js';
import type { Surface } from '../motion/surface.js';
import { GREATEST_FRICTION } from './assumed-surface.js';
import type { ShotProblem } from './shot-problem.js';
import type { World } from './world.js';

/** What one layout does in one world: numbers only, cheap to hand between workers. SI. */
export interface Outcome {
  readonly shot: Shot['outcome'];
  readonly inertia: InertiaNumbers;
  readonly statics: StaticWeights;
  readonly reaction: Reaction;
  /** Least distance along the surface from any ring to any hole's edge, m; negative when a ring crosses one. */
  readonly ringClearance: number;
}

/** Simulates shots of one problem. Holds the prepared balls and lanes; a worker makes its own. */
export interface Simulator {
  shot(layout: Layout, world: World, launch?: Launch): RolledShot;
  /** The numbers of a shot. */
  read(rolled: RolledShot): Outcome;
  /** Both in one. */
  outcome(layout: Layout, world: World): Outcome;
}

/** A shot with the drilled ball that rolled it. */
export interface RolledShot {
  readonly shot: Shot;
  readonly ball: MassProperties;
}

/** Step of the integrator for ranking and for what is shown, s. */
const STEP = 0.002;

export function simulator(problem: ShotProblem): Simulator {
  const { ball, release, pattern } = problem;
  const { radius } = ball.published;
  const drillers: (Driller | undefined)[] = [];
  const nominalSurface = oiledLane(pattern);

  const drilled = (layout: Layout, world: World): MassProperties => {
    drillers[world.body] ??= driller(ball.bodies[world.body], ball.rankingRays);
    return drillers[world.body]!(placeLayout(markedLayout(layout, world), ball.pap_B).R_BC);
  };

  const shot = (layout: Layout, world: World, launch = problem.launch): RolledShot => {
    const mass = drilled(layout, world);
    const rolled = rollShot(
      { ...mass, radius },
      {
        ...release,
        speed: release.speed + world.speed,
        spin: Math.max(0, release.spin + world.spin),
        axisTilt: Math.max(0, release.axisTilt + world.axisTilt),
        axisRotation: release.axisRotation + world.axisRotation,
      },
      { ...launch, angle: launch.angle + world.launchAngle },
      surfaceIn(world, nominalSurface, problem),
      {
        step: STEP,
        freshSurface: { bandWidth: world.surface.bandWidth, carriedShare: world.surface.carriedShare },
      },
    );
    return { shot: rolled, ball: mass };
  };

  const read = (rolled: RolledShot): Outcome => ({
    shot: rolled.shot.outcome,
    inertia: inertiaNumbers(rolled.ball),
    statics: staticWeights(rolled.ball, radius, ball.ounce),
    reaction: reactionNumbers(rolled.shot, radius),
    ringClearance: radius * ringClearance(rolled.shot, problem),
  });

  return { shot, read, outcome: (layout, world) => read(shot(layout, world)) };
}

/** The layout as it came out on the ball: marking errors added, kept where it can be drilled. */
const markedLayout = (layout: Layout, world: World): Layout => ({
  drillingAngle: layout.drillingAngle + world.drillingAngle,
  pinToPap: Math.max(0, layout.pinToPap + world.pinToPap),
  valAngle: layout.valAngle + world.valAngle,
});

/** The oil is the same in every world; the friction it makes is not. */
function surfaceIn(world: World, nominal: Surface, { pattern }: ShotProblem): Surface {
  const dry = Math.min(GREATEST_FRICTION, pattern.frictionDry * world.surface.frictionDryFactor);
  return withFriction(nominal, pattern.frictionOiled, dry, world.surface.filmScale);
}

const ringClearance = (shot: Shot, { ball }: ShotProblem): number =>
  Math.min(
    ...ball.holes.map((hole) =>
      leastClearance(shot, hole.mouth_B, Math.asin(hole.open.radius / ball.published.radius)),
    ),
  );
