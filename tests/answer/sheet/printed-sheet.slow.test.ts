import { test } from 'vitest';
import { directionsHold, gripHolds, layoutHolds } from './printed-sheet.js';

const MANY = 5000;

test('5,000 sheets of both hands have the layout within 1/16 in and 1°', () => {
  const { protractors, arcs, worstIn, worstDeg } = layoutHolds(MANY);
  console.log(
    `${protractors} ways by protractor, ${arcs} by arcs: off by ${worstIn.toFixed(4)} in and ${worstDeg.toFixed(2)}° at most`,
  );
});

test('no direction of 5,000 sheets is mirrored', () => {
  console.log(`${directionsHold(MANY).seen} directions as the eye sees them`);
});

test('5,000 grips have spans and bridge within 1/64 in', () => {
  const { worstSpanIn, worstBridgeIn } = gripHolds(MANY);
  console.log(`spans off by ${worstSpanIn.toFixed(4)} in, bridges by ${worstBridgeIn.toFixed(4)} in at most`);
});
