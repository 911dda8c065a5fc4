import { z } from 'zod';
import { ballSchema } from './ball.js';
import { bowlerSchema } from './bowler.js';
import { laneSchema } from './lane.js';
import { wantSchema } from './want.js';

/*
 * The answers as data: what `--json` prints and what `report` words and draws. Units stand in the names;
 * left-handers' boards and PAP sides are counted from their own side.
 */

const n = z.number();

/** 5th and 95th percentile. */
const bandSchema = z.strictObject({ low: n, high: n });

export const layoutAnswerSchema = z
  .strictObject({
    text: z.string(),
    drillingAngleDeg: n,
    pinToPapIn: n,
    valAngleDeg: n,
    pinBufferIn: n,
    markerToPapIn: n,
  })
  .meta({
    title: 'Layout',
    description: 'In both notations; text is drilling angle x pin-to-PAP x VAL angle.',
  });

export const drilledSchema = z.strictObject({
  massLb: n,
  rgIn: n,
  differentialIn: n,
  intermediateDifferentialIn: n,
  staticOz: z.strictObject({ top: n, side: n, finger: n }).meta({
    description: 'Positive: toward the grip (top), the PAP side (side), the fingers (finger).',
  }),
});

/** Where the drilled ball's high-RG axis comes out, nearest the thumb. */
export const psaSchema = z.strictObject({
  overIn: n,
  upIn: n,
  fromPapIn: n,
  fromPinIn: n,
  fromGripCentreIn: n,
  certain: z.boolean(),
});

const markSchema = z
  .strictObject({ mark: z.string(), fromGripCentreIn: n, fromPapIn: n, fromPinIn: n.nullable() })
  .meta({ description: 'Tape arcs that place a mark; any two from marks already on the ball find it.' });

const legalitySchema = z.strictObject({
  ruleSet: z.string(),
  edition: z.string(),
  legal: z.boolean(),
  findings: z.array(z.string()),
});

export const reactionSchema = z.strictObject({
  outcome: z.enum(['pins', 'gutter', 'stopped', 'invalid']),
  hookStartFt: n,
  rollStartFt: n,
  rollsBeforePins: z.boolean(),
  hookSharpnessDegPerFt: n,
  breakpointFt: n,
  breakpointBoard: n,
  totalHookBoards: n,
  entryAngleDeg: n,
  pinsBoard: n,
  flareIn: n,
  ringClearanceIn: n,
  turns: n,
  speedAtPinsMph: n,
  revRateAtPinsRpm: n,
});

const drilledBandsSchema = z.strictObject({
  rgIn: bandSchema,
  differentialIn: bandSchema,
  intermediateDifferentialIn: bandSchema,
});

const reactionBandsSchema = z.strictObject({
  hookStartFt: bandSchema,
  hookSharpnessDegPerFt: bandSchema,
  totalHookBoards: bandSchema,
  entryAngleDeg: bandSchema,
  flareIn: bandSchema,
});

const sharesOfSchema = z.strictObject({
  total: n,
  drillingAngle: n,
  pinToPap: n,
  valAngle: n,
});

/** Exact Shapley shares of the three layout numbers, against the usual middle layout. */
const sharesSchema = z.strictObject({
  score: sharesOfSchema,
  hookStartFt: sharesOfSchema,
  hookSharpnessDegPerFt: sharesOfSchema,
  totalHookBoards: sharesOfSchema,
  flareIn: sharesOfSchema,
  differentialIn: sharesOfSchema,
  intermediateDifferentialIn: sharesOfSchema,
});

const pathPointSchema = z.strictObject({
  timeS: n,
  distanceFt: n,
  board: n,
  speedMph: n,
  revRateRpm: n,
  headingDeg: n,
  slipMps: n,
});

const stepEffectSchema = z
  .strictObject({
    change: z.string(),
    score: n,
    hookStartFt: n,
    hookSharpnessDegPerFt: n,
    totalHookBoards: n,
    flareIn: n,
  })
  .meta({ description: 'What one more step in one layout number would change.' });

