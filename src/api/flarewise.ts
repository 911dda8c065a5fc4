/* What the package `flarewise` offers to other programs: this and no more is its public interface. */

export { type Fault, InputError } from '../base/errors.js';
export type {
  Band,
  DrilledNumbersAnswer,
  LayoutAnswer,
  LineAnswer,
  MarkAnswer,
  PathPoint,
  ReactionAnswer,
  SharesAnswer,
  TargetAnswer,
} from '../records/answers/answer.js';
export type { RingAnswer } from '../records/answers/parts/ball-face.js';
export type { LearnedFrom } from '../records/answers/parts/learned-from.js';
export { readBall } from '../records/read/read-ball.js';
export type { Ball, OwnCoreBall, PublishedBall } from '../records/schemas/ball.js';
export type { Bowler } from '../records/schemas/bowler.js';
export type { Lane } from '../records/schemas/lane.js';
export type { LoggedShot, Night } from '../records/schemas/shot-log.js';
export type { Want } from '../records/schemas/want.js';
export type { Learned } from '../simulate/worlds/learned.js';
export { adjust } from './adjust.js';
export type { AdjustInputs } from './adjusted-inputs.js';
export type {
  AdjustAnswer,
  CompareAnswer,
  CompareRow,
  DrilledAnswer,
  JudgeAnswer,
  LearnedAnswer,
  LegalityAnswer,
  RankedLayout,
  RecommendAnswer,
  RollAnswer,
  SimulatedLayout,
} from './answers.js';
export { type CompareInputs, compare } from './compare.js';
export { type DrilledInputs, type DrilledOptions, drilled } from './drilled.js';
export { type JudgeInputs, type JudgeOptions, judge } from './judge.js';
export { type LearnInputs, type Lesson, type LoggedBall, learn } from './learn.js';
export { type RecommendInputs, type RecommendOptions, recommend } from './recommend.js';
export { type RollInputs, roll } from './roll.js';
export type { Progress, SearchOptions } from './search-options.js';
