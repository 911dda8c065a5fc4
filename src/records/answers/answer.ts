import type { z } from 'zod';
import type { coreAnswerSchema, sectionSchema } from './core-answer.js';
import type { drilledAnswerSchema } from './drilled-answer.js';
import type { judgeAnswerSchema } from './judge-answer.js';
import type { mapAnswerSchema, mapRowSchema } from './map-answer.js';
import type { causesOfSchema, causesSchema } from './parts/causes-answer.js';
import type {
  drilledSchema,
  flareStartSchema,
  legalitySchema,
  markSchema,
  psaSchema,
} from './parts/drilled-numbers.js';
import type { bandSchema, layoutAnswerSchema } from './parts/layout-answer.js';
import type {
  bowTieSchema,
  lineSchema,
  missRoomSchema,
  noLineSchema,
  pathPointSchema,
  reactionSchema,
} from './parts/shot-answer.js';
import type {
  regressionSchema,
  sharesSchema,
  simulatedLayoutSchema,
  targetSchema,
} from './parts/simulated-layout.js';
import type { surerSchema } from './parts/surer-answer.js';
import type { voicesSchema } from './parts/voices.js';
import type {
  leverEffectSchema,
  rankedLayoutSchema,
  recommendAnswerSchema,
  stepEffectSchema,
} from './recommend-answer.js';
import type { rollAnswerSchema } from './roll-answer.js';
import type { differenceSchema } from './statements/differences.js';
import type { Unworded } from './statements/statement-schema.js';

/*
 * The answers as data: what is computed, and what `report` words and draws. `--json` prints the same with a sentence beside
 * each statement. Units are in the names; left-handers' boards and PAP sides are counted from their own side.
 */

type Data<S extends z.ZodType> = Unworded<z.infer<S>>;

export type LayoutAnswer = Data<typeof layoutAnswerSchema>;
export type Band = Data<typeof bandSchema>;

export type DrilledNumbersAnswer = Data<typeof drilledSchema>;
export type PsaAnswer = Data<typeof psaSchema>;
export type FlareStartAnswer = Data<typeof flareStartSchema>;
export type MarkAnswer = Data<typeof markSchema>;
export type LegalityAnswer = Data<typeof legalitySchema>;

export type ReactionAnswer = Data<typeof reactionSchema>;
export type PathPoint = Data<typeof pathPointSchema>;
export type LineAnswer = Data<typeof lineSchema>;
export type MissRoomAnswer = Data<typeof missRoomSchema>;
export type NoLineAnswer = Data<typeof noLineSchema>;
export type BowTieAnswer = Data<typeof bowTieSchema>;

export type SimulatedLayout = Data<typeof simulatedLayoutSchema>;
export type RegressionAnswer = Data<typeof regressionSchema>;
export type TargetAnswer = Data<typeof targetSchema>;
export type SharesAnswer = Data<typeof sharesSchema>;
export type CausesAnswer = Data<typeof causesSchema>;
export type CausesOf = Data<typeof causesOfSchema>;

export type LayoutDifference = Data<typeof differenceSchema>;
export type SurerAnswer = Data<typeof surerSchema>;
export type VoicesAnswer = Data<typeof voicesSchema>;

export type RankedLayout = Data<typeof rankedLayoutSchema>;
export type LeverEffect = Data<typeof leverEffectSchema>;
export type StepEffect = Data<typeof stepEffectSchema>;

export type RecommendAnswer = Data<typeof recommendAnswerSchema>;
export type DrilledAnswer = Data<typeof drilledAnswerSchema>;
export type RollAnswer = Data<typeof rollAnswerSchema>;
export type CoreAnswer = Data<typeof coreAnswerSchema>;
export type CoreSection = Data<typeof sectionSchema>;
export type MapAnswer = Data<typeof mapAnswerSchema>;
export type MapRow = Data<typeof mapRowSchema>;
export type JudgeAnswer = Data<typeof judgeAnswerSchema>;
