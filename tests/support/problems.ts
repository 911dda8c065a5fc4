import type { Ball } from '../../src/records/schemas/ball.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';

/* Invented inputs of the tests; no real person, ball or lane. */

export const averageBowler: Bowler = {
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

export const plainBall: Ball = {
  schema: 'flarewise/ball/1',
  name: 'Test plain core',
  weightLb: 15,
  rgIn: 2.53,
  differentialIn: 0.041,
  intermediateDifferentialIn: 0,
  coreShape: 'plain',
  pinToCgIn: 3,
  topWeightOz: 3,
};

export const houseLane: Lane = {
  schema: 'flarewise/lane/1',
  name: 'Test house shot',
  patternFt: 40,
  zones: [
    { fromFt: 0, toFt: 40, fromBoard: 0, toBoard: 39, units: 8, unitsAtEnd: 3 },
    { fromFt: 0, toFt: 36, fromBoard: 9, toBoard: 30, units: 55, unitsAtEnd: 25 },
  ],
};
