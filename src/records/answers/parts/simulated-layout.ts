import { z } from 'zod';
import { fromKeys } from '../../../base/from-keys.js';
import { ballSchema } from '../../schemas/ball.js';
import { bowlerSchema } from '../../schemas/bowler.js';
import { laneSchema } from '../../schemas/lane.js';
import { COMPARED_IDS, SHARED_IDS, WISHED_IDS, WISHES } from '../../schemas/reaction-numbers.js';
import { wantSchema } from '../../schemas/want.js';
import { objectionSchema } from '../statements/objections.js';
import { wishReading } from '../statements/params.js';
import { regressionNoticeSchema } from '../statements/regression-notices.js';
import { drilledBandsSchema, drilledSchema } from './drilled-numbers.js';
import { bandSchema, layoutAnswerSchema } from './layout-answer.js';
import { lineSchema, missRoomSchema, pathPointSchema, reactionSchema } from './shot-answer.js';
import { TWENTIETHS } from './twentieths.js';

const n = z.number();

const reactionBandsSchema = z
  .strictObject({
    ...fromKeys(COMPARED_IDS, () => bandSchema),
  })
  .meta({ id: 'reaction-bands' });

const twentiethsOfSchema = z.array(n).length(TWENTIETHS).meta({ id: 'twentieths' });

const twentiethsSchema = z
  .strictObject({
    score: twentiethsOfSchema,
    ...fromKeys(COMPARED_IDS, () => twentiethsOfSchema),
  })
  .meta({
    description:
      'Quantiles over the worlds, ascending, at 2.5 %, 7.5 % and so on to 97.5 %: each stands for one world in twenty.',
  });

export const pairedSchema = z.strictObject(fromKeys(WISHED_IDS, () => twentiethsOfSchema)).meta({
  id: 'paired',
  description:
    'Differences from another layout in the same world, physics and practice combined, over the worlds in which both reach the pins: ' +
    'quantiles as in twentieths.',
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
export const sharesSchema = z.strictObject({
  score: sharesOfSchema,
  ...fromKeys(SHARED_IDS, () => sharesOfSchema),
  differentialIn: sharesOfSchema,
  intermediateDifferentialIn: sharesOfSchema,
});

export const simulatedLayoutSchema = layoutAnswerSchema
  .extend({
    score: n.meta({
      description:
        '0 to 100: how near the wanted reaction, by physics and practice as they are weighed; mean over the worlds in which the ball ' +
        'reaches the pins.',
    }),
    nominalScore: n.meta({
      description: 'The same in the nominal world alone, by physics alone; shares and causes are about it.',
    }),
    objections: z
      .array(objectionSchema)
      .meta({ description: 'Why the search would set this layout aside; empty when it would not.' }),
    drilled: drilledSchema,
    bands: z.strictObject({ drilled: drilledBandsSchema, reaction: reactionBandsSchema, score: bandSchema }),
    twentieths: twentiethsSchema,
    line: lineSchema,
    missRoom: missRoomSchema
      .nullable()
      .meta({ description: 'Null when the line does not reach the pocket.' }),
    gutterShare: n.meta({
      description:
        'Share of worlds in which it does not reach the pins; bands and means are over the others.',
    }),
    pocketShare: n.meta({ description: 'Share of worlds in which it still reaches boards 16.5 to 18.5.' }),
    reaction: reactionSchema,
    path: z.array(pathPointSchema),
  })
  .meta({ id: 'simulated-layout' });

export const regressionSchema = z
  .strictObject({
    notice: regressionNoticeSchema
      .nullable()
      .meta({ description: 'Why physics searched alone; null when it did not.' }),
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

export const targetSchema = z.strictObject({
  wish: z.enum(WISHES),
  step: n.nullable().meta({ description: 'Of five; null where a number was asked for.' }),
  asked: n.optional().meta({ description: 'The number that was asked for, where one was.' }),
  reading: wishReading.meta({ description: 'The reaction number it is about; its name carries the unit.' }),
  value: n.meta({
    description:
      'Aimed for: a quantile of what the layouts of this ball attain, or the number asked for as far as they attain it.',
  }),
  attainable: bandSchema,
});

export const inputsSchema = z.strictObject({
  bowler: bowlerSchema,
  ball: ballSchema,
  lane: laneSchema,
  want: wantSchema,
});
