import type { PathPoint, ReactionAnswer } from '../../records/answers/answer.js';

/** One simulated shot. Boards count from the bowler's own side. */
export interface DrawnShot {
  /** One letter that stands for it where several are drawn. */
  readonly sign: string;
  readonly text: string;
  readonly line: {
    readonly laydownBoard: number;
    readonly reachesPocket: boolean;
  };
  readonly path: readonly PathPoint[];
  readonly reaction: ReactionAnswer;
}
