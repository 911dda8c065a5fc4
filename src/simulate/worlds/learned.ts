import type { LearnedFrom } from '../../records/answers/parts/learned-from.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { KnownScores } from './draws.js';

/** What a bowler's logged shots say of what stays from night to night, made ready to draw worlds from. */
export interface Learned extends KnownScores {
  /** How far off the bowler's numbers may be, which the scores of the release and the PAP are counted in. */
  readonly uncertainty: NonNullable<Bowler['uncertainty']>;
  /** How much likelier the log is if a belief of practice holds than if it does not, by its id; 1 for those left out. */
  readonly beliefFactors: Readonly<Record<string, number>>;
  /** How much there was to learn from, and what came of it: an answer says so. */
  readonly from?: LearnedFrom | undefined;
}

/** The bowler as worlds are drawn for: with what the log was read with, where there is one. */
export const asLearned = (bowler: Bowler, learned: Learned | undefined): Bowler =>
  learned ? { ...bowler, uncertainty: learned.uncertainty } : bowler;

/** What an answer says of it: nothing at all where nothing was learned. */
export const saysLearned = (learned: Learned | undefined): { readonly learned?: LearnedFrom } =>
  learned?.from ? { learned: learned.from } : {};
