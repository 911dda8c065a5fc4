import { clamp } from '../../math/clamp.js';
import { hypot } from '../../math/hypot.js';
import { isInside, type Loop, type PlanePoint } from '../../math/polygon.js';
import type { CoreAnswer } from '../../records/answers/answer.js';
import type { SceneNode } from '../scene/scene.js';
import type { Point } from '../scene/shapes.js';
import { DISC_RADIUS, signDisc } from './sign-disc.js';

/** A part's outline as it is drawn. */
interface DrawnPart {
  readonly part: number;
  readonly loops: readonly Loop[];
}

/** Places across and down that are tried for a letter, and corners of a round outline that are enough for it. */
const TRIES = 28;
const CORNERS = 60;
/** A part that leaves a letter less room than this has none: its hatch tells which it is, pt. */
const LEAST_ROOM = 4;

/**
 * Each part's letter where it has most room: away from all outlines, from what is kept clear, and from the letters before it.
 *
 * @param clear  places of other signs
 */
export function letters(
  drawn: readonly DrawnPart[],
  parts: CoreAnswer['parts'],
  clear: readonly Point[],
): SceneNode[] {
  const coarse = drawn.map(({ part, loops }) => ({ part, loops: loops.map(thinned) }));
  const taken = [...clear];
  return coarse.flatMap(({ part }, i) => {
    const spot = roomiest(coarse, i, taken);
    if (!spot) return [];
    taken.push(spot);
    return signDisc({ sign: parts[part].sign, ink: 'ink' }, spot);
  });
}

/** The place of a part that lies farthest from all outlines; null where later parts leave no room. */
function roomiest(drawn: readonly DrawnPart[], i: number, taken: readonly Point[]): Point | null {
  const corners = drawn[i].loops.flat();
  const [left, right] = [Math.min(...corners.map(([x]) => x)), Math.max(...corners.map(([x]) => x))];
  const [top, bottom] = [Math.min(...corners.map(([, y]) => y)), Math.max(...corners.map(([, y]) => y))];
  const isOn = (place: PlanePoint): boolean =>
    isInside(drawn[i].loops, place) && !drawn.slice(i + 1).some(({ loops }) => isInside(loops, place));
  const sides = drawn.slice(i).flatMap(({ loops }) => loops.flatMap(sidesOf));
  let best: { readonly room: number; readonly spot: Point } | null = null;
  for (let row = 0; row < TRIES; row += 1)
    for (let column = 0; column < TRIES; column += 1) {
      const spot: Point = [
        left + ((right - left) * (column + 0.5)) / TRIES,
        top + ((bottom - top) * (row + 0.5)) / TRIES,
      ];
      if (!isOn(spot)) continue;
      const room = Math.min(
        ...sides.map((side) => distanceTo(side, spot)),
        ...taken.map((sign) => hypot(sign[0] - spot[0], sign[1] - spot[1]) - DISC_RADIUS),
      );
      if (room > (best?.room ?? LEAST_ROOM)) best = { room, spot };
    }
  return best?.spot ?? null;
}

type Side = readonly [PlanePoint, PlanePoint];

const sidesOf = (loop: Loop): Side[] => loop.map((place, i) => [place, loop[(i + 1) % loop.length]]);

/** Distance from a place to a straight side. */
function distanceTo([[ax, ay], [bx, by]]: Side, [x, y]: PlanePoint): number {
  const [dx, dy] = [bx - ax, by - ay];
  const along = clamp(((x - ax) * dx + (y - ay) * dy) / (dx * dx + dy * dy || 1), 0, 1);
  return hypot(x - ax - along * dx, y - ay - along * dy);
}

/** A loop with about as many corners as a letter's place needs. */
const thinned = (loop: Loop): Loop => {
  const step = Math.ceil(loop.length / CORNERS);
  return loop.filter((_, i) => i % step === 0);
};
