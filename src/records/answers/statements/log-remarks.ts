import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { READING_IDS } from '../../schemas/shot-log.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

/** What looks odd about shots that are logged: the person is asked whether it was so. */
const oddities = {
  /** The path bends away from the pocket, as boards counted from the wrong side make it. */
  'bends-outward': { laydownBoard: n, arrowsBoard: n, straightBoard: n, pinsBoard: n },
  'sent-too-far': {
    laydownBoard: n,
    arrowsBoard: n,
    toward: z.enum(['outside', 'inside']),
    angleDeg: n,
    mostDeg: n,
  },
  'breakpoint-not-outermost': {
    breakpointBoard: n,
    place: z.enum(['laydown', 'arrows', 'at-50', 'pins']),
    board: n,
  },
  'breakpoint-past-line': { breakpointBoard: n, straightBoard: n, straightFt: n },
  'turns-too-much': { place: z.enum(['breakpoint', 'at-50']), angleDeg: n, mostDeg: n },
  'gutter-from-inside': { breakpointBoard: n },
  'off-target': { arrowsBoard: n, targetBoard: n },
  /** `asMetresFt`: what it would be if it was in metres. */
  'breakpoint-near': { breakpointFt: n, asMetresFt: n },
  /** `meantMph`: what it would be in the other unit, where that fits; `releaseMph`: the bowler's, where known. */
  'display-too-fast': { displaySpeedMph: n, releaseMph: n.nullable(), meantMph: n.nullable() },
  'display-too-slow': { displaySpeedMph: n, releaseMph: n, meantMph: n.nullable() },
  'night-to-come': { on: z.string(), today: z.string() },
  'night-before-drilling': { on: z.string(), drilledOn: z.string() },
  'lane-misspelt': { lane: z.string(), near: z.string() },
  'pattern-not-of-lane': { patternFt: n, lanePatternFt: n },
  'logged-before': { shots: n },
} as const;

/** What is worth saying of shots that are logged, without a question. */
const remarks = {
  'wild-shot': {
    shot: n,
    reading: z.enum(READING_IDS),
    value: n,
    median: n,
    shots: n,
  },
  'breakpoint-not-of-pattern': { breakpointFt: n, shots: n, patternFt: n },
  'lane-not-kept': { lane: z.string() },
} as const;

export const logRemarkSchema = statementSchema('log-remark', { ...oddities, ...remarks });
type Oddities = TopicOf<typeof oddities>;
export type Oddity = StatementOf<Oddities>;
export type LogRemarks = TopicOf<typeof oddities & typeof remarks>;
export type LogRemark = StatementOf<LogRemarks>;
