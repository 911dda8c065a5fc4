import { z } from 'zod';
import { ballSchema } from './ball.js';
import { bowlerSchema } from './bowler.js';
import { drilledLayoutSchema } from './drilled-layout.js';
import { laneSchema } from './lane.js';

/** The kinds of records that a person keeps. */
export const RECORD_KINDS = ['bowler', 'ball', 'lane', 'layout'] as const;

/** A record of any of them, as it is in its file. */
export const keptRecordSchema = z.union([bowlerSchema, ballSchema, laneSchema, drilledLayoutSchema]);
