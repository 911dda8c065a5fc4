import { type BallRecord, ballSchemaFor } from '../schemas/ball.js';
import { type Bowler, bowlerSchema } from '../schemas/bowler.js';
import { type DrilledLayout, drilledLayoutSchema } from '../schemas/drilled-layout.js';
import { RECORD_KINDS } from '../schemas/kept-record.js';
import { type Lane, laneSchema } from '../schemas/lane.js';
import { kindInTag, type RecordSchema } from './read-record.js';

/** The records a person keeps, by kind, as they are in their files. */
export interface RecordOf {
  bowler: Bowler;
  ball: BallRecord;
  lane: Lane;
  layout: DrilledLayout;
}

export type RecordKind = keyof RecordOf;

export const SCHEMAS: { readonly [K in RecordKind]: RecordSchema<RecordOf[K]> } = {
  bowler: bowlerSchema,
  ball: ballSchemaFor,
  lane: laneSchema,
  layout: drilledLayoutSchema,
};

/** The tag of each kind, with the version that is written. */
export const RECORD_TAGS: { readonly [K in RecordKind]: RecordOf[K]['schema'] } = {
  bowler: 'flarewise/bowler/1',
  ball: 'flarewise/ball/1',
  lane: 'flarewise/lane/1',
  layout: 'flarewise/layout/2',
};

/** The kind that a record's tag names; null for a kind that is not kept. */
export const recordKindOf = (value: unknown): RecordKind | null =>
  RECORD_KINDS.find((kind) => kind === kindInTag(value)) ?? null;
