import { ARROWS_FT, BOARD } from '../base/constants.js';
import { DEGREE, FOOT, from, to } from '../base/units.js';
import { tan } from '../math/sin-cos.js';
import type { Launch } from '../motion/shot/release.js';
import type { LeanShot } from '../motion/shot/shot.js';
import type { MissRoomAnswer } from '../records/answers/answer.js';
import { pastPocket } from '../simulate/pocket.js';

/** Greatest miss that is tried, and the step of the search. */
const LAYDOWN = { most: 6 * BOARD, step: 0.5 * BOARD };
const ANGLE = { most: from(3, DEGREE), step: from(0.15, DEGREE) };

/** Tolerance of an edge, as a share of a step. */
const FINE = 0.02;

const MOST_REFINEMENTS = 12;

/**
 * How far a shot may miss its line, one thing at a time, and still reach the pocket; SI inside, boards and
 * degrees out.
 *
 * Searches from the line outward in steps, then by false position within the step in which the ball first misses the pocket. A
 * gap narrower than a step may be overlooked. `outside` is toward the bowler's own gutter. Null when the line
 * itself does not reach the pocket.
 *
 * @param roll  rolls the layout's nominal shot from a launch
 */
export function missRoom(line: Launch, roll: (launch: Launch) => LeanShot): MissRoomAnswer | null {
  if (!(excess(roll(line)) <= 0)) return null;
  const laydown = (by: number): number => excess(roll({ ...line, x: line.x + by }));
  const angle = (by: number): number => excess(roll({ ...line, angle: line.angle + by }));
  const wide = reach(angle, ANGLE);
  const narrow = reach((by) => angle(-by), ANGLE);
  return {
    laydownBoards: {
      outside: to(reach(laydown, LAYDOWN), BOARD),
      inside: to(
        reach((by) => laydown(-by), LAYDOWN),
        BOARD,
      ),
    },
    angleDeg: { outside: to(wide, DEGREE), inside: to(narrow, DEGREE) },
    arrowsBoards: { outside: atArrows(line, wide), inside: -atArrows(line, -narrow) },
  };
}

/** Boards by which a change of launch angle moves the ball at the arrows, if it runs straight that far. */
const atArrows = ({ angle }: Launch, by: number): number =>
  to(from(ARROWS_FT, FOOT) * (tan(angle + by) - tan(angle)), BOARD);

/** Distance of a shot outside the pocket's nearer edge, m; negative inside, infinite when it never arrives. */
const excess = ({ outcome, x }: LeanShot): number =>
  outcome === 'pins' ? pastPocket(x[x.length - 1]) : Number.POSITIVE_INFINITY;

/** The least miss, up to `most`, at which the excess turns positive. */
function reach(excessAt: (by: number) => number, { most, step }: { most: number; step: number }): number {
  let inside = { by: 0, excess: excessAt(0) };
  let outside = inside;
  while (outside.excess <= 0) {
    if (outside.by >= most) return most;
    inside = outside;
    const by = Math.min(most, outside.by + step);
    outside = { by, excess: excessAt(by) };
  }
  for (let n = 0; n < MOST_REFINEMENTS && outside.by - inside.by > FINE * step; n++) {
    const share = Number.isFinite(outside.excess) ? inside.excess / (inside.excess - outside.excess) : 0.5;
    // kept away from the ends, so that both move
    const by = inside.by + Math.min(0.9, Math.max(0.1, share)) * (outside.by - inside.by);
    const next = { by, excess: excessAt(by) };
    if (next.excess <= 0) inside = next;
    else outside = next;
  }
  return inside.by;
}
