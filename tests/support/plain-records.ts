import type { Ball } from '../../src/records/schemas/ball.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';

/* Sound records for tests to spoil. Invented; no real person, ball or lane. */

export const bowler: Bowler = {
  schema: 'flarewise/bowler/1',
  name: 'Test bowler',
  hand: 'right',
  thumbHole: true,
  speedMph: 17,
  revRateRpm: 320,
  axisTiltDeg: 13,
  axisRotationDeg: 48,
  pap: { overIn: 5, upIn: 0.5 },
};

export const ball: Ball = {
  schema: 'flarewise/ball/1',
  name: 'Test ball',
  weightLb: 15,
  rgIn: 2.53,
  differentialIn: 0.041,
  intermediateDifferentialIn: 0,
  coreShape: 'plain',
  pinToCgIn: 3,
  topWeightOz: 3,
};

export const lane: Lane = {
  schema: 'flarewise/lane/1',
  name: 'Test lane',
  patternFt: 40,
  zones: [{ fromFt: 0, toFt: 40, fromBoard: 0, toBoard: 39, units: 30, unitsAtEnd: 5 }],
};
