import { INCH, to } from '../../base/units.js';
import { markerToPap, pinBuffer } from '../../layout/layout.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { LayoutAnswer } from '../../records/answers/answer.js';
import { formatLayout, formatPinPlace, type LayoutNumbers } from '../../records/text/layout-text.js';

/** A layout as people write it; on a ball without a mark, where the pin lies. */
export const formatOn = ({ marker }: Pick<BallProblem, 'marker'>, numbers: LayoutNumbers): string =>
  marker === null ? formatPinPlace(numbers) : formatLayout(numbers);

/** A layout in both notations. */
export function layoutAnswer(numbers: LayoutNumbers, ball: BallProblem): LayoutAnswer {
  const { radius } = ball.published;
  const layout = toLayout(numbers, radius);
  return {
    text: formatOn(ball, numbers),
    drillingAngleDeg: ball.marker === null ? null : numbers.drillingAngleDeg,
    pinToPapIn: numbers.pinToPapIn,
    valAngleDeg: numbers.valAngleDeg,
    pinBufferIn: to(pinBuffer(layout) * radius, INCH),
    markerToPapIn: ball.marker === null ? null : to(markerToPap(layout, ball.pinToMarker) * radius, INCH),
  };
}
