import { INCH, to } from '../../base/units.js';
import { type Placement, placeLayout } from '../../layout/placement.js';
import { arcAngle } from '../../math/sphere.js';
import type { Vec3 } from '../../math/vec3.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { MarkAnswer } from '../../records/answers/answer.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';

/** Unit vector of the grip centre in B. */
export const GRIP_CENTRE: Vec3 = [0, 0, 1];

/** Where a layout puts the marks of a ball. */
export const placedOn = (
  { published, pap_B, pinToMarker }: Pick<BallProblem, 'published' | 'pap_B' | 'pinToMarker'>,
  numbers: LayoutNumbers,
): Placement => placeLayout(toLayout(numbers, published.radius), pap_B, pinToMarker);

/**
 * Tape arcs that place a mark on a ball of this radius (m): from the grip centre, the PAP and the pin.
 *
 * @returns name and unit vector (in B) of a mark ↦ its arcs, in
 */
export const markAnswer =
  ({ pap_B, pin_B }: Placement, radius: number) =>
  (mark: string, u_B: Vec3): MarkAnswer => {
    const arcIn = (from_B: Vec3): number => to(arcAngle(u_B, from_B) * radius, INCH);
    return {
      mark,
      fromGripCentreIn: arcIn(GRIP_CENTRE),
      fromPapIn: arcIn(pap_B),
      fromPinIn: arcIn(pin_B),
    };
  };
