import { DEGREE, to } from '../base/units.js';
import type { Layout } from '../layout/layout.js';
import { xToBoard } from '../motion/lane/boards.js';
import type { BallProblem } from '../prepare/ball-problem.js';
import type { NoLineAnswer } from '../records/answers/answer.js';
import { type Ball, USUAL_GRIT } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import { findLine, type Line } from '../simulate/line.js';
import { POCKET_BOARD } from '../simulate/pocket.js';
import { unaimedProblem } from '../simulate/shot-problem.js';
import { type Simulator, simulator } from '../simulate/simulator.js';
import { NOMINAL_WORLD } from '../simulate/world.js';

/** Finer and coarser finishes that a shop can give a cover, grit. */
const GRITS = [500, 1000, 2000, 3000, 4000, 5000];

/** Changes of ball speed a bowler could learn, mph. */
const SPEEDS_MPH = [1, 2, 3];

interface Inputs {
  readonly bowler: Bowler;
  readonly ball: Ball;
  readonly lane: Lane;
}

/**
 * Why no line brings a layout to the pocket, what comes nearest, and which changes, tried one at a time, would.
 *
 * Thorough and slow: some hundred shots for each change tried.
 */
export function noLine(inputs: Inputs, ball: BallProblem, layout: Layout): NoLineAnswer {
  const problem = unaimedProblem(inputs.lane, inputs.bowler, inputs.ball, ball);
  const nearest = findLine(problem, layout);
  const engine = simulator(problem);
  const { steepest } = problem.play;
  const { shot } = engine.shot(layout, NOMINAL_WORLD, nearest.launch);
  const pinsBoard = shot.outcome === 'pins' ? xToBoard(shot.x[shot.x.length - 1]) : null;
  const why = pinsBoard === null ? 'never-arrives' : pinsBoard > POCKET_BOARD ? 'hooks-past' : 'falls-short';
  return {
    why,
    nearest: {
      laydownBoard: nearest.laydownBoard,
      launchAngleDeg: to(nearest.launch.angle, DEGREE),
      pinsBoard,
    },
    says: wordWhy(why, nearest, pinsBoard, engine, layout, steepest),
    remedies: remediesFor(why, inputs, ball, layout),
  };
}

/** How much farther a launch is turned to see what is there, rad. */
const BIT = 0.005;

function wordWhy(
  why: NoLineAnswer['why'],
  { launch, laydownBoard }: Line,
  pinsBoard: number | null,
  engine: Simulator,
  layout: Layout,
  steepest: number,
): string {
  if (pinsBoard === null) return 'From no laydown board and in no direction does the ball reach the pins.';
  const outward = why === 'hooks-past' ? 1 : -1;
  const beyond = engine.shot(layout, NOMINAL_WORLD, { ...launch, angle: launch.angle + outward * BIT });
  const stop =
    beyond.shot.outcome === 'gutter'
      ? 'sent farther out it would fall into the gutter'
      : Math.abs(launch.angle) > steepest - BIT
        ? `a bowler cannot send it farther out than ${to(steepest, DEGREE).toFixed(1)}°`
        : 'another direction comes no nearer';
  const does =
    why === 'hooks-past'
      ? 'The ball hooks too much and crosses past the pocket'
      : 'The ball falls short of the pocket';
  return (
    `${does}: the nearest line, laid down on board ${laydownBoard.toFixed(0)} and sent ` +
    `${to(launch.angle, DEGREE).toFixed(1)}° out, ends on board ${pinsBoard.toFixed(1)}; ${stop}.`
  );
}

function remediesFor(
  why: NoLineAnswer['why'],
  { bowler, ball, lane }: Inputs,
  drillable: BallProblem,
  layout: Layout,
): string[] {
  const lineOf = (changed: Partial<Inputs>): Line | null => {
    const { bowler: who, ball: what } = { bowler, ball, ...changed };
    const line = findLine(unaimedProblem(lane, who, what, drillable), layout);
    return line.reachesPocket ? line : null;
  };
  const wording = (change: string, line: Line): string =>
    `${change}: a line from board ${line.laydownBoard.toFixed(0)}, ${to(line.launch.angle, DEGREE).toFixed(1)}° out.`;
  const firstOf = <T>(
    list: readonly T[],
    change: (each: T) => Partial<Inputs>,
    word: (each: T) => string,
  ) => {
    for (const each of list) {
      const line = lineOf(change(each));
      if (line) return [wording(word(each), line)];
    }
    return [];
  };

  const remedies: string[] = [];
  if (bowler.laydownBoard !== undefined) {
    const { laydownBoard: _own, ...anywhere } = bowler;
    remedies.push(
      ...firstOf(
        [anywhere],
        (who) => ({ bowler: who }),
        () => 'Another laydown board',
      ),
    );
  }
  const grit = ball.surfaceGrit ?? USUAL_GRIT;
  const finishes =
    why === 'hooks-past'
      ? GRITS.filter((each) => each > grit)
      : GRITS.filter((each) => each < grit).reverse();
  remedies.push(
    ...firstOf(
      finishes,
      (surfaceGrit) => ({ ball: { ...ball, surfaceGrit } }),
      (each) => `Cover finished at ${each} grit instead of ${grit}`,
    ),
  );
  const sign = why === 'hooks-past' ? 1 : -1;
  remedies.push(
    ...firstOf(
      SPEEDS_MPH,
      (mph) => ({ bowler: { ...bowler, speedMph: bowler.speedMph + sign * mph } }),
      (mph) => `${mph} mph ${sign > 0 ? 'faster' : 'slower'}`,
    ),
  );
  return remedies;
}
