import { z } from 'zod';
import { ballSchema } from '../schemas/ball.js';
import { bowlerSchema } from '../schemas/bowler.js';
import { laneSchema } from '../schemas/lane.js';
import { wantSchema } from '../schemas/want.js';
import { ballFaceSchema, ringSchema } from './ball-face.js';

/*
 * The answers as data: what `--json` prints and what `report` words and draws. Units stand in the names;
 * left-handers' boards and PAP sides are counted from their own side.
 */

const n = z.number();

/** 5th and 95th percentile. */
export const bandSchema = z.strictObject({ low: n, high: n }).meta({ id: 'band' });

export const layoutAnswerSchema = z
  .strictObject({
    text: z.string(),
    drillingAngleDeg: n.nullable(),
    pinToPapIn: n,
    valAngleDeg: n,
    pinBufferIn: n,
    markerToPapIn: n.nullable(),
  })
  .meta({
    id: 'layout',
    title: 'Layout',
    description:
      'In both notations; text is drilling angle x pin-to-PAP x VAL angle. Null where the CG lies on the pin: there is no mark to aim at.',
  });

export const drilledSchema = z
  .strictObject({
    massLb: n,
    rgIn: n,
    differentialIn: n,
    intermediateDifferentialIn: n,
    staticOz: z.strictObject({ top: n, side: n, finger: n }).meta({
      description: 'Positive: toward the grip (top), the PAP side (side), the fingers (finger).',
    }),
  })
  .meta({ id: 'drilled-numbers' });

/** Where the drilled ball's high-RG axis comes out, nearest the thumb. */
export const psaSchema = z
  .strictObject({
    overIn: n,
    upIn: n,
    fromPapIn: n,
    fromPinIn: n,
    fromGripCentreIn: n,
    certain: z.boolean(),
  })
  .meta({ id: 'psa' });

const markSchema = z
  .strictObject({ mark: z.string(), fromGripCentreIn: n, fromPapIn: n, fromPinIn: n.nullable() })
  .meta({
    id: 'mark',
    description: 'Tape arcs that place a mark; any two from marks already on the ball find it.',
  });

export const legalitySchema = z
  .strictObject({
    ruleSet: z.string(),
    edition: z.string(),
    legal: z.boolean(),
    findings: z.array(z.string()),
  })
  .meta({ id: 'legality' });

export const reactionSchema = z
  .strictObject({
    outcome: z.enum(['pins', 'gutter', 'stopped']),
    hookStartFt: n,
    rollStartFt: n,
    rollsBeforePins: z.boolean(),
    sharpnessDegPerFt: n,
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
  })
  .meta({ id: 'reaction' });

export const drilledBandsSchema = z
  .strictObject({
    rgIn: bandSchema,
    differentialIn: bandSchema,
    intermediateDifferentialIn: bandSchema,
  })
  .meta({ id: 'drilled-bands' });

const reactionBandsSchema = z
  .strictObject({
    hookStartFt: bandSchema,
    sharpnessDegPerFt: bandSchema,
    totalHookBoards: bandSchema,
    entryAngleDeg: bandSchema,
    flareIn: bandSchema,
  })
  .meta({ id: 'reaction-bands' });

/** How many of a number's values over the worlds an answer gives; each stands for as large a share of them. */
export const TWENTIETHS = 20;

const twentiethsOfSchema = z.array(n).length(TWENTIETHS).meta({ id: 'twentieths' });

const twentiethsSchema = z
  .strictObject({
    score: twentiethsOfSchema,
    hookStartFt: twentiethsOfSchema,
    sharpnessDegPerFt: twentiethsOfSchema,
    totalHookBoards: twentiethsOfSchema,
    entryAngleDeg: twentiethsOfSchema,
    flareIn: twentiethsOfSchema,
  })
  .meta({
    description:
      'Quantiles over the worlds, ascending, at 2.5 %, 7.5 % and so on to 97.5 %: each stands for one world in twenty.',
  });

const sharesOfSchema = z
  .strictObject({
    total: n,
    drillingAngle: n,
    pinToPap: n,
    valAngle: n,
  })
  .meta({ id: 'shares' });

/** Exact Shapley shares of the three layout numbers, against the usual middle layout. */
const sharesSchema = z.strictObject({
  score: sharesOfSchema,
  hookStartFt: sharesOfSchema,
  sharpnessDegPerFt: sharesOfSchema,
  totalHookBoards: sharesOfSchema,
  flareIn: sharesOfSchema,
  differentialIn: sharesOfSchema,
  intermediateDifferentialIn: sharesOfSchema,
});

const pathPointSchema = z
  .strictObject({
    timeS: n,
    distanceFt: n,
    board: n,
    speedMph: n,
    revRateRpm: n,
    headingDeg: n,
    slipMps: n,
  })
  .meta({ id: 'path-point' });

