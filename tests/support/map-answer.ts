import type { MapAnswer } from '../../src/records/answers/answer.js';
import { drilledAnswer } from './recommend-answer.js';

const rows = [0, 30, 60, 90].map((drillingAngleDeg, i) => {
  const value = 0.008 + 0.003 * i;
  const { drilled, bands, psa, layout } = drilledAnswer;
  return {
    layout: { ...layout, drillingAngleDeg },
    drilled: { ...drilled, intermediateDifferentialIn: value },
    bands: { ...bands, intermediateDifferentialIn: { low: value - 0.001, high: value + 0.001 } },
    psa,
  };
});
/** A made-up map over the drilling angle. */
export const mapAnswer: MapAnswer = {
  schema: 'flarewise/map/3',
  version: '0.0.0',
  ball: 'Fixture ball',
  bowler: 'Fixture bowler',
  over: 'drilling-angle',
  undrilled: { massLb: 15, rgIn: 2.5, differentialIn: 0.048, intermediateDifferentialIn: 0 },
  rows,
  reach: {
    differentialIn: { least: 0.041, most: 0.041 },
    intermediateDifferentialIn: { least: 0.008, most: 0.017 },
    bandIn: 0.002,
    mattersFromIn: 0.003,
    matters: true,
  },
  onLane: null,
  assumptions: [{ code: 'no-mark', params: {} }],
  cautions: [{ code: 'local-rules', params: {} }],
};
