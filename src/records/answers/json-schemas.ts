import { z } from 'zod';
import { ballSchema } from '../schemas/ball.js';
import { bowlerSchema } from '../schemas/bowler.js';
import { coreSchema } from '../schemas/core.js';
import { laneSchema } from '../schemas/lane.js';
import { wantSchema } from '../schemas/want.js';
import { compareAnswerSchema } from './compare-answer.js';
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
  'compare-answer': compareAnswerSchema,
  'sheet-answer': sheetAnswerSchema,
} as const;

/** Where the parts stand that several schemas share, each once. */
const PARTS = 'parts.schema.json';

/**
 * File name and text of each record's and answer's JSON Schema (draft 2020-12), and of the parts that they share and refer to. Rules
 * across fields are in the code only.
 */
export function jsonSchemas(): readonly (readonly [name: string, text: string])[] {
  const parts: Record<string, object> = {};
  const schemas = Object.entries(SCHEMAS).map(([name, schema]) => {
    const { $defs = {}, ...whole } = z.toJSONSchema(schema, { target: 'draft-2020-12' });
    Object.assign(parts, $defs);
    return [`${name}.schema.json`, textOf(whole).replaceAll('"#/$defs/', `"${PARTS}#/$defs/`)] as const;
  });
  const $defs = Object.fromEntries(Object.entries(parts).sort(([a], [b]) => (a < b ? -1 : 1)));
  const shared = {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    $id: PARTS,
    title: 'Shared parts',
    $defs,
  };
  return [...schemas, [PARTS, textOf(shared)]];
}

const textOf = (schema: object): string => `${JSON.stringify(schema, null, 2)}\n`;
