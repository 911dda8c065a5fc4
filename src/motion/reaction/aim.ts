import { LANE_LENGTH } from '../../base/constants.js';
import { atan2 } from '../../math/atan.js';
import type { Launch } from '../shot/release.js';
import type { LeanShot } from '../shot/shot.js';

/** Result of aiming: the launch that comes nearest to the target, whether that is near enough, and the shots rolled. */
interface Aim {
  readonly found: boolean;
  readonly launch: Launch;
  readonly shots: number;
}

/** Near enough to the target, m. */
const NEAR = 1e-4;

const MOST_SHOTS = 20;

/** Factor on the step that a straight line would need, so that the search soon brackets the target. */
const EAGER = 1.5;

/** A launch angle tried, and by how far the ball came out to the right of the target, m. */
interface Try {
  readonly angle: number;
  readonly miss: number;
}

/**
 * Finds the launch angle with which a ball laid down at a given place reaches `pinsX` at the pins.
 *
 * Steps until the target is bracketed, then uses false position with halved weights (Illinois), or bisection while
 * an end of the bracket lies in a gutter. The end of a path need not be monotonic in the angle: a ball sent out
 * to dry boards comes back farther. Any crossing inside the bracket will do. Where the path's end jumps over the target, the
 * bracket closes on the jump, and the search ends once its two lines are as close as the target's tolerance.
 * Source: Dowell & Jarratt, BIT 11, 168, 1971. Never throws: where no angle is found, the nearest one tried is returned.
 *
 * @param pinsX     wanted lateral position at the pins, m
 * @param laydownX  lateral position at the foul line, m
 * @param steepest  steepest launch tried to either side, rad
 * @param roll      rolls the shot for a launch angle (rad, positive toward the right)
 * @param first     angle tried first, rad; the straight line when left out
 */
export function aimAt(
  pinsX: number,
  laydownX: number,
  steepest: number,
  roll: (angle: number) => LeanShot,
  first = atan2(pinsX - laydownX, LANE_LENGTH),
): Aim {
  let shots = 0;
  let nearest: Try = { angle: first, miss: Number.POSITIVE_INFINITY };
  const attempt = (angle: number): Try => {
    shots++;
    const tried = { angle, miss: missOf(roll(angle), pinsX) };
    if (Math.abs(tried.miss) < Math.abs(nearest.miss)) nearest = tried;
    return tried;
  };
  const aim = (): Aim => ({
    found: Math.abs(nearest.miss) <= NEAR,
    launch: { x: laydownX, angle: nearest.angle },
    shots,
  });

  let left = attempt(first); // comes out left of the target, right of it; until one is on either side, the last tried
  let right = left;
  const isBracketed = (): boolean => left.miss < 0 && right.miss > 0;
  while (!isBracketed()) {
    const from = left;
    if (shots === MOST_SHOTS || Number.isNaN(from.miss) || Math.abs(from.miss) <= NEAR) return aim();
    const reach = Number.isFinite(from.miss)
      ? (EAGER * from.miss) / LANE_LENGTH
      : Math.sign(from.miss) * COARSE;
    const angle = Math.min(steepest, Math.max(-steepest, from.angle - reach));
    if (angle === from.angle) return aim();
    const tried = attempt(angle);
    if (tried.miss < 0) left = tried;
    else right = tried;
    if (!isBracketed()) left = right = tried;
  }

  let kept = 0; // which end the last shot left in place: −1 left, 1 right
  let weight = 1; // on the miss of that end, halved each time it stays again
  while (shots < MOST_SHOTS && Math.abs(left.angle - right.angle) * LANE_LENGTH > NEAR) {
    const a = (kept < 0 ? weight : 1) * left.miss;
    const b = (kept > 0 ? weight : 1) * right.miss;
    const share = Number.isFinite(a) && Number.isFinite(b) ? a / (a - b) : 0.5;
    const tried = attempt(left.angle + share * (right.angle - left.angle));
    if (Number.isNaN(tried.miss) || Math.abs(tried.miss) <= NEAR) break;
    const stays = tried.miss < 0 ? 1 : -1;
    weight = stays === kept ? weight / 2 : 1;
    kept = stays;
    if (tried.miss < 0) left = tried;
    else right = tried;
  }
  return aim();
}

/** Step from a shot that ended in the gutter, rad. */
const COARSE = 0.02;

/** How far to the right of the target a shot ended, m; infinite on the side of the gutter it fell into, NaN if it never arrived. */
function missOf(shot: LeanShot, pinsX: number): number {
  const x = shot.x[shot.x.length - 1];
  if (shot.outcome === 'pins') return x - pinsX;
  return shot.outcome === 'gutter' ? Math.sign(x) * Number.POSITIVE_INFINITY : Number.NaN;
}
