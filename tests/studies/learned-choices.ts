import { DEGREE, from } from '../../src/base/units.js';
import { uncertaintyOf } from '../../src/learn/unknowns.js';
import { xToBoard } from '../../src/motion/lane/boards.js';
import type { Launch } from '../../src/motion/shot/release.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { POCKET_BOARD } from '../../src/simulate/pocket.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import { type Outcome, simulator } from '../../src/simulate/simulator.js';
import type { KnownScores } from '../../src/simulate/worlds/draws.js';
import { type Hidden, type HiddenBall, trueNights } from './blind-logs.js';
import { random } from './random.js';

/* What a choice costs that is made by what is foretold: of a line, a ball, a finish, and of all three together. */

/** Directions off the one that is aimed in, degrees, and finishes, grit. */
const LINES = [0, -0.3, 0.3];
const FINISHES = [2000, 500, 4000];

/** Shots over which the truth of an option is taken; boards off the pocket at which one counts that ends in the gutter. */
const SHOTS = 20;
const LOST = 10;

interface Option {
  readonly line: number;
  readonly ball: number;
  readonly finish: number;
}

const OPTIONS: readonly Option[] = LINES.flatMap((_, line) =>
  [0, 1].flatMap((ball) => FINISHES.map((_finish, finish) => ({ line, ball, finish }))),
);

/** What is chosen while the rest stays as it is. */
export const CHOICES: Readonly<Record<string, (option: Option) => boolean>> = {
  'one of 3 lines': ({ ball, finish }) => ball === 0 && finish === 0,
  'one of 2 balls': ({ line, finish }) => line === 0 && finish === 0,
  'one of 3 finishes': ({ line, ball }) => line === 0 && ball === 0,
  'all three at once': () => true,
};

/** How far from the pocket a shot ends, boards. */
const missOf = ({ shot, reaction }: Outcome): number =>
  shot === 'pins' ? Math.min(LOST, Math.abs(xToBoard(reaction.pinsX) - POCKET_BOARD)) : LOST;

/** How much farther from the pocket the shots of a night end than they would by the best choice, boards: for each thing known, each choice. */
export function choiceRegrets(
  seed: number,
  { bowler, lane, hidden }: { readonly bowler: Bowler; readonly lane: Lane; readonly hidden: Hidden },
  balls: readonly [HiddenBall, HiddenBall],
  known: readonly KnownScores[],
): readonly (readonly number[])[] {
  const ready = balls.map((drilled) =>
    FINISHES.map((surfaceGrit) => ({ ...drilled, record: { ...drilled.record, surfaceGrit } })),
  );
  const nights = ready.map(
    (finishes) => finishes.map((drilled) => trueNights(hidden, drilled, bowler, lane, {})(random(seed))), // one night for all
  );
  const aimOf = ({ line }: Option): Launch => {
    const { x, angle } = nights[0][0].aim;
    return { x, angle: angle + from(LINES[line], DEGREE) };
  };
  const truth = OPTIONS.map((option) => {
    const night = nights[option.ball][option.finish];
    const of = random(seed + 1); // the same luck for all
    const misses = Array.from({ length: SHOTS }, () => missOf(night.read(night.roll(of, aimOf(option)))));
    return misses.reduce((sum, each) => sum + each, 0) / SHOTS;
  });
  return known.map((scores) => {
    const uncertainty = uncertaintyOf(bowler);
    const engines = ready.map((finishes) =>
      finishes.map(({ record, problem, layout }) => {
        const learned = { ...scores, uncertainty, beliefFactors: {} };
        const shot = unaimedProblem(lane, bowler, record, problem, learned);
        const marked = toLayout(layout, problem.published.radius);
        const engine = simulator(shot);
        return (launch: Launch): Outcome => engine.outcome(marked, shot.worlds[0], launch);
      }),
    );
    const foretold = OPTIONS.map((option) => missOf(engines[option.ball][option.finish](aimOf(option))));
    return Object.values(CHOICES).map((isOffered) => {
      const offered = OPTIONS.flatMap((option, i) => (isOffered(option) ? [i] : []));
      const leastOf = (values: readonly number[]): number =>
        offered.reduce((best, i) => (values[i] < values[best] ? i : best), offered[0]);
      return truth[leastOf(foretold)] - truth[leastOf(truth)];
    });
  });
}
