import type { LearnedFrom } from '../../records/answers/parts/learned-from.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { KnownScores } from './draws.js';

/** What a bowler's logged shots teach about what lasts from night to night, in the form that worlds are drawn from. */
export interface Learned extends KnownScores {
  /** Uncertainty of the bowler's numbers, the unit of the scores of release and PAP. */
  readonly uncertainty: NonNullable<Bowler['uncertainty']>;
  /** Bayes factors of the beliefs of practice, by id: how much likelier the log is if a belief holds; 1 for those left out. */
  readonly beliefFactors: Readonly<Record<string, number>>;
  /** How much was learned from, and with what result, for answers to state. */
  readonly from?: LearnedFrom | undefined;
}

/** The bowler with the uncertainty that worlds are drawn with: that of the log, where there is one. */
export const asLearned = (bowler: Bowler, learned: Learned | undefined): Bowler =>
  learned ? { ...bowler, uncertainty: learned.uncertainty } : bowler;

/** What an answer states about it; nothing where nothing was learned. */
export const saysLearned = (learned: Learned | undefined): { readonly learned?: LearnedFrom } =>
  learned?.from ? { learned: learned.from } : {};
