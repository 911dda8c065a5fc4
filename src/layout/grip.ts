import { asin } from '../math/atan.js';
import { otherLeg, tangentToward } from '../math/sphere.js';
import { addScaled, cross, scale, sub, unit, type Vec3 } from '../math/vec3.js';
import type { Hole, HoleShape, Pitches } from './hole.js';
import { pointBeside } from './hole-marks.js';

/** One gripping hole as ordered: its shape and its pitches. */
export interface HoleOrder extends HoleShape, Pitches {}

/** A grip as ordered, m. Spans run from the thumb's edge to the finger's edge, along the surface. */
export interface Grip {
  readonly spanMiddle: number;
  readonly spanRing: number;
  readonly bridge: number;
  readonly thumb: HoleOrder | null;
  readonly middle: HoleOrder;
  readonly ring: HoleOrder;
}

/** Assumed radius of the thumb hole when spans are given without one, m. */
const ABSENT_THUMB_RADIUS = 0.0127;

/**
 * Places the gripping holes of a right-hander on the ball.
 *
 * The thumb hole's centre lies on the centre line, the ring finger on the PAP's side, the middle finger on
 * the other, each with its edge half a bridge from the centre line. The grip centre (z of B) lies halfway, along the centre
 * line, between the thumb's edge and the mean of the finger holes' edges.
 *
 * @param grip    as ordered, m
 * @param radius  the ball's, m
 * @returns the holes in drilling order; null when the spans are too short for the bridge and the hole sizes
 */
export function placeGrip(grip: Grip, radius: number): readonly Hole[] | null {
  const edge = (r: number): number => asin(r / radius);
  const thumbEdge = edge(grip.thumb?.open.radius ?? ABSENT_THUMB_RADIUS);
  const fingers = [
    { name: 'middle', order: grip.middle, span: grip.spanMiddle, side: -1 },
    { name: 'ring', order: grip.ring, span: grip.spanRing, side: 1 },
  ] as const;

  const along = fingers.map(({ order, span }) =>
    otherLeg(thumbEdge + span / radius + edge(order.open.radius), lateral(order)),
  );
  const [middle, ring] = along;
  if (middle == null || ring == null) return null;

  const meanFingerEdge = (middle - edge(grip.middle.open.radius) + ring - edge(grip.ring.open.radius)) / 2;
  const thumbBelow = (meanFingerEdge + thumbEdge) / 2; // arc from the grip centre down to the thumb's centre

  const holes: Hole[] = [];
  if (grip.thumb) holes.push(bore('thumb', grip.thumb, pointBeside(0, -thumbBelow), 1));
  fingers.forEach(({ name, order, side }, i) => {
    holes.push(bore(name, order, pointBeside(side * lateral(order), (along[i] as number) - thumbBelow), -1));
  });
  return holes;

  function lateral(order: HoleOrder): number {
    return grip.bridge / radius / 2 + edge(order.open.radius);
  }

  function bore(name: Hole['name'], order: HoleOrder, mouth_B: Vec3, palmSign: 1 | -1): Hole {
    const y_B: Vec3 = [0, palmSign, 0];
    const towardPalm = tangentToward(mouth_B, y_B);
    // toward the PAP's side; the thumb's and the fingers' palm directions are opposite
    const towardPap = scale(palmSign, cross(towardPalm, mouth_B));
    const aim = addScaled(scale(order.forwardPitch, towardPalm), order.lateralPitch, towardPap);
    return {
      name,
      mouth_B,
      axis_B: unit(sub(aim, scale(radius, mouth_B))),
      open: order.open,
      sleeve: order.sleeve,
      tip: order.tip,
    };
  }
}
