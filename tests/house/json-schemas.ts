import { z } from 'zod';
import { adjustAnswerSchema } from '../../src/records/answers/adjust-answer.js';
import { coachLineSchema } from '../../src/records/answers/coach-answer.js';
import { compareAnswerSchema } from '../../src/records/answers/compare-answer.js';
import { coreAnswerSchema } from '../../src/records/answers/core-answer.js';
import { drilledAnswerSchema } from '../../src/records/answers/drilled-answer.js';
import { judgeAnswerSchema } from '../../src/records/answers/judge-answer.js';
import { laneAnswerSchema } from '../../src/records/answers/lane-answer.js';
import { learnedAnswerSchema } from '../../src/records/answers/learned-answer.js';
import { logAnswerSchema, loggedAnswerSchema } from '../../src/records/answers/log-answer.js';
import { mapAnswerSchema } from '../../src/records/answers/map-answer.js';
import { layoutAnswerSchema } from '../../src/records/answers/parts/layout-answer.js';
import { recommendAnswerSchema } from '../../src/records/answers/recommend-answer.js';
import { rollAnswerSchema } from '../../src/records/answers/roll-answer.js';
import { sheetAnswerSchema } from '../../src/records/answers/sheet-answer.js';
import { shelfAnswerSchema } from '../../src/records/answers/shelf-answer.js';
import { bundleSchema } from '../../src/records/home/bundle.js';
import { ballSchema } from '../../src/records/schemas/ball.js';
import { bowlerSchema } from '../../src/records/schemas/bowler.js';
import { coreSchema } from '../../src/records/schemas/core.js';
import { drilledLayoutSchema } from '../../src/records/schemas/drilled-layout.js';
import { laneSchema } from '../../src/records/schemas/lane.js';
import { wantSchema } from '../../src/records/schemas/want.js';

const SCHEMAS = {
  bowler: bowlerSchema,
  ball: ballSchema,
  core: coreSchema,
  lane: laneSchema,
  want: wantSchema,
  'drilled-layout': drilledLayoutSchema,
  layout: layoutAnswerSchema,
  'recommend-answer': recommendAnswerSchema,
  'drilled-answer': drilledAnswerSchema,
  'roll-answer': rollAnswerSchema,
  'lane-answer': laneAnswerSchema,
  'core-answer': coreAnswerSchema,
  'learned-answer': learnedAnswerSchema,
  'map-answer': mapAnswerSchema,
  'judge-answer': judgeAnswerSchema,
  'compare-answer': compareAnswerSchema,
  'adjust-answer': adjustAnswerSchema,
  'sheet-answer': sheetAnswerSchema,
  'coach-line': coachLineSchema,
  'shelf-answer': shelfAnswerSchema,
  'shelf-bundle': bundleSchema,
  'log-answer': logAnswerSchema,
  'logged-answer': loggedAnswerSchema,
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
    const { $defs = {}, ...whole } = z.toJSONSchema(schema, { target: 'draft-2020-12', io: 'input' });
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
