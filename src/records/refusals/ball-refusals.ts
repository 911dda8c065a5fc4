import type { PublishedBall } from '../schemas/ball.js';

/** Published numbers that a core has to go with, each in the unit that its name carries. */
export type PublishedField = keyof Pick<
  PublishedBall,
  'rgIn' | 'differentialIn' | 'intermediateDifferentialIn' | 'weightLb' | 'topWeightOz' | 'pinToCgIn'
>;

/** A published number, in the unit that the field's name carries. */
export interface PublishedNumber {
  readonly field: PublishedField;
  readonly value: number;
}

/** Why a ball cannot be, or cannot be thrown as it is. */
export interface BallRefusals {
  /** No core goes with the published numbers. */
  'no-such-core': {
    /** Path of the number to look at first. */
    readonly field: string;
    /** The same number, as it was given. */
    readonly given: PublishedNumber;
    readonly families: readonly NonNullable<PublishedBall['coreShape']>[];
    /** What went wrong in most of the cores that were tried. */
    readonly why: 'filler-too-light' | 'core-too-big' | 'core-too-dense' | 'low-axis-off-pin';
    readonly densestGcc: number;
    /** Numbers that would do in place of those given, one at a time, with the others kept; the least change first. */
    readonly remedies: readonly PublishedNumber[];
  };
  /** The lane would have to pull the ball down at every turn. */
  'ball-would-hop': Record<string, never>;
}
