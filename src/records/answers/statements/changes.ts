import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/* What is changed to see what it does: another cover, line or ball; a step in a layout number; an error of marking. */

const leverShapes = {
  'finish-at': { grit: n, insteadOf: n },
  'laid-down-on': { board: n, insteadOf: n },
  'another-ball': { ball: z.string() },
} as const;

const stepShapes = {
  'drilling-angle-by': { byDeg: n },
  'pin-to-pap-by': { byIn: n },
  'val-angle-by': { byDeg: n },
} as const;

const markingShapes = {
  'drilling-angle-off': { byDeg: n },
  'pin-to-pap-off': { byIn: n },
  'val-angle-off': { byDeg: n },
} as const;

export const leverSchema = statementSchema('lever', leverShapes);
export type Levers = TopicOf<typeof leverShapes>;
export type Lever = StatementOf<Levers>;

export const stepSchema = statementSchema('step', stepShapes);
export type Steps = TopicOf<typeof stepShapes>;
export type Step = StatementOf<Steps>;

export const markingErrorSchema = statementSchema('marking-error', markingShapes);
export type MarkingErrors = TopicOf<typeof markingShapes>;
export type MarkingError = StatementOf<MarkingErrors>;
