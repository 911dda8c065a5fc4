import type { BallProblem } from '../prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { findLine, type Line } from './line.js';
import { type ShotProblem, unaimedProblem } from './shot-problem.js';
import { type Outcome, type RolledShot, type Simulator, simulator } from './simulator.js';
import { staysOnLane } from './stays-on-lane.js';
import type { Learned } from './worlds/learned.js';

/** The records that one shot depends on. */
export interface ShotRecords {
  readonly bowler: Bowler;
  readonly ball: Ball;
  readonly lane: Lane;
  readonly layout: LayoutNumbers;
  /** What logged shots taught, if anything. */
  readonly learned?: Learned | undefined;
}

/** The nominal shot of one layout on its own line, as `recommend` would roll it. */
export interface AimedShot {
  /** The line of the usual middle layout, from which the layout's own line was found. */
  readonly line: Line;
  readonly problem: ShotProblem;
  readonly engine: Simulator;
  readonly rolled: RolledShot;
  readonly outcome: Outcome;
}

/** @throws {Refusal} `ball-would-hop` */
export function aimedShot(
  { bowler, ball: record, lane, layout, learned }: ShotRecords,
  ball: BallProblem,
): AimedShot {
  const { radius } = ball.published;
  const unaimed = unaimedProblem(lane, bowler, record, ball, learned);
  const line = findLine(unaimed, toLayout(MIDDLE_LAYOUT, radius));
  const problem = { ...unaimed, launch: line.launch };
  const engine = simulator(problem);
  const rolled = engine.ownShot(toLayout(layout, radius));
  staysOnLane(rolled.shot.outcome);
  return { line, problem, engine, rolled, outcome: engine.read(rolled) };
}
