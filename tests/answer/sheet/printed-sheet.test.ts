import { describe, test } from 'vitest';
import { directionsHold, gripHolds, layoutHolds } from './printed-sheet.js';

describe('a sheet as printed', () => {
  test('marks placed from its sentences, by either way of each step, have the layout within 1/16 in and 1°: 600 sheets of both hands', () => {
    layoutHolds(600);
  });

  test('no direction is mirrored: left and right are as the eye sees the true marks, both hands, pin above and below', () => {
    directionsHold(500);
  });

  test('holes marked from it have spans, bridge and pitches within 1/64 in of the fit: 500 grips of both hands', () => {
    gripHolds(500);
  });
});
