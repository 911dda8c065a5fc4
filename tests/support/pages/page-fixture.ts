import type { RecommendAnswer } from '../../../src/records/answers/answer.js';
import type { WebReportData } from '../../../src/records/answers/web-report-data.js';
import type { NextStep } from '../../../src/report/screens/next-steps.js';
import { UNITS, type UnitSystem } from '../../../src/report/text/display-units.js';
import { recommendHtml } from '../../../src/report/web/recommend-html.js';
import { face } from '../recommend-answer.js';

/** Made up, like the answer it stands beside: numbers that differ in every cell. */
export const facts: WebReportData = {
  face,
  map: {
    valAngleDeg: 30,
    drillingAnglesDeg: [10, 30, 50, 70, 90],
    pinToPapsIn: [2, 3, 4, 5, 6],
    rows: [0, 1, 2, 3, 4].map((i) =>
      [0, 1, 2, 3, 4].map((j) => ({
        rgIn: 2.5 + 0.01 * i + 0.001 * j,
        differentialIn: 0.05 - 0.005 * i - 0.001 * j,
        intermediateDifferentialIn: 0.001 + 0.005 * i + 0.001 * j,
      })),
    ),
  },
};

export const pageOfAnswer = (
  given: RecommendAnswer,
  {
    units = 'trade' as UnitSystem,
    invented = [] as readonly string[],
    facts: beside = facts,
    next = [] as readonly NextStep[],
  } = {},
): string => recommendHtml(given, beside, invented, UNITS[units], next);