const simulatedLayoutSchema = layoutAnswerSchema.extend({
  score: n.meta({ description: '0 to 100: how near the wanted reaction; mean over all worlds.' }),
  nominalScore: n.meta({
    description: 'The same in the nominal world alone; shares and steps are about it.',
  }),
  objections: z
    .array(z.string())
    .meta({ description: 'Why the search would set this layout aside; empty when it would not.' }),
  drilled: drilledSchema,
  bands: z.strictObject({ drilled: drilledBandsSchema, reaction: reactionBandsSchema, score: bandSchema }),
  reaction: reactionSchema,
  path: z.array(pathPointSchema),
});

const rankedLayoutSchema = simulatedLayoutSchema.extend({
  rank: n,
  confidence: z.strictObject({
    beatsRunnerUp: n.meta({ description: 'Share of worlds in which it scores above the next in rank.' }),
    beatsMiddle: n.meta({ description: 'Share of worlds in which it scores above the usual middle layout.' }),
    worlds: n,
  }),
  psa: psaSchema,
  marks: z.array(markSchema),
  legality: legalitySchema,
  shares: sharesSchema,
  steps: z.array(stepEffectSchema),
  reasons: z.array(z.string()),
});

const inputsSchema = z.strictObject({
  bowler: bowlerSchema,
  ball: ballSchema,
  lane: laneSchema,
  want: wantSchema,
});

const undrilledSchema = z.strictObject({
  massLb: n,
  rgIn: n,
  differentialIn: n,
  intermediateDifferentialIn: n,
});

const lineSchema = z.strictObject({
  laydownBoard: n,
  launchAngleDeg: n,
  pocketBoard: n,
  reachesPocket: z.boolean(),
});

const targetSchema = z.strictObject({
  wish: z.enum(['hookStart', 'hookShape', 'hookTotal']),
  step: n,
  quantity: z.string(),
  unit: z.string(),
  value: n.meta({ description: 'Aimed for: a quantile of what the layouts of this ball attain.' }),
  attainable: bandSchema,
});

export const recommendAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/recommend/1'),
    version: z.string(),
    seed: n,
    inputs: inputsSchema,
    assumptions: z.array(z.string()),
    line: lineSchema,
    targets: z.array(targetSchema),
    search: z.strictObject({
      candidates: n,
      shots: n,
      rejected: z.array(z.strictObject({ reason: z.string(), count: n })),
    }),
    middle: simulatedLayoutSchema,
    layouts: z.array(rankedLayoutSchema).min(1),
    limits: z
      .array(z.string())
      .meta({ description: 'What holds the result back: a constraint, the ball, the lane.' }),
    cautions: z.array(z.string()),
  })
  .meta({ title: 'Recommendation' });

export const drilledAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/drilled/1'),
    version: z.string(),
    ball: z.string(),
    bowler: z.string(),
    layout: layoutAnswerSchema,
    undrilled: undrilledSchema,
    drilled: drilledSchema,
    bands: drilledBandsSchema,
    psa: psaSchema,
    marks: z.array(markSchema),
    legality: legalitySchema,
    assumptions: z.array(z.string()),
    cautions: z.array(z.string()),
  })
  .meta({ title: 'Drilled numbers' });

export const rollAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/roll/1'),
    version: z.string(),
    ball: z.string(),
    bowler: z.string(),
    lane: z.string(),
    layout: layoutAnswerSchema,
    line: lineSchema,
    reaction: reactionSchema,
    objections: z.array(z.string()).meta({ description: 'What speaks against this layout for this bowler.' }),
    drilled: drilledSchema,
    path: z.array(pathPointSchema),
    rings: z
      .array(z.strictObject({ turn: n, fromFt: n, points: z.array(z.strictObject({ overIn: n, upIn: n })) }))
      .meta({
        description: 'Each turn’s ring on the ball: arcs over and up from the grip centre, like a PAP.',
      }),
    assumptions: z.array(z.string()),
    cautions: z.array(z.string()),
  })
  .meta({ title: 'One shot' });

