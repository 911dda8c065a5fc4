import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { UNCERTAIN_BALL_KEYS } from '../../schemas/ball-uncertainty.js';
import { RELEASE_IDS } from './ids.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** What of a lane's friction is not known. */
const LANE_FRICTIONS = ['oiled', 'dry', 'film', 'finish'] as const;

/** What a recommendation did not know for sure. */
const shapes = {
  /** How far off it may be: one standard deviation, in its own unit. */
  'release-number': { number: z.enum(RELEASE_IDS), offBy: n },
  'pap-place': { overOffByIn: n, upOffByIn: n },
  'which-core': { cores: n },
  'ball-as-made': {},
  /** Numbers of the ball that were guessed. */
  'ball-numbers': { guessed: z.array(z.enum(UNCERTAIN_BALL_KEYS)) },
  'lane-friction': { of: z.enum(LANE_FRICTIONS) },
  'oil-on-rings': {},
  'wear-of-games': { games: n },
  'belief-of-practice': { id: z.string(), says: z.string() },
} as const;

export const unknownSchema = statementSchema('unknown', shapes);
export type Unknowns = TopicOf<typeof shapes>;
export type Unknown = StatementOf<Unknowns>;
