import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { n } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

const hand = z.enum(['right', 'left']);
const films = { middleUnits: n, outsideUnits: n };

/** What a bowler would say of a lane. */
const shapes = {
  'oil-length': {
    patternFt: n,
    length: z.enum(['short', 'medium', 'long']),
    widestBoard: n,
    /** What common practice takes from the length to find that board, ft. */
    lessFt: n,
  },
  'oil-bare-outside': films,
  'oil-much-thicker-inside': { times: n, ...films },
  'oil-thicker-inside': { times: n, ...films },
  'oil-even': { times: n, ...films },
  'oil-thicker-outside': { times: n, ...films },
  'sides-alike': {},
  'sides-differ': { hand, ownUnits: n, otherUnits: n },
  'oil-in-all': {
    unitSquareFeet: n,
    before: z.array(z.strictObject({ toFt: n, share: n })),
  },
  'oil-after-games': {
    games: n,
    side: hand,
    goneFromTrack: n,
    takenOfAll: n,
    carriedOff: n,
    carriedDown: n,
  },
} as const;

export const laneRemarkSchema = statementSchema('lane-remark', shapes);
export type LaneRemarks = TopicOf<typeof shapes>;
export type LaneRemark = StatementOf<LaneRemarks>;
