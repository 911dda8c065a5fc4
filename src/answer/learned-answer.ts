import { DEGREE, to } from '../base/units.js';
import type { LearnOptions } from '../learn/fit-log.js';
import { laneOfNight } from '../learn/lane-of-night.js';
import { latestOf } from '../learn/latest-night.js';
import { launchOver } from '../learn/launch-over.js';
import { type Lesson, learn } from '../learn/learn.js';
import { learnedNumbers } from '../learn/learned-numbers.js';
import { pointOf } from '../learn/log-model.js';
import type { LoggedBall } from '../learn/logged.js';
import type { LeftOut } from '../learn/logged-balls.js';
import { nextReadings } from '../learn/next-reading.js';
import { NOTHING_LOGGED, predictNight } from '../learn/predict-night.js';
import { asRead, exactly, readAimOf } from '../learn/read-aim.js';
import { READ, readingsOf } from '../learn/readings.js';
import { whatIsKnownAsRead } from '../learn/what-is-known.js';
import { xToBoard } from '../motion/lane/boards.js';
import type { Launch } from '../motion/shot/release.js';
import type { BallProblem } from '../prepare/ball-problem.js';
import { toLayout } from '../prepare/to-layout.js';
import type { LearnedAnswer } from '../records/answers/learned-answer.js';
import type { LearnedFrom } from '../records/answers/parts/learned-from.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import { BELIEFS, USUAL_PRACTICE_WEIGHT } from '../records/shared/beliefs.js';
import { VERSION } from '../records/shared/version.js';
import { findLine } from '../simulate/line.js';
import { type ShotProblem, unaimedProblem } from '../simulate/shot-problem.js';
import { type RolledShot, simulator } from '../simulate/simulator.js';
import { beliefChance } from '../simulate/worlds/belief-chance.js';
import type { KnownScores } from '../simulate/worlds/draws.js';
import type { Learned } from '../simulate/worlds/learned.js';

export interface LearnedInputs {
  readonly bowler: Bowler;
  readonly balls: readonly LoggedBall[];
  /** The lane asked about; that of the latest night when left out. */
  readonly lane?: Lane | undefined;
  /** Logs that were kept but could not be used, for the answer to mention. */
  readonly leftOut?: readonly LeftOut[];
}

export interface LearnedOptions extends LearnOptions {
  readonly seed: number;
  readonly practiceWeight?: number | undefined;
}

/** What a bowler's logged shots teach, as an answer and in the form for predictions and searches. */
export interface Taught {
  readonly answer: LearnedAnswer;
  readonly learned: Learned;
}

/**
 * What a bowler's logged shots teach: each number before and after, the prediction for a next night like the last, what does not fit,
 * what to read next, and how far the beliefs of practice are supported; and the value to pass as `learned` beside bowler, ball and
 * lane. Null where there is no night to learn from.
 *
 * @throws {Refusal} when a ball's numbers fit no core or the grip cannot be placed
 */
export function teach(inputs: LearnedInputs, options: LearnedOptions): Taught | null {
  const lesson = learn(inputs.bowler, inputs.balls, { ...options, lane: inputs.lane });
  if (!lesson) return null;
  const answer = answerOf(lesson, inputs, options);
  return { answer, learned: { ...lesson.learned, from: learnedFrom(answer) } };
}

const learnedFrom = ({
  nights,
  elsewhere,
  foretold: { before, after },
  misfit,
}: LearnedAnswer): LearnedFrom => ({
  shots: shotsIn(nights),
  nights: nights.length,
  elsewhere,
  pinsBoardOff:
    before && after ? { before: before.pinsBoard.deviation, after: after.pinsBoard.deviation } : null,
  isDoubtful: misfit.isDoubtful,
});

const shotsIn = (nights: LearnedAnswer['nights']): number =>
  nights.reduce((sum, { shots }) => sum + shots, 0);