const stepEffectSchema = z
  .strictObject({
    change: z.string(),
    score: n,
    hookStartFt: n,
    sharpnessDegPerFt: n,
    totalHookBoards: n,
    flareIn: n,
  })
  .meta({ description: 'What one more step in one layout number would change.' });

const lineSchema = z
  .strictObject({
    laydownBoard: n,
    launchAngleDeg: n,
    arrowsBoard: n
      .nullable()
      .meta({ description: 'Board crossed 15 ft down the lane; null when the ball does not get there.' }),
    breakpointBoard: n,
    pocketBoard: n,
    reachesPocket: z.boolean(),
  })
  .meta({
    id: 'line',
    description:
      'The line a layout was rolled on: its own, re-aimed at board 17.5; it reaches the pocket when it ends on ' +
      'boards 16.5 to 18.5.',
  });

/** A way to miss to either side; outside is toward the bowler's own gutter. */
const sidesSchema = z.strictObject({ outside: n, inside: n }).meta({ id: 'sides' });

const missRoomSchema = z
  .strictObject({ laydownBoards: sidesSchema, angleDeg: sidesSchema, arrowsBoards: sidesSchema })
  .meta({
    id: 'miss-room',
    description:
      'How far one shot may miss its line, one thing at a time, and still reach boards 16.5 to 18.5 at the pins; ' +
      'looked for up to 6 boards and 3 degrees. arrowsBoards is the miss of angle seen at 15 ft.',
  });

const noLineSchema = z
  .strictObject({
    why: z.enum(['hooks-past', 'falls-short', 'never-arrives']),
    nearest: z.strictObject({ laydownBoard: n, launchAngleDeg: n, pinsBoard: n.nullable() }),
    says: z.string(),
    remedies: z.array(z.string()).meta({ description: 'What was tried and would bring it there.' }),
  })
  .meta({ description: 'Why no line reaches the pocket, what comes nearest, and what would help.' });

const simulatedLayoutSchema = layoutAnswerSchema
  .extend({
    score: n.meta({ description: '0 to 100: how near the wanted reaction; mean over all worlds.' }),
    nominalScore: n.meta({
      description: 'The same in the nominal world alone; shares and steps are about it.',
    }),
    objections: z
      .array(z.string())
      .meta({ description: 'Why the search would set this layout aside; empty when it would not.' }),
    drilled: drilledSchema,
    bands: z.strictObject({ drilled: drilledBandsSchema, reaction: reactionBandsSchema, score: bandSchema }),
    twentieths: twentiethsSchema,
    line: lineSchema,
    missRoom: missRoomSchema
      .nullable()
      .meta({ description: 'Null when the line does not reach the pocket.' }),
    pocketShare: n.meta({ description: 'Share of worlds in which it still reaches boards 16.5 to 18.5.' }),
    reaction: reactionSchema,
    path: z.array(pathPointSchema),
  })
  .meta({ id: 'simulated-layout' });

