import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { z } from 'zod';
import { adjustRemarkSchema } from '../../../src/records/answers/statements/adjust-remarks.js';
import { adjustmentSchema } from '../../../src/records/answers/statements/adjustments.js';
import { assumptionSchema } from '../../../src/records/answers/statements/assumptions.js';
import { beliefSchema } from '../../../src/records/answers/statements/beliefs.js';
import { cautionSchema } from '../../../src/records/answers/statements/cautions.js';
import {
  leverSchema,
  markingErrorSchema,
  stepSchema,
} from '../../../src/records/answers/statements/changes.js';
import { bagRemarkSchema, pairRemarkSchema } from '../../../src/records/answers/statements/coach-remarks.js';
import { compareRemarkSchema } from '../../../src/records/answers/statements/compare-remarks.js';
import { headlineSchema } from '../../../src/records/answers/statements/headlines.js';
import { laneRemarkSchema } from '../../../src/records/answers/statements/lane-remarks.js';
import { legalityFindingSchema } from '../../../src/records/answers/statements/legality-findings.js';
import { limitSchema } from '../../../src/records/answers/statements/limits.js';
import { logRemarkSchema } from '../../../src/records/answers/statements/log-remarks.js';
import { noLineReasonSchema, remedySchema } from '../../../src/records/answers/statements/no-line.js';
import { objectionSchema } from '../../../src/records/answers/statements/objections.js';
import { reasonSchema } from '../../../src/records/answers/statements/reasons.js';
import { regressionNoticeSchema } from '../../../src/records/answers/statements/regression-notices.js';
import { unknownSchema } from '../../../src/records/answers/statements/unknowns.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { type Statement, say } from '../../../src/report/wording/say.js';
import { SENTENCES } from '../../../src/report/wording/statements/sentences.js';
import { withSentences } from '../../../src/report/wording/with-sentences.js';
import { arbitraryOf } from '../../support/arbitrary-of.js';
import { METRIC_BUT_PUBLISHED } from '../../support/metric-units.js';

/** Every topic's schema, and whether its statements are whole sentences. */
const TOPICS = {
  ADJUSTMENTS: [adjustmentSchema, false],
  ADJUST_REMARKS: [adjustRemarkSchema, true],
  ASSUMPTIONS: [assumptionSchema, true],
  CAUTIONS: [cautionSchema, true],
  LEVERS: [leverSchema, false],
  STEPS: [stepSchema, false],
  MARKING_ERRORS: [markingErrorSchema, false],
  PAIR_REMARKS: [pairRemarkSchema, true],
  BAG_REMARKS: [bagRemarkSchema, true],
  COMPARE_REMARKS: [compareRemarkSchema, true],
  LANE_REMARKS: [laneRemarkSchema, true],
  LEGALITY_FINDINGS: [legalityFindingSchema, true],
  LIMITS: [limitSchema, true],
  LOG_REMARKS: [logRemarkSchema, true],
  NO_LINE_REASONS: [noLineReasonSchema, true],
  REMEDIES: [remedySchema, true],
  OBJECTIONS: [objectionSchema, false],
  BELIEF_FINDINGS: [beliefSchema, true],
  HEADLINES: [headlineSchema, true],
  REASONS: [reasonSchema, true],
  REGRESSION_NOTICES: [regressionNoticeSchema, true],
  UNKNOWNS: [unknownSchema, false],
} as const satisfies Record<string, readonly [z.ZodType, boolean]>;

/** The schemas of the statements of a topic, one a code. */
const optionsOf = (schema: z.ZodType): readonly z.ZodObject[] =>
  (schema as unknown as { readonly options: readonly z.ZodObject[] }).options;

const codeOf = (option: z.ZodObject): string => (option.shape.code as z.ZodLiteral).value as string;

/** Units of the trade behind a number or by themselves; `in` also begins phrases, and a bowler has feet. */
const TRADE_UNIT =
  /\b(ft|mph|lb|oz|inch|inches|(?<!the )feet|deg\/ft|ounce|ounces|pounds)\b|\d in\b(?! \d| the| a)/;

test('codes are kebab-case, each belongs to one topic, and there is a sentence for each and no other', () => {
  const codes = Object.values(TOPICS).flatMap(([schema]) => optionsOf(schema).map(codeOf));
  for (const code of codes) expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
  expect(new Set(codes).size).toBe(codes.length);
  expect(Object.keys(SENTENCES).sort()).toEqual([...codes].sort());
});

describe.each(
  Object.values(TOPICS).flatMap(([schema, isSentence]) =>
    optionsOf(schema).map((option) => [codeOf(option), option, isSentence] as const),
  ),
)('%s', (code, option, isSentence) => {
  const statements = arbitraryOf(option.shape.params as z.ZodType).map(
    (params) => ({ code, params }) as unknown as Statement,
  );

  test('is said in full in both unit systems, and in metric without a unit of the trade', () => {
    fc.assert(
      fc.property(statements, (statement) => {
        const [trade, metric] = [UNITS.trade, METRIC_BUT_PUBLISHED].map((units) => say(statement, units));
        for (const text of [trade, metric]) {
          expect(text).not.toMatch(/undefined|null|NaN|Infinity|\[object| {2}|^\s|\s$/);
          if (isSentence) expect(text).toMatch(/^\S.*[.?]$/);
        }
        expect(metric.replaceAll(/"(in|mm|cm)"/g, '')).not.toMatch(TRADE_UNIT);
      }),
    );
  });

  test('printed, it has its sentence in the trade’s units behind code and params, as the schema says', () => {
    fc.assert(
      fc.property(statements, (statement) => {
        const printed = JSON.parse(JSON.stringify(withSentences(statement)));
        expect(Object.keys(printed)).toEqual(['code', 'params', 'text']);
        expect(printed.text).toBe(say(statement, UNITS.trade));
        expect(option.safeParse(printed).error).toBeUndefined();
      }),
      { numRuns: 20 },
    );
  });
});
