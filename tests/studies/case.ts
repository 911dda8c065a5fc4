import type { MassProperties } from '../../src/ball/mass-properties.js';
import { LANE_LENGTH } from '../../src/constants.js';
import { ANSWER_STEP } from '../../src/motion/answer-step.js';
import { oiledLane, withFriction } from '../../src/motion/oil.js';
import { type Reaction, reactionNumbers } from '../../src/motion/reaction.js';
import type { Launch } from '../../src/motion/release.js';
import { rollShot, type Shot } from '../../src/motion/shot.js';
import { GREATEST_FRICTION } from '../../src/recommend/assumed-surface.js';
import { ballProblem } from '../../src/recommend/ball-problem.js';
import { type ShotProblem, unaimedProblem } from '../../src/recommend/shot-problem.js';
import { simulator } from '../../src/recommend/simulator.js';
import { toLayout } from '../../src/recommend/to-layout.js';
import { NOMINAL_WORLD, type World } from '../../src/recommend/world.js';
import type { PublishedBall } from '../../src/records/ball.js';
import type { Bowler } from '../../src/records/bowler.js';
import type { Lane } from '../../src/records/lane.js';
import type { LayoutNumbers } from '../../src/records/layout-text.js';

/** One thing to roll: who, with what, drilled how. */
export interface Case {
  readonly bowler: Bowler;
  readonly ball: PublishedBall;
  readonly layout: LayoutNumbers;
  /** Changes the drilled ball's mass properties by hand, where no published number moves one of them alone. */
  readonly alter?: (drilled: MassProperties) => MassProperties;
}

/** A case drilled by the tool's own simulator, ready to roll in any world of release and surface. */
export interface Rig {
  readonly problem: ShotProblem;
  readonly drilled: MassProperties;
  /** The shot in a world, followed to `length` (m), the pins when left out. */
  shot(world: World, length?: number): Shot;
  /** Reaction numbers, SI. */
  react(world: World): Reaction;
}

/**
 * Prepares a case on a lane; with no launch the ball goes down the middle.
 *
 * The tool ends a shot in the gutter. Here every shot is followed to the pins, as if the lane's edge boards
 * went on: else extreme worlds would drop out of the comparison, and not at random.
 *
 * @throws {Error} when the tool's simulator would roll the nominal shot otherwise
 */
export function rigOf({ bowler, ball, layout, alter }: Case, lane: Lane, launch?: Launch): Rig {
  const unaimed = unaimedProblem(lane, bowler, ball, ballProblem(ball, bowler, 'moment'));
  const problem = launch ? { ...unaimed, launch } : unaimed;
  const { radius } = problem.ball.published;
  const asTool = simulator(problem).shot(toLayout(layout, radius), NOMINAL_WORLD, problem.launch);
  const bare = oiledLane(problem.pattern);
  const roll = (drilled: MassProperties, world: World, length = LANE_LENGTH): Shot => {
    const { frictionDryFactor, filmScale, bandWidth, carriedShare } = world.surface;
    const dry = Math.min(GREATEST_FRICTION, problem.pattern.frictionDry * frictionDryFactor);
    return rollShot(
      { ...drilled, radius },
      {
        ...problem.release,
        speed: problem.release.speed + world.speed,
        spin: Math.max(0, problem.release.spin + world.spin),
        axisTilt: Math.max(0, problem.release.axisTilt + world.axisTilt),
        axisRotation: problem.release.axisRotation + world.axisRotation,
      },
      { ...problem.launch, angle: problem.launch.angle + world.launchAngle },
      withFriction(bare, problem.pattern.frictionOiled, dry, filmScale),
      {
        step: ANSWER_STEP,
        freshSurface: { bandWidth, carriedShare },
        length,
        halfWidth: Number.POSITIVE_INFINITY,
      },
    );
  };
  if (asTool.shot.outcome === 'pins') assertSame(roll(asTool.ball, NOMINAL_WORLD), asTool.shot);

  const drilled = alter ? alter(asTool.ball) : asTool.ball;
  const shot = (world: World, length?: number): Shot => {
    const rolled = roll(drilled, world, length);
    if (rolled.outcome !== 'pins') throw new Error(`a shot of the study ended: ${rolled.outcome}`);
    return rolled;
  };
  return { problem, drilled, shot, react: (world) => reactionNumbers(shot(world), radius) };
}

function assertSame(a: Shot, b: Shot): void {
  if (a.x[a.x.length - 1] !== b.x[b.x.length - 1])
    throw new Error('the study rolls a shot otherwise than the tool does');
}
