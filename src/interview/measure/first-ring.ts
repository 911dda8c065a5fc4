import { acos } from '../../math/atan.js';
import { clamp } from '../../math/clamp.js';
import { hypot } from '../../math/hypot.js';
import { cos, sin } from '../../math/sin-cos.js';
import type { Measured } from './measured.js';

/*
 * Measures a release by the first oil ring. It is a circle on the ball about the PAP: with an angular radius of 90° less
 * the axis tilt, since the ball touches the lane straight below its centre. Only without tilt is the ring a
 * great circle, and the PAP a quarter of the ball away from it.
 */

/** How exactly a ring is measured by tape, m: 1/8 in for its blurred edge (assumed). */
const TAPE_DEVIATION = 0.0032;

/**
 * Axis tilt, rad, from the tape length across the ring over the side of the PAP.
 *
 * @param across  arc on the ball from edge to opposite edge, m
 */
export const tiltFromArc = (across: number, ballRadius: number): Measured => ({
  value: Math.max(0, Math.PI / 2 - across / (2 * ballRadius)),
  deviation: TAPE_DEVIATION / (2 * ballRadius),
});

/**
 * Axis tilt, rad, from the ring's straight diameter.
 *
 * Far less exact than an arc near a full ring, where the diameter hardly changes with tilt.
 *
 * @param diameter  m; one greater than the ball's counts as equal
 */
export function tiltFromDiameter(diameter: number, ballRadius: number): Measured {
  const tilt = (d: number): number => acos(clamp(d / (2 * ballRadius), 0, 1));
  const value = tilt(diameter);
  const spread = Math.abs(tilt(diameter + TAPE_DEVIATION) - tilt(diameter - TAPE_DEVIATION)) / 2;
  return { value, deviation: Math.max(spread, TAPE_DEVIATION / (2 * ballRadius)) };
}

/** Where the PAP lies: arcs over along the midline and up along the VAL, m. */
export interface PapPlace {
  readonly over: Measured;
  readonly up: Measured;
}

/**
 * PAP from the two places where the first ring crosses the midline and the centre line, seen from the grip centre.
 *
 * With the PAP at (cos u sin o, sin u, cos u cos o) and a ring of angular radius ρ, the crossing at arc a on
 * the far side of the midline gives cos u cos(o + a) = cos ρ, and the one at arc b below on the centre line gives
 * cos u cos o cos b − sin u sin b = cos ρ. Both are solved for o by substitution and bisection in u.
 *
 * @param aside  arc from the grip centre along the midline, away from the PAP, to the ring, m; negative when
 *               the ring crosses on the PAP's side
 * @param below  arc from the grip centre along the centre line, toward the thumb, to the ring, m; null where it was not
 *               measured: the PAP is then taken to lie as far up as usual
 * @returns null when no ring of this tilt crosses there
 */
export function papFromRing(
  tilt: Measured,
  aside: number,
  below: number | null,
  ballRadius: number,
): PapPlace | null {
  const at = (dTilt: number, dAside: number, dBelow: number): readonly [number, number] | null =>
    solvePap(
      Math.PI / 2 - tilt.value - dTilt,
      (aside + dAside) / ballRadius,
      below === null ? null : (below + dBelow) / ballRadius,
      USUAL_UP / ballRadius,
    );
  const nominal = at(0, 0, 0);
  if (!nominal) return null;
  const off = [at(tilt.deviation, 0, 0), at(0, TAPE_DEVIATION, 0), at(0, 0, TAPE_DEVIATION)];
  const deviation = (i: 0 | 1): number =>
    ballRadius * hypot(...off.map((moved) => (moved ? moved[i] - nominal[i] : 0)));
  return {
    over: { value: ballRadius * nominal[0], deviation: Math.max(deviation(0), TAPE_DEVIATION) },
    up: {
      value: ballRadius * nominal[1],
      deviation: below === null ? USUAL_UP_DEVIATION : Math.max(deviation(1), TAPE_DEVIATION),
    },
  };
}

/** A usual PAP lies 1/4 in up, give or take 1/2 in (common practice, no source), m. */
const USUAL_UP = 0.00635;
const USUAL_UP_DEVIATION = 0.0127;

/** (o, u) in rad, or null. */
function solvePap(
  radius: number,
  aside: number,
  below: number | null,
  usualUp: number,
): readonly [number, number] | null {
  const overAt = (up: number): number => {
    const c = cos(radius) / cos(up);
    return Math.abs(c) <= 1 ? acos(c) - aside : Number.NaN;
  };
  if (below === null) {
    const over = overAt(usualUp);
    return Number.isNaN(over) ? null : [over, usualUp];
  }
  const miss = (up: number): number =>
    cos(up) * cos(overAt(up)) * cos(below) - sin(up) * sin(below) - cos(radius);
  let low = -MOST_UP;
  let high = MOST_UP;
  if (!(miss(low) * miss(high) <= 0)) return null;
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (miss(low) * miss(middle) <= 0) high = middle;
    else low = middle;
  }
  return [overAt(low), low];
}

/** Farther up or down than any bowler's, rad: 3 in. */
const MOST_UP = 0.7;
