import { z } from 'zod';
import { ballSchema } from '../schemas/ball.js';
import { bowlerSchema } from '../schemas/bowler.js';
import { coreSchema } from '../schemas/core.js';
import { laneSchema } from '../schemas/lane.js';
import { wantSchema } from '../schemas/want.js';
import { drilledAnswerSchema } from './drilled-answer.js';
import { judgeAnswerSchema } from './judge-answer.js';
import { laneAnswerSchema } from './lane-answer.js';
import { layoutAnswerSchema } from './layout-answer.js';
import { mapAnswerSchema } from './map-answer.js';
import { recommendAnswerSchema } from './recommend-answer.js';
import { rollAnswerSchema } from './roll-answer.js';
import { sheetAnswerSchema } from './sheet-answer.js';

const SCHEMAS = {
  bowler: bowlerSchema,
  ball: ballSchema,
  core: coreSchema,
  lane: laneSchema,
  want: wantSchema,
  layout: layoutAnswerSchema,
  'recommend-answer': recommendAnswerSchema,
  'drilled-answer': drilledAnswerSchema,
  'roll-answer': rollAnswerSchema,
  'lane-answer': laneAnswerSchema,
  'map-answer': mapAnswerSchema,
  'judge-answer': judgeAnswerSchema,
  'sheet-answer': sheetAnswerSchema,
} as const;

/** File name and text of each record's JSON Schema (draft 2020-12). Rules across fields are in the code only. */
export const jsonSchemas = (): readonly (readonly [name: string, text: string])[] =>
  Object.entries(SCHEMAS).map(([name, schema]) => [
    `${name}.schema.json`,
    `${JSON.stringify(z.toJSONSchema(schema, { target: 'draft-2020-12' }), null, 2)}\n`,
  ]);
