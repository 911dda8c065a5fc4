import type { z } from 'zod';
import { type Ball, ballSchema } from './ball.js';
import { type Bowler, bowlerSchema } from './bowler.js';
import { type DrilledLayout, drilledLayoutSchema } from './drilled-layout.js';
import { type Lane, laneSchema } from './lane.js';
import { kindInTag } from './read-record.js';

/** The records a person keeps, by kind. */
export interface RecordOf {
  bowler: Bowler;
  ball: Ball;
  lane: Lane;
  layout: DrilledLayout;
}

export type RecordKind = keyof RecordOf;

export const RECORD_KINDS = ['bowler', 'ball', 'lane', 'layout'] as const satisfies readonly RecordKind[];

export const SCHEMAS: { readonly [K in RecordKind]: z.ZodType<RecordOf[K]> } = {
  bowler: bowlerSchema,
  ball: ballSchema,
  lane: laneSchema,
  layout: drilledLayoutSchema,
};

/** The kind that a record's tag names; null when it is none that is kept. */
export const recordKindOf = (value: unknown): RecordKind | null =>
  RECORD_KINDS.find((kind) => kind === kindInTag(value)) ?? null;
