import { add, cross, scale, unit, type Vec3 } from '../../src/math/vec3.js';
import type { TapeStep } from '../../src/records/answers/sheet-answer.js';
import { d3Arc } from './great-circle.js';

/**
 * Marks a ball by a tape's arcs, by another way than the program's: from a first guess, Newton's method on
 * the two arcs as d3-geo 3.1.2 measures them, in the plane that touches the ball at the guess.
 *
 * @param guess  near the wanted one of the two crossings
 */
export function crossedByHand(step: TapeStep, from: readonly Vec3[], guess: Vec3, radiusIn: number): Vec3 {
  const wanted = step.arcs.map(({ inches }) => inches / radiusIn);
  const missing = (p: Vec3): number[] => from.map((centre, i) => d3Arc(centre, p) - (wanted[i] as number));
  let p = guess;
  for (let turn = 0; turn < 20; turn++) {
    const east = unit(cross(Math.abs(p[1]) < 0.9 ? [0, 1, 0] : [1, 0, 0], p));
    const north = cross(p, east);
    const h = 1e-5;
    const slope = (along: Vec3): number[] => {
      const [plus, minus] = [missing(unit(add(p, scale(h, along)))), missing(unit(add(p, scale(-h, along))))];
      return plus.map((value, i) => (value - (minus[i] as number)) / (2 * h));
    };
    const [a, c] = slope(east) as [number, number];
    const [b, d] = slope(north) as [number, number];
    const [f, g] = missing(p) as [number, number];
    const det = a * d - b * c;
    p = unit(add(p, add(scale(-(d * f - b * g) / det, east), scale(-(a * g - c * f) / det, north))));
  }
  return p;
}

/**
 * Marks a ball by one arc and a protractor, by another way than the program's: on a globe, by the course from one mark to
 * the other and the point reached on the course turned from it (great-circle sailing).
 *
 * @param at     the mark the protractor lies on
 * @param other  the mark the angle is taken from
 */
export function turnedByHand(step: TapeStep, at: Vec3, other: Vec3, radiusIn: number): Vec3 {
  const { turn, side, arcs } = step;
  if (!turn) throw new Error(`${step.mark} has no angle`);
  const clockwise = (side === 'left' ? -turn.deg : turn.deg) * (Math.PI / 180);
  return sailed(at, courseTo(at, other) + clockwise, (arcs[0]?.inches ?? Number.NaN) / radiusIn);
}

const latitude = (u: Vec3): number => Math.asin(u[2]);
const longitude = (u: Vec3): number => Math.atan2(u[1], u[0]);

/** Course at the start from one point to another, clockwise from north as seen from outside, rad. */
export function courseTo(u: Vec3, v: Vec3): number {
  const [a, b, east] = [latitude(u), latitude(v), longitude(v) - longitude(u)];
  return Math.atan2(
    Math.sin(east) * Math.cos(b),
    Math.cos(a) * Math.sin(b) - Math.sin(a) * Math.cos(b) * Math.cos(east),
  );
}

function sailed(u: Vec3, course: number, arc: number): Vec3 {
  const a = latitude(u);
  const b = Math.asin(Math.sin(a) * Math.cos(arc) + Math.cos(a) * Math.sin(arc) * Math.cos(course));
  const east = Math.atan2(
    Math.sin(course) * Math.sin(arc) * Math.cos(a),
    Math.cos(arc) - Math.sin(a) * Math.sin(b),
  );
  const lon = longitude(u) + east;
  return [Math.cos(b) * Math.cos(lon), Math.cos(b) * Math.sin(lon), Math.sin(b)];
}

/** Marks a ball by a step as it is printed. */
export function markedByHand(
  step: TapeStep,
  placeOf: (name: string) => Vec3,
  guess: Vec3,
  radiusIn: number,
): Vec3 {
  const centres = step.arcs.map(({ from }) => placeOf(from));
  if (step.turn) return turnedByHand(step, centres[0] as Vec3, placeOf(step.turn.from), radiusIn);
  return centres.length === 2 ? crossedByHand(step, centres, guess, radiusIn) : guess;
}
