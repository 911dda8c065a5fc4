import { z } from 'zod';
import type { StatementOf } from '../../../base/statement.js';
import { LENGTH_UNITS } from '../../schemas/core.js';
import { n, range } from './params.js';
import { statementSchema, type TopicOf } from './statement-schema.js';

const few = n.optional();

/** What was assumed because no record says otherwise, and what is known of a core of the ball's own. */
const shapes = {
  'own-core': { name: z.string(), parts: n },
  'own-core-cover': {
    thickness: n,
    unit: z.enum(LENGTH_UNITS),
    coverGcc: n,
    fillerGcc: n,
    weightLb: n,
  },
  'own-core-marks': { topWeightOz: n, pinToCgIn: n },
  /** Of a used ball whose core alone is looked at. */
  'old-holes-left-out': {},

  'asymmetric-by-mass-bias': {},
  'plain-or-lobed': { apartIn: n },
  'lobes-usual': { lobes: n },
  'lobes-toward-mark': { lobes: n, isCountGiven: z.boolean() },
  'lobes-any-way': { lobes: n },
  'no-mark': {},
  'core-under-cg': {},
  'many-cores': { byTopWeightIn: n.nullable() },
  'usual-circumference': { circumferenceIn: n },

  /** `wallIn`: the least wall between two of its bores at the surface; `meetAtIn`: how deep the fingers' meet. */
  'usual-grip': { fingerBoreIn: n, thumbBoreIn: n.nullable(), wallIn: n, meetAtIn: n.nullable() },
  'usual-slug': { densityGcc: n },
  'usual-inserts': { densityGcc: n },
  'drilled-before': {},
  'usual-plugs': { densityGcc: n },
  'usual-old-grip': {},
  'rg-about-drilled-centre': {},
  'ounce-is-moment': { leastTakenOz: n, mostTakenOz: n },
  'ounce-is-difference': {},

  'oil-on-ball': { carriedShare: range, bandWidthIn: range, mostWornPerPass: n },
  friction: { dry: range, oiled: range, grit: n, finishOnDry: range },
  'wear-of-oil': {
    games: n,
    side: z.enum(['right', 'left']),
    goneShare: n,
    burnPerGame: n,
    burnRange: range,
    carriedDown: n,
    carriedRange: range,
  },
  'usual-finish': { grit: n },

  'marking-and-making': {
    markingIn: n,
    markingDeg: n,
    rgIn: n,
    differentialShare: n,
    topWeightOz: n,
    pinToCgIn: n,
  },
  'usual-scatter': {
    skill: z.enum(['beginner', 'league', 'advanced']),
    speedMph: n,
    revRateRpm: n,
    axisTiltDeg: n,
    axisRotationDeg: n,
    launchAngleDeg: n,
  },
  'uncertain-release': {
    speedMph: few,
    revRateRpm: few,
    axisTiltDeg: few,
    axisRotationDeg: few,
    papOverIn: few,
    papUpIn: few,
  },
  'uncertain-ball': {
    rgIn: few,
    differentialIn: few,
    intermediateDifferentialIn: few,
    pinToCgIn: few,
    topWeightOz: few,
  },
  'launch-of-centre': {},
  'own-lines': { mostLaydownBoard: n, mostAngleDeg: n, feetPerArrows: n, pocketBoard: n },
  'no-wish': { entryDeg: range },
  'nominal-shot': { pocketBoard: n },
} as const;

export const assumptionSchema = statementSchema('assumption', shapes);
export type Assumptions = TopicOf<typeof shapes>;
export type Assumption = StatementOf<Assumptions>;
