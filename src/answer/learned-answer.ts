import { DEGREE, to } from '../base/units.js';
import type { FittedLog, LearnOptions } from '../learn/fit-log.js';
import { laneOfNight } from '../learn/lane-of-night.js';
import { type Lesson, learn } from '../learn/learn.js';
import { learnedNumbers } from '../learn/learned-numbers.js';
import { pointOf } from '../learn/log-model.js';
import type { LoggedBall } from '../learn/logged.js';
import type { LeftOut } from '../learn/logged-balls.js';
import { nextReadings } from '../learn/next-reading.js';
import { NOTHING_LOGGED, predictNight } from '../learn/predict-night.js';
import { xToBoard } from '../motion/lane/boards.js';
import { toLayout } from '../prepare/to-layout.js';
import type { LearnedAnswer } from '../records/answers/learned-answer.js';
import type { LearnedFrom } from '../records/answers/parts/learned-from.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { BELIEFS, USUAL_PRACTICE_WEIGHT } from '../records/shared/beliefs.js';
import { VERSION } from '../records/shared/version.js';
import { unaimedProblem } from '../simulate/shot-problem.js';
import { beliefChance } from '../simulate/worlds/belief-chance.js';
import type { KnownScores } from '../simulate/worlds/draws.js';
import type { Learned } from '../simulate/worlds/learned.js';

export interface LearnedInputs {
  readonly bowler: Bowler;
  readonly balls: readonly LoggedBall[];
  /** What was kept and could not be used, to be said. */
  readonly leftOut?: readonly LeftOut[];
  /** Nights on other lanes that were left out. */
  readonly elsewhere?: number;
}

export interface LearnedOptions extends LearnOptions {
  readonly seed: number;
  readonly practiceWeight?: number | undefined;
}

/**
 * What a bowler's logged shots teach: each number before and after, what is foretold of the next night like the last, what does not fit,
 * what to read next, and what practice's beliefs stand at. Null where there is no night to learn from.
 *
 * @throws {Refusal} when a ball's numbers fit no core or the grip cannot be placed
 */
export const learnedAnswer = (inputs: LearnedInputs, options: LearnedOptions): LearnedAnswer | null =>
  teach(inputs, options)?.answer ?? null;

/** What a bowler's logged shots teach: as an answer, and for predictions and searches. */
export interface Taught {
  readonly answer: LearnedAnswer;
  readonly learned: Learned;
}

/**
 * The same, with what is handed in as `learned` beside bowler, ball and lane.
 *
 * @throws {Refusal} as `learnedAnswer` does
 */
export function teach(inputs: LearnedInputs, options: LearnedOptions): Taught | null {
  const lesson = learn(inputs.bowler, inputs.balls, options);
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
  const { bowler, balls, leftOut = [], elsewhere = 0 } = inputs;
  const { log, misfit } = lesson;
  const { seed } = options;
  const all = balls.flatMap(({ nights }) => nights);
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
    elsewhere,
    nightsInGutter: all.length - log.nights.length,
    numbers: learnedNumbers(log, bowler, all[all.length - 1].lane, seed),
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

/** The last night's ball on its lane, aimed as on that night: what was expected, and what is now. */
function foretoldOf(
  { log, learned }: Lesson,
  { bowler }: LearnedInputs,
  seed: number,
): LearnedAnswer['foretold'] {
  const last = lastOf(log);
  const { ball: drilled, model, logged, night } = last;
  const unsure = { ...bowler, uncertainty: log.uncertainty };
  const launch = model.launchAt(pointOf(log.unknowns, log.nights, log.fit.mean, last.place));
  const ball = log.ready[drilled];
  const predict = (known: KnownScores) => {
    const now = { ...learned, ...known };
    const problem = unaimedProblem(laneOfNight(night), unsure, logged.ball, ball, now);
    return predictNight(
      problem,
      toLayout(logged.layout, ball.published.radius),
      known,
      { bowler: unsure, ball: logged.ball },
      launch,
      seed,
    );
  };
  return {
    ball: logged.ball.name,
    lane: night.lane.name,
    laydownBoard: xToBoard(launch.x),
    launchAngleDeg: to(launch.angle, DEGREE),
    before: predict(NOTHING_LOGGED),
    after: predict(learned),
  };
}

/** The latest of the nights that were learned from; of those without a day, or of one day, the last. */
function lastOf({ nights }: FittedLog) {
  const dayOf = (place: number): string => nights[place].night.night.on ?? '';
  const place = [...nights.keys()].reduce((last, each) => (dayOf(each) >= dayOf(last) ? each : last), 0);
  return { ...nights[place], place };
}

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
