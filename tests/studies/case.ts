import type { MassProperties } from '../../src/ball/mass/mass-properties.js';
import { LANE_LENGTH } from '../../src/base/constants.js';
import { oiledLane } from '../../src/motion/lane/oil.js';
import { surfaceOf } from '../../src/motion/lane/surface.js';
import { meanReaction, type Reaction, reactionNumbers } from '../../src/motion/reaction/reaction.js';
import { ANSWER_STEP } from '../../src/motion/shot/answer-step.js';
import type { Launch } from '../../src/motion/shot/release.js';
import { type LeanShot, rollShot, type Shot } from '../../src/motion/shot/shot.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { PublishedBall } from '../../src/records/schemas/ball.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { type ShotProblem, unaimedProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { type Deviations, NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';
import { frictionOf } from '../../src/simulate/worlds/friction-of.js';

/** One thing to roll: who, with what, drilled how. */
export interface Case {
  readonly bowler: Bowler;
  readonly ball: PublishedBall;
  readonly layout: LayoutNumbers;
  /** Changes the drilled ball's mass properties by hand, where no published number moves one of them alone. */
  readonly alter?: (drilled: MassProperties) => MassProperties;
}

/** A case drilled by the tool's own simulator, ready to roll in any world of release and surface. */
interface Rig {
  readonly problem: ShotProblem;
  readonly drilled: MassProperties;
  /** The shot in a world, followed to `length` (m), the pins when left out; spin phase 0 where the world has none. */
  shot(deviations: Deviations, length?: number): Shot;
  /** Reaction numbers, SI; the mean of two spin phases half a turn apart where the world has none. */
  react(deviations: Deviations): Reaction;
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
  const asTool = simulator(problem).shot(toLayout(layout, radius), NO_DEVIATIONS, problem.launch);
  const bare = oiledLane(problem.pattern);
  const roll = (
    drilled: MassProperties,
    deviations: Deviations,
    length = LANE_LENGTH,
    spinPhase = deviations.spinPhase ?? 0,
  ): Shot => {
    const { oiled, dry, filmScale } = frictionOf(problem.pattern, problem.grit, deviations.surface);
    return rollShot(
      { ...drilled, radius },
      {
        ...problem.release,
        speed: problem.release.speed + deviations.speed,
        spin: Math.max(0, problem.release.spin + deviations.spin),
        axisTilt: Math.max(0, problem.release.axisTilt + deviations.axisTilt),
        axisRotation: problem.release.axisRotation + deviations.axisRotation,
        spinPhase,
      },
      { ...problem.launch, angle: problem.launch.angle + deviations.launchAngle },
      surfaceOf(bare.film, { oiled, dry, filmScale }),
      {
        step: ANSWER_STEP,
        freshSurface: deviations.surface,
        length,
        halfWidth: Number.POSITIVE_INFINITY,
      },
    );
  };
  if (asTool.shot.outcome === 'pins') assertSame(roll(asTool.ball, NO_DEVIATIONS), asTool.shot);

  const drilled = alter ? alter(asTool.ball) : asTool.ball;
  const shot = (deviations: Deviations, length?: number, spinPhase?: number): Shot => {
    const rolled = roll(drilled, deviations, length, spinPhase);
    if (rolled.outcome !== 'pins') throw new Error(`a shot of the study ended: ${rolled.outcome}`);
    return rolled;
  };
  const react = (deviations: Deviations): Reaction => {
    const here = reactionNumbers(shot(deviations), radius);
    if (deviations.spinPhase !== null) return here;
    return meanReaction(here, reactionNumbers(shot(deviations, LANE_LENGTH, Math.PI), radius));
  };
  return { problem, drilled, shot, react };
}

function assertSame(a: LeanShot, b: LeanShot): void {
  if (a.x[a.x.length - 1] !== b.x[b.x.length - 1])
    throw new Error('the study rolls a shot otherwise than the tool does');
}