export const judgeAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/judge/1'),
    version: z.string(),
    seed: n,
    inputs: inputsSchema,
    verdict: z.enum(['not-allowed', 'clearly-worse', 'probably-worse', 'as-good']),
    line: lineSchema,
    targets: z.array(targetSchema),
    layout: simulatedLayoutSchema.extend({
      psa: psaSchema,
      marks: z.array(markSchema),
      legality: legalitySchema,
    }),
    place: z
      .strictObject({ betterThan: n, of: n })
      .meta({ description: 'How many allowed layouts of an even grid score below it in the nominal world.' }),
    best: simulatedLayoutSchema,
    confidence: z
      .strictObject({ bestBeatsIt: n, beatsMiddle: n, worlds: n })
      .meta({ description: 'Shares of worlds.' }),
    shares: sharesSchema.meta({ description: 'Of the change from this layout to the best one.' }),
    marking: z
      .array(z.strictObject({ error: z.string(), score: n, flareIn: n, totalHookBoards: n }))
      .meta({ description: 'What the worse side of each marking error changes.' }),
    assumptions: z.array(z.string()),
    cautions: z.array(z.string()),
  })
  .meta({ title: 'Second opinion' });

const mapRowSchema = z.strictObject({
  layout: layoutAnswerSchema,
  drilled: drilledSchema,
  bands: drilledBandsSchema,
  psa: psaSchema,
});

export const mapAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/map/1'),
    version: z.string(),
    ball: z.string(),
    bowler: z.string(),
    over: z.enum(['drilling-angle', 'pin-to-pap', 'buffer']),
    undrilled: undrilledSchema,
    rows: z.array(mapRowSchema).min(2),
    reach: z
      .strictObject({
        differentialIn: z.strictObject({ least: n, most: n }),
        intermediateDifferentialIn: z.strictObject({ least: n, most: n }),
        bandIn: n.meta({ description: 'Typical width of the band of intermediate differential over cores.' }),
        matters: z.boolean().meta({ description: 'Whether the numbers move by more than the cores differ.' }),
      })
      .meta({ description: 'How far the numbers move over the rows.' }),
    assumptions: z.array(z.string()),
    cautions: z.array(z.string()),
  })
  .meta({ title: 'Map of drilled numbers' });

export type LayoutAnswer = z.infer<typeof layoutAnswerSchema>;
export type DrilledNumbersAnswer = z.infer<typeof drilledSchema>;
export type PsaAnswer = z.infer<typeof psaSchema>;
export type MarkAnswer = z.infer<typeof markSchema>;
export type LegalityAnswer = z.infer<typeof legalitySchema>;
export type ReactionAnswer = z.infer<typeof reactionSchema>;
export type PathPoint = z.infer<typeof pathPointSchema>;
export type Band = z.infer<typeof bandSchema>;
export type SimulatedLayout = z.infer<typeof simulatedLayoutSchema>;
export type RankedLayout = z.infer<typeof rankedLayoutSchema>;
export type TargetAnswer = z.infer<typeof targetSchema>;
export type SharesAnswer = z.infer<typeof sharesSchema>;
export type StepEffect = z.infer<typeof stepEffectSchema>;
export type RecommendAnswer = z.infer<typeof recommendAnswerSchema>;
export type DrilledAnswer = z.infer<typeof drilledAnswerSchema>;
export type RollAnswer = z.infer<typeof rollAnswerSchema>;
export type MapAnswer = z.infer<typeof mapAnswerSchema>;
export type MapRow = z.infer<typeof mapRowSchema>;
export type JudgeAnswer = z.infer<typeof judgeAnswerSchema>;
