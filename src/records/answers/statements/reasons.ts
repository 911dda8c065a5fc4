import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { CAUSES } from './ids.js';
import { n, wishReading } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

const differentials = { undrilledIn: n, drilledIn: n };
const withAngle = { ...differentials, byDrillingAngleIn: n };

/** Why a layout does what it does. */
const shapes = {
  'meets-wish': { reading: wishReading, step: n.nullable(), found: n, wanted: n, usual: n },
  'cause-of-difference': {
    reading: wishReading,
    /** Difference from the usual middle layout in the nominal world. */
    total: n,
    cause: z.enum(CAUSES),
    byCause: n,
    /** What of the difference is left when the cause is taken away. */
    without: n,
  },
  'difference-by-finish': {
    reading: wishReading,
    total: n,
    /** What of the difference is left with the usual finish. */
    left: n,
    usualGrit: n,
    grit: n,
  },
  'flare-and-differential': {
    ...differentials,
    flareIn: n,
    usualFlareIn: n,
    /** By how much the axis moves in the first turn, where that goes with a noticeable difference of flare. */
    start: z.strictObject({ perTurnIn: n, usualPerTurnIn: n }).nullable(),
    /** What more or less flare does to where the hook starts; null where that is no noticeable part of the difference. */
    grips: z.strictObject({ how: z.enum(['more', 'less']), hookStartFt: n }).nullable(),
    /** Where flare is greatest, when the pin lies near it and the ball flares no less than the usual layout. */
    peakIn: n.nullable(),
  },
  'intermediate-without-mark': differentials,
  'intermediate-of-many-cores': differentials,
  'intermediate-of-plain-core': {
    ...differentials,
    /** Whether the drilling angle, by which the mark is laid out, changes the score or the shot noticeably. */
    markMatters: z.boolean(),
  },
  'intermediate-of-lobed-core': withAngle,
  'intermediate-of-own-core': withAngle,
  'intermediate-of-asymmetric-core': withAngle,
  'shares-of-score': {
    total: n,
    drillingAngle: n.nullable(),
    pinToPap: n,
    valAngle: n,
    /** The same total by cause; null where the balls tried for it cannot be compared. */
    byCause: z.strictObject({ centre: n, flare: n, inertia: n }).nullable(),
  },
  'drilling-angle-moves-centre': {
    /** What the drilling angle changes of the score, and what is left of that with the centre of mass held. */
    points: n,
    withCentreHeld: n,
    sideOz: n,
    fingerOz: n,
    topOz: n,
  },
  'next-layout': {
    layout: z.string(),
    /** Points of mean score. */
    behind: n,
    mostOf: z.strictObject({ reading: wishReading, next: n, found: n }).nullable(),
  },
} as const;

export const reasonSchema = statementSchema('reason', shapes);
export type Reasons = TopicOf<typeof shapes>;
export type Reason = StatementOf<Reasons>;
