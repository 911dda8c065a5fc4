import { gripOf } from '../../prepare/grip-holes.js';
import type { Ball } from '../../records/schemas/ball.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';

/** Most earlier drillings that a ball's record may hold. */
const MOST_DRILLINGS = 5;

/** A drilled ball with its holes plugged, ready to drill again; null if it was drilled more often than a record can hold. */
export function pluggedBall(ball: Ball, layout: LayoutNumbers, bowler: Bowler): Ball | null {
  const { drilledBefore = [] } = ball;
  if (drilledBefore.length >= MOST_DRILLINGS) return null;
  const { drillingAngleDeg, pinToPapIn, valAngleDeg } = layout;
  const written = [drillingAngleDeg, pinToPapIn, valAngleDeg].map((each) => Number(each.toFixed(4)));
  return {
    ...ball,
    drilledBefore: [
      ...drilledBefore,
      { layout: written.join(' x '), hand: bowler.hand, pap: bowler.pap, grip: gripOf(bowler) },
    ],
  };
}
