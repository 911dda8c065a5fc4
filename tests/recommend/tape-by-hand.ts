import type { TapeStep } from '../../src/records/sheet-answer.js';
import { add, cross, scale, unit, type Vec3 } from '../../src/vec3.js';
import { d3Arc } from '../layout/great-circle.js';

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
