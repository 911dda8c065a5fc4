import { DEGREE, from, INCH, to } from '../../base/units.js';
import { mouthRadius } from '../../layout/hole.js';
import { valAngleOf } from '../../layout/layout.js';
import { placeLayout } from '../../layout/placement.js';
import { asin } from '../../math/atan.js';
import { arcAngle } from '../../math/sphere.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import type { GridStep } from '../../prepare/budget.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { PinSide } from '../../records/schemas/pin-side.js';
import type { Practice } from '../../records/shared/shared-data.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';

/** A layout by the numbers the search moves: what a person marks. */
export interface Candidate {
  readonly pinToPapIn: number;
  readonly pinBufferIn: number;
  readonly drillingAngleDeg: number;
  readonly side: PinSide;
}

/**
 * The layout of a candidate, its VAL angle rounded to a whole degree, so that the layout simulated is the one
 * written; null when no such layout exists or the trade does not drill it.
 */
export function layoutOf(candidate: Candidate, practice: Practice, radius: number): LayoutNumbers | null {
  const { pinToPapIn, pinBufferIn, drillingAngleDeg, side } = candidate;
  const arc = (inches: number): number => from(inches, INCH) / radius;
  const valAngle = valAngleOf(arc(pinToPapIn), arc(pinBufferIn), side);
  if (valAngle === null) return null;
  const valAngleDeg = Math.round(to(valAngle, DEGREE));
  const layout = { drillingAngleDeg, pinToPapIn, valAngleDeg };
  return isDrilledByTrade(layout, practice) ? layout : null;
}

/** Whether the numbers of a layout lie in the ranges that the trade drills, on either side of the pin. */
export function isDrilledByTrade(
  { drillingAngleDeg, pinToPapIn, valAngleDeg }: LayoutNumbers,
  practice: Practice,
): boolean {
  const inside = (value: number, { least, most }: { least: number; most: number }): boolean =>
    value >= least && value <= most;
  return (
    inside(pinToPapIn, practice.pinToPapIn) &&
    inside(drillingAngleDeg, practice.drillingAngleDeg) &&
    inside(Math.min(valAngleDeg, 180 - valAngleDeg), practice.valAngleDeg)
  );
}

/** Every candidate of a grid that the trade drills, without repeats of the same written layout. */
export function gridCandidates(
  practice: Practice,
  radius: number,
  step: GridStep,
  sides: readonly PinSide[],
): readonly Candidate[] {
  const found = new Map<string, Candidate>();
  for (const side of sides)
    for (const pinToPapIn of steps(practice.pinToPapIn, step.arcIn))
      for (const pinBufferIn of steps({ least: 0, most: pinToPapIn }, step.arcIn))
        for (const drillingAngleDeg of steps(practice.drillingAngleDeg, step.angleDeg)) {
          const candidate = { pinToPapIn, pinBufferIn, drillingAngleDeg, side };
          const layout = layoutOf(candidate, practice, radius);
          if (layout) found.set(keyOf(layout), found.get(keyOf(layout)) ?? candidate);
        }
  return [...found.values()];
}

export const keyOf = (layout: LayoutNumbers): string =>
  `${layout.drillingAngleDeg} ${layout.pinToPapIn} ${layout.valAngleDeg}`;

/** Orders layouts that are otherwise equal, whatever order they come in. */
export const byKey = (
  a: { readonly layout: LayoutNumbers },
  b: { readonly layout: LayoutNumbers },
): number => (keyOf(a.layout) < keyOf(b.layout) ? -1 : 1);

/** A list of layouts, followed by those others that are not in it. */
export function withOthers(
  list: readonly LayoutNumbers[],
  others: readonly LayoutNumbers[],
): readonly LayoutNumbers[] {
  const known = new Set(list.map(keyOf));
  return [...list, ...others.filter((layout) => !known.has(keyOf(layout)))];
}

/** Values from least to most, evenly spaced. */
export function steps({ least, most }: { least: number; most: number }, by: number): number[] {
  return Array.from({ length: Math.floor((most - least) / by + 1e-9) + 1 }, (_, i) => least + i * by);
}

/** Least distance (in) from the pin, and from the marker, to any hole's edge on the surface. */
export function markClearanceIn(layout: LayoutNumbers, ball: BallProblem): { pin: number; marker: number } {
  const { radius } = ball.published;
  const { pin_B, marker_B } = placeLayout(toLayout(layout, radius), ball.pap_B, ball.pinToMarker);
  const least = (u_B: typeof pin_B): number =>
    Math.min(
      ...ball.holes.map((hole) => {
        const edge = asin(mouthRadius(hole) / radius);
        return to((arcAngle(u_B, hole.mouth_B) - edge) * radius, INCH);
      }),
    );
  return { pin: least(pin_B), marker: least(marker_B) };
}
