import { markerToPap, pinBuffer } from '../layout/layout.js';
import type { LayoutAnswer } from '../records/answer.js';
import { type LayoutNumbers, wordLayout } from '../records/layout-text.js';
import { INCH, to } from '../units.js';
import type { BallProblem } from './ball-problem.js';
import { toLayout } from './to-layout.js';

/** A layout in both notations. */
export function layoutAnswer(numbers: LayoutNumbers, ball: BallProblem): LayoutAnswer {
  const { radius } = ball.published;
  const layout = toLayout(numbers, radius);
  return {
    text: wordLayout(numbers),
    drillingAngleDeg: numbers.drillingAngleDeg,
    pinToPapIn: numbers.pinToPapIn,
    valAngleDeg: numbers.valAngleDeg,
    pinBufferIn: to(pinBuffer(layout) * radius, INCH),
    markerToPapIn: to(markerToPap(layout, ball.pinToMarker) * radius, INCH),
  };
}
