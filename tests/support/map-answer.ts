import { mapScales, reachOf } from '../../src/answer/map/map-reach.js';
import type { MapAnswer } from '../../src/records/answers/answer.js';
import { loadRuleSet } from '../../src/records/shared/rules.js';
import { drilledAnswer } from './recommend-answer.js';

const rows = [0, 30, 60, 90].map((drillingAngleDeg, i) => {
  const value = 0.008 + 0.003 * i;
  const { drilled, bands, psa, flareStart, layout } = drilledAnswer;
  return {
    layout: { ...layout, drillingAngleDeg },
    drilled: { ...drilled, intermediateDifferentialIn: value },
    bands: { ...bands, intermediateDifferentialIn: { low: value - 0.001, high: value + 0.001 } },
    asymmetry: {
      middle: value / drilled.differentialIn,
      low: value / drilled.differentialIn - 0.02,
      high: value / drilled.differentialIn + 0.02,
    },
    psa,
    flareStart,
  };
});
const around = (value: number, by: number) => ({ least: value - by, most: value + by });
const spans = (rg: number, total: number, intermediate: number): MapAnswer['beside'][number]['numbers'] => ({
  rgIn: around(rg, 0.001),
  differentialIn: around(total, 0.002),
  intermediateDifferentialIn: around(intermediate, 0.004),
  asymmetry: around(intermediate / total, 0.05),
});

/** A made-up map over the drilling angle. */
export const mapAnswer: MapAnswer = {
  schema: 'flarewise/map/4',
  version: '0.0.0',
  ball: 'Fixture ball',
  bowler: 'Fixture bowler',
  over: 'drilling-angle',
  undrilled: { massLb: 15, rgIn: 2.5, differentialIn: 0.048, intermediateDifferentialIn: 0 },
  rows,
  reach: reachOf(rows),
  scales: mapScales(loadRuleSet()),
  beside: [
    { kind: 'plain', ball: 'Plain fixture', numbers: spans(2.52, 0.046, 0.01) },
    { kind: 'asymmetric', ball: 'Asymmetric fixture', numbers: spans(2.51, 0.043, 0.02) },
  ],
  onLane: null,
  assumptions: [{ code: 'no-mark', params: {} }],
  cautions: [{ code: 'local-rules', params: {} }],
};
