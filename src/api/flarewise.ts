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
export type { RingAnswer } from '../records/answers/ball-face.js';
export { readBall } from '../records/read/read-ball.js';
export type { Ball, OwnCoreBall, PublishedBall } from '../records/schemas/ball.js';
export type { Bowler } from '../records/schemas/bowler.js';
export type { Lane } from '../records/schemas/lane.js';
export type { Want } from '../records/schemas/want.js';
export type {
  DrilledAnswer,
  JudgeAnswer,
  LegalityAnswer,
  RankedLayout,
  RecommendAnswer,
  RollAnswer,
  SimulatedLayout,
} from './answers.js';
export { type DrilledInputs, type DrilledOptions, drilled } from './drilled.js';
export { type JudgeInputs, judge } from './judge.js';
export { type RecommendInputs, type RecommendOptions, recommend } from './recommend.js';
export { type RollInputs, roll } from './roll.js';
export type { Progress, SearchOptions } from './search-options.js';
