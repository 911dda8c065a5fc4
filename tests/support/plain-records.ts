import type { Ball } from '../../src/records/schemas/ball.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { averageBowler, plainBall } from './problems.js';

/* Sound records for tests to spoil. Invented; no real person, ball or lane. */

export const bowler: Bowler = averageBowler;

export const ball: Ball = { ...plainBall, name: 'Test ball' };

export const lane: Lane = {
  schema: 'flarewise/lane/1',
  name: 'Test lane',
  patternFt: 40,
  zones: [{ fromFt: 0, toFt: 40, fromBoard: 0, toBoard: 39, units: 30, unitsAtEnd: 5 }],
};
