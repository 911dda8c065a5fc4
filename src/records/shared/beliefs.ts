import { z } from 'zod';
import { readShared } from './shared-data.js';

/** What a belief starts from: a number of the layout, of the drilled ball, or of the ball itself. */
export const BELIEF_QUANTITIES = [
  'drillingAngleDeg',
  'valAngleDeg',
  'pinToPapIn',
  'markToPapIn',
  'differentialIn',
  'intermediateDifferentialIn',
  'rgIn',
  'finishGrit',
] as const;

export type BeliefQuantity = (typeof BELIEF_QUANTITIES)[number];

/** The reaction numbers that beliefs are about. */
export const BELIEVED_IDS = [
  'hookStartFt',
  'sharpnessDegPerFt',
  'totalHookBoards',
  'rollStartFt',
  'flareIn',
] as const;

export type BelievedId = (typeof BELIEVED_IDS)[number];

const beliefSchema = z.strictObject({
  id: z.string().regex(/^[a-z]+(-[a-z]+)*$/),
  /** The belief as a sentence. */
  says: z.string(),
  quantity: z.enum(BELIEF_QUANTITIES),
  from: z.number(),
  to: z.number(),
  reading: z.enum(BELIEVED_IDS),
  /** By how much the reading moves as the quantity goes from one end to the other, if the belief holds: something between. */
  least: z.number(),
  most: z.number(),
  standing: z.enum(['published', 'common-practice']),
  source: z.string().optional(),
});

/** What practice believes that one quantity does to one reaction number, beyond what physics computes. */
export type Belief = z.infer<typeof beliefSchema>;

const beliefsSchema = z.strictObject({ about: z.string(), beliefs: z.array(beliefSchema).min(1) });

/** All beliefs of practice, in the order in which worlds draw them. */
export const BELIEFS: readonly Belief[] = beliefsSchema.parse(readShared('beliefs.json')).beliefs;

/** The chance that a belief holds beyond what physics finds. Assumed: nothing is published about it. */
export const USUAL_PRACTICE_WEIGHT = 0.5;
