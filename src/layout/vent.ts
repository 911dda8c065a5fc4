import { ballPoint } from '../math/ball-point.js';
import { arcAngle } from '../math/sphere.js';
import { addScaled, norm, scale, sub } from '../math/vec3.js';
import { type GrippingHoleName, type Hole, mouthRadius } from './hole.js';

/** A vent as ordered: a narrow straight hole from a place on the surface into a gripping hole, m. */
export interface VentOrder {
  readonly into: GrippingHoleName;
  readonly radius: number;
  /** Arcs along the surface from the grip centre: over toward the PAP's side, then up toward the fingers. */
  readonly over: number;
  readonly up: number;
  /** How deep it meets the axis of that hole; null: at the bottom of its straight wall. */
  readonly meetsAt: number | null;
}

/** Greatest angle (rad) between a bore and the direction straight in at which a drill still starts on the ball (no source). */
const STEEPEST = Math.PI / 3;

/** A vent has its hole, or says why it cannot be drilled. */
export type PlacedVent =
  | { readonly kind: 'placed'; readonly hole: Hole }
  | {
      readonly kind: 'impossible';
      readonly why: 'no-such-hole' | 'mouth-in-hole' | 'below-the-hole' | 'too-slanted';
    };

/**
 * Places a vent of a right-hander's ball, in B.
 *
 * It ends on the axis of the hole that it vents, so that the two form one space at any slant.
 *
 * @param grip    the gripping holes as placed
 * @param radius  the ball's, m
 */
export function placeVent(order: VentOrder, grip: readonly Hole[], radius: number): PlacedVent {
  const vented = grip.find((hole) => hole.name === order.into);
  if (!vented) return { kind: 'impossible', why: 'no-such-hole' };
  const mouth_B = ballPoint(order.over / radius, order.up / radius);
  if (grip.some((hole) => radius * arcAngle(hole.mouth_B, mouth_B) < mouthRadius(hole) + order.radius))
    return { kind: 'impossible', why: 'mouth-in-hole' };
  const meetsAt = order.meetsAt ?? vented.open.depth;
  if (meetsAt > vented.open.depth) return { kind: 'impossible', why: 'below-the-hole' };
  const mouth = scale(radius, mouth_B);
  const end = addScaled(scale(radius, vented.mouth_B), meetsAt, vented.axis_B);
  const depth = norm(sub(end, mouth));
  const axis_B = scale(1 / depth, sub(end, mouth));
  if (arcAngle(axis_B, scale(-1, mouth_B)) > STEEPEST) return { kind: 'impossible', why: 'too-slanted' };
  return {
    kind: 'placed',
    hole: {
      name: 'vent',
      into: order.into,
      mouth_B,
      axis_B,
      open: { radius: order.radius, depth },
      sleeve: null,
      tip: 'flat',
    },
  };
}
