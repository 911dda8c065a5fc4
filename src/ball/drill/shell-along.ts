import type { Moments } from '../mass/mass-properties.js';
import { MomentSum } from '../mass/moment-sum.js';
import type { UnitShape } from '../solid/part.js';
import { crossRay, type Interval, unitRay } from '../solid/ray-interval.js';
import type { Stretch } from '../solid/stretch.js';
import type { BallBody } from './ball-body.js';

/** Moments of cover and filler along stretches, as if there were no core; about Bo, in the frame of the stretches. */
export function shellAlong(
  { radius, coverThickness, coverDensity, fillerDensity }: BallBody,
  stretches: readonly Stretch[],
): Moments {
  const sum = new MomentSum();
  const inFiller: Interval = { enter: 0, leave: 0 };
  const ray = unitRay();
  const k = 1 / (radius - coverThickness);
  const step = fillerDensity - coverDensity;
  for (const { a, d, area, s, e } of stretches) {
    sum.addStretch(a, d, s, e, area * coverDensity);
    for (let i = 0; i < 3; i++) {
      ray[i] = k * a[i];
      ray[i + 3] = k * d[i];
    }
    crossRay(inFiller, BALL, ray);
    const enter = Math.max(s, inFiller.enter);
    const leave = Math.min(e, inFiller.leave);
    if (leave > enter) sum.addStretch(a, d, enter, leave, area * step);
  }
  return sum.moments();
}

const BALL: UnitShape = { kind: 'ball' };
