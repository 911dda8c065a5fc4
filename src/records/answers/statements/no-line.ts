import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

const nearest = {
  laydownBoard: n,
  launchAngleDeg: n,
  pinsBoard: n,
  /** Why the ball is not sent farther out. */
  stop: z.enum(['gutter', 'steepest', 'no-nearer']),
  steepestDeg: n,
};

/** Why no line reaches the pocket. */
const whyShapes = {
  'never-at-pins': {},
  'hooks-past-pocket': nearest,
  'falls-short-of-pocket': nearest,
} as const;

const line = { laydownBoard: n, launchAngleDeg: n };

/** What was tried and would bring the ball there, with the line it then takes. */
const remedyShapes = {
  'another-laydown-board': line,
  'another-finish': { grit: n, insteadOf: n, ...line },
  /** Positive: faster. */
  'another-speed': { byMph: n, ...line },
} as const;

export const noLineReasonSchema = statementSchema('no-line-reason', whyShapes);
export type NoLineReasons = TopicOf<typeof whyShapes>;
export type NoLineReason = StatementOf<NoLineReasons>;

export const remedySchema = statementSchema('remedy', remedyShapes);
export type Remedies = TopicOf<typeof remedyShapes>;
export type Remedy = StatementOf<Remedies>;