const regressionSchema = z
  .strictObject({
    notice: z.string().nullable().meta({ description: 'Why physics searched alone; null when it did not.' }),
    arithmetic: z
      .enum(['runtime', 'plain'])
      .nullable()
      .meta({
        description:
          'What worked the regression out: the ONNX runtime, or plain arithmetic without it, which takes longer; null when ' +
          'physics searched alone.',
      }),
    candidateWorlds: n,
    tunedTo: n.meta({ description: 'Shots of physics the regression was tuned to.' }),
    listed: z.array(z.strictObject({ layout: z.string(), byRegression: n, byPhysics: n })).meta({
      description: 'Mean scores over worlds of the layouts listed, by the regression and by physics.',
    }),
    difference: z.strictObject({ typical: n, worst: n, layouts: n }).nullable().meta({
      description:
        'Between the mean scores that regression and physics give the layouts listed: root mean square, worst.',
    }),
  })
  .meta({
    description: 'What the fitted regression did in the search; every number of a layout is by physics.',
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

export const undrilledSchema = z
  .strictObject({
    massLb: n,
    rgIn: n,
    differentialIn: n,
    intermediateDifferentialIn: n,
  })
  .meta({ id: 'undrilled-numbers' });

const redrilledSchema = z
  .strictObject({
    oldHoles: n,
    plugOz: n.meta({ description: 'What fills the old holes, before the new ones are drilled.' }),
    plugTakenOz: n.meta({ description: 'What the new holes take of it.' }),
    oldMarks: z.array(markSchema).meta({ description: 'Where the old holes come to lie, plugged.' }),
    plugged: undrilledSchema.meta({ description: 'The ball with its old holes filled and no new ones.' }),
  })
  .meta({ description: 'Of a ball that was drilled before; null for a new one.' });

const targetSchema = z.strictObject({
  wish: z.enum(['hookStart', 'sharpness', 'totalHook']),
  step: n,
  quantity: z.string(),
  unit: z.string(),
  value: n.meta({ description: 'Aimed for: a quantile of what the layouts of this ball attain.' }),
  attainable: bandSchema,
});

export const leverEffectSchema = z
  .strictObject({
    kind: z.enum(['surface', 'line', 'ball']),
    change: z.string(),
    score: n,
    reaction: reactionSchema,
  })
  .meta({
    description:
      'What one other change would do with the best layout, in the nominal world, on the line it then takes.',
  });

const practiceSchema = z
  .strictObject({
    belief: z.string(),
    reading: z.enum(['hookStartFt', 'sharpnessDegPerFt', 'totalHookBoards', 'entryAngleDeg', 'flareIn']),
    change: n.meta({ description: 'In the nominal world.' }),
    holdsIn: n.meta({ description: 'Share of the worlds in which the belief holds.' }),
    worlds: n,
    verdict: z.enum(['agrees', 'disagrees', 'depends', 'hardly-shows']),
    says: z.string(),
  })
  .meta({ description: 'What common practice expects beside what the engine finds with the first layout.' });

export const recommendAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/recommend/1'),
    version: z.string(),
    seed: n,
    inputs: inputsSchema,
    assumptions: z.array(z.string()),
    noLine: noLineSchema.nullable(),
    targets: z.array(targetSchema),
    search: z.strictObject({
      candidates: n,
      shots: n,
      rejected: z.array(z.strictObject({ reason: z.string(), count: n })),
      regression: regressionSchema,
    }),
    middle: simulatedLayoutSchema,
    layouts: z.array(rankedLayoutSchema).min(1),
    limits: z
      .array(z.string())
      .meta({ description: 'What holds the result back: a constraint, the ball, the lane.' }),
    levers: z
      .array(leverEffectSchema)
      .meta({ description: 'Finish, line, other balls of the person: when layout is not enough.' }),
    practice: z.array(practiceSchema),
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
    redrilled: redrilledSchema.nullable(),
    drilled: drilledSchema,
    bands: drilledBandsSchema,
    psa: psaSchema,
    marks: z.array(markSchema),
    face: ballFaceSchema,
    legality: legalitySchema,
    assumptions: z.array(z.string()),
    cautions: z.array(z.string()),
  })
  .meta({ title: 'Drilled numbers' });

const bowTieSchema = z
  .array(z.strictObject({ overIn: n, upIn: n, fromGripCentreIn: n, fromPapIn: n, spreadIn: n }))
  .length(2)
  .nullable()
  .meta({
    description:
      'The two places where the rings laid in oil cross, the one farther toward the fingers first: as arcs over and ' +
      'up from the grip centre, and as tape arcs from two marks; spreadIn is how far the rings pass each by. Null ' +
      'when the rings hardly part.',
  });

export const rollAnswerSchema = z
  .strictObject({
    schema: z.literal('flarewise/roll/1'),
    version: z.string(),
    ball: z.string(),
    bowler: z.string(),
    lane: z.string(),
    layout: layoutAnswerSchema,
    line: lineSchema,
    noLine: noLineSchema.nullable(),
    missRoom: missRoomSchema.nullable(),
    reaction: reactionSchema,
    objections: z.array(z.string()).meta({ description: 'What speaks against this layout for this bowler.' }),
    drilled: drilledSchema,
    face: ballFaceSchema,
    path: z.array(pathPointSchema),
    rings: z.array(ringSchema),
    ringsInOil: n.meta({ description: 'How many of them were laid in oil and can be seen on the ball.' }),
    bowTie: bowTieSchema,
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
    noLine: noLineSchema.nullable(),
    targets: z.array(targetSchema),
    layout: simulatedLayoutSchema.extend({
      psa: psaSchema,
      marks: z.array(markSchema),
      legality: legalitySchema,
    }),
    place: z.strictObject({ betterThan: n, of: n, by: z.enum(['physics', 'regression']) }).meta({
      description:
        'How many layouts score below it: by physics, allowed ones of an even grid in the nominal world; by the ' +
        'regression, all that may be marked, over plausible worlds.',
    }),
    best: simulatedLayoutSchema,
    regression: regressionSchema,
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
        bandIn: n.meta({
          description:
            'Typical width of the band of intermediate differential over cores; 0 for a core of its own.',
        }),
        matters: z.boolean().meta({
          description: 'Whether the numbers move by more than the cores, or else made balls, differ.',
        }),
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
export type LineAnswer = z.infer<typeof lineSchema>;
export type MissRoomAnswer = z.infer<typeof missRoomSchema>;
export type LeverEffect = z.infer<typeof leverEffectSchema>;
export type PracticeAnswer = z.infer<typeof practiceSchema>;
export type BowTieAnswer = z.infer<typeof bowTieSchema>;
export type NoLineAnswer = z.infer<typeof noLineSchema>;
export type Band = z.infer<typeof bandSchema>;
export type SimulatedLayout = z.infer<typeof simulatedLayoutSchema>;
export type RegressionAnswer = z.infer<typeof regressionSchema>;
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