function answerOf(lesson: Lesson, inputs: LearnedInputs, options: LearnedOptions): LearnedAnswer {
  const { bowler, balls, leftOut = [] } = inputs;
  const { log, misfit } = lesson;
  const { seed } = options;
  const all = balls.flatMap(({ nights }) => nights);
  const shots = log.nights.flatMap(({ night }) => night.night.shots);
  return {
    schema: 'flarewise/learned-answer/1',
    version: VERSION,
    seed,
    bowler: bowler.name,
    balls: balls.map(({ ball, nights }) => ({
      ball: ball.name,
      nights: nights.length,
      shots: shotsOf(nights.map(({ night }) => night)),
    })),
    leftOut: [...leftOut],
    nights: log.nights.map(({ night: { night, lane }, logged }) => ({
      on: night.on ?? null,
      ball: logged.ball.name,
      lane: lane.name,
      shots: night.shots.length,
    })),
    lane: log.lane.name,
    elsewhere: log.nights.filter(({ night }) => night.lane.name !== log.lane.name).length,
    nightsInGutter: all.length - log.nights.length,
    notLearned: {
      displaySpeed: shots.filter(({ displaySpeedMph }) => displaySpeedMph !== undefined).length,
      ringOverHole: shots.filter(({ ringOverHole }) => ringOverHole !== undefined).length,
    },
    numbers: learnedNumbers(log, bowler, seed),
    foretold: foretoldOf(lesson, inputs, seed),
    misfit: {
      ...misfit,
      surprises: [...misfit.surprises],
      causes: [...misfit.causes],
      arrowsReadOff: log.nights.filter(({ means }) => means.isReadOff).length,
    },
    next: [...nextReadings(log)],
    beliefs: beliefsOf(
      lesson,
      options.practiceWeight ?? USUAL_PRACTICE_WEIGHT,
      shotsOf(all.map(({ night }) => night)),
    ),
  };
}

const shotsOf = (nights: readonly { readonly shots: readonly unknown[] }[]): number =>
  nights.reduce((sum, { shots }) => sum + shots.length, 0);

/**
 * Prediction before and after the log for the ball that was thrown last on the lane asked about, aimed as on that night. If none was, for
 * the ball that was thrown last anywhere, on the line that it would usually be played on.
 */
function foretoldOf(
  { log, learned }: Lesson,
  { bowler }: LearnedInputs,
  seed: number,
): LearnedAnswer['foretold'] {
  const here = latestOf(log.nights.filter(({ night }) => night.lane.name === log.lane.name));
  const last = here ?? latestOf(log.nights)!;
  const { logged, means } = last;
  const unsure = { ...bowler, uncertainty: log.uncertainty };
  const ball = log.ready[last.ball];
  const layout = toLayout(logged.layout, ball.published.radius);
  const lane = here ? laneOfNight(here.night) : log.lane;
  const problemWith = (known: KnownScores) =>
    unaimedProblem(lane, unsure, logged.ball, ball, { ...learned, ...known });
  const read = here ? readAimOf(means) : null;
  const played = here
    ? here.model.launchAt(pointOf(log.unknowns, log.nights, log.fit.mean, log.nights.indexOf(here)))
    : findLine(problemWith(learned), layout).launch;
  const launchIn = (problem: ShotProblem): Launch => {
    if (!read) return played;
    const engine = simulator(problem);
    return launchOver(read, (sent) => boardAtArrows(engine.shot(layout, problem.worlds[0], sent), ball));
  };
  const launch = launchIn(problemWith(learned));
  const predict = (known: KnownScores) => {
    const problem = problemWith(known);
    const aim = read ? asRead(launchIn(problem), read.errors) : exactly(played);
    return predictNight(problem, layout, known, { bowler: unsure, ball: logged.ball }, aim, seed);
  };
  return {
    ball: logged.ball.name,
    lane: log.lane.name,
    laydownBoard: xToBoard(launch.x),
    launchAngleDeg: to(launch.angle, DEGREE),
    before: predict(NOTHING_LOGGED),
    after: predict(read ? whatIsKnownAsRead(log, read.errors) : learned),
  };
}

const boardAtArrows = (rolled: RolledShot, { published }: BallProblem): number =>
  readingsOf(rolled, published.radius)[READ.indexOf('arrowsBoard')];

const beliefsOf = ({ evidence, learned }: Lesson, weight: number, shots: number): LearnedAnswer['beliefs'] =>
  BELIEFS.map((belief, b) => {
    const { factor, silent, timesMore } = evidence[b];
    return {
      id: belief.id,
      says: belief.says,
      chanceBefore: weight,
      chanceAfter: beliefChance(weight, learned)(belief),
      factor,
      silent,
      moreShots: timesMore === null ? null : shots * (timesMore - 1),
    };
  });
