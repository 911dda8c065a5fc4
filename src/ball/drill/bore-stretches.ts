import { hypot } from '../../math/hypot.js';
import { dot, type Vec3 } from '../../math/vec3.js';
import type { Interval } from '../solid/ray-interval.js';
import type { Stretch } from '../solid/stretch.js';
import { type BoreSolid, crossBore, depthAt, rayStart } from './bore-solid.js';
import { diskRule, type RayRule } from './ray-rule.js';

/**
 * Rays along a bore that represent the part of a ball about the origin that the bore removes, less what other bores remove.
 *
 * @param ballRadius  m
 * @param others      bores whose matter is counted elsewhere, in the same frame
 */
export function boreStretches(
  bore: BoreSolid,
  ballRadius: number,
  others: readonly BoreSolid[],
  rule: RayRule,
): Stretch[] {
  const area = Math.PI * bore.radius ** 2;
  return diskRule(rule).flatMap(({ x, y, weight }) => {
    const a = rayStart(bore, x, y);
    const inBall = insideSphere(a, bore.d, ballRadius);
    const end = depthAt(bore, bore.radius * hypot(x, y));
    const whole = { enter: inBall.enter, leave: Math.min(inBall.leave, end) };
    return outsideOf(others, a, bore.d, whole)
      .filter(({ enter, leave }) => leave > enter)
      .map(({ enter, leave }) => ({ a, d: bore.d, area: area * weight, s: enter, e: leave }));
  });
}

function insideSphere(a: Vec3, d: Vec3, radius: number): Interval {
  const b = dot(a, d);
  const disc = b * b - dot(a, a) + radius * radius;
  if (disc <= 0) return { enter: 0, leave: 0 };
  return { enter: -b - Math.sqrt(disc), leave: -b + Math.sqrt(disc) };
}

/** The parts of a stretch of the ray a + t d that lie outside all of some bores. */
export function outsideOf(
  bores: readonly BoreSolid[],
  a: Vec3,
  d: Vec3,
  whole: Readonly<Interval>,
): readonly Interval[] {
  const inside: Interval = { enter: 0, leave: 0 };
  let left: readonly Interval[] = [whole];
  for (const bore of bores) {
    crossBore(inside, bore, a, d);
    left = without(left, inside);
  }
  return left;
}

/** What is left of some intervals when another one is taken out. */
export function without(kept: readonly Interval[], gone: Interval): readonly Interval[] {
  if (!(gone.leave > gone.enter)) return kept;
  const left: Interval[] = [];
  for (const each of kept) {
    if (gone.leave <= each.enter || gone.enter >= each.leave) {
      left.push(each);
      continue;
    }
    if (gone.enter > each.enter) left.push({ enter: each.enter, leave: gone.enter });
    if (gone.leave < each.leave) left.push({ enter: gone.leave, leave: each.leave });
  }
  return left;
}
