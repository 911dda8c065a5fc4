import { acos, asin, atan2 } from '../math/atan.js';
import { clamp } from '../math/clamp.js';
import { hypot } from '../math/hypot.js';
import { cos, sin } from '../math/sin-cos.js';
/** A layout in the angles notation, rad; pin-to-PAP as the angle at the ball's centre. */
export interface Layout {
  /** At the pin, from the direction of the PAP to that of the marker, clockwise for a right-hander. */
  readonly drillingAngle: number;
  readonly pinToPap: number;
  /** At the PAP, from the upper vertical axis line to the pin, toward the grip; above 90° the pin lies below. */
  readonly valAngle: number;
}

/** The same layout in the distances notation; all three as angles at the ball's centre, rad. */
export interface LayoutDistances {
  readonly pinToPap: number;
  readonly markerToPap: number;
  /** Shortest arc from the pin to the vertical axis line. */
  readonly pinBuffer: number;
  readonly pinSide: 'above' | 'below';
}

/** A conversion has a result, or says why none exists. */
type Conversion<T> =
  | { readonly kind: 'found'; readonly value: T }
  | { readonly kind: 'impossible'; readonly clash: ArcsClash };

/** Why three distances are no layout; all arcs as angles at the ball's centre, rad. */
export type ArcsClash =
  | { readonly why: 'pin-on-pap' }
  | { readonly why: 'buffer-too-long'; readonly pinBuffer: number; readonly pinToPap: number }
  | { readonly why: 'marker-out-of-reach'; readonly pinToMarker: number; readonly markerToPap: number };

/** Arc from the pin to the marker when it was not measured: a mass-bias mark lies a quarter of the ball away. */
export const QUARTER_ARC = Math.PI / 2;

/**
 * Pin buffer, rad: sin(buffer) = sin(pin-to-PAP) · sin(VAL angle), a right spherical triangle.
 *
 * By atan2 of sine and cosine, since a sine alone loses digits of arcs near a quarter of the ball.
 */
export const pinBuffer = ({ pinToPap, valAngle }: Layout): number =>
  atan2(sin(pinToPap) * sin(valAngle), hypot(cos(pinToPap), sin(pinToPap) * cos(valAngle)));

/**
 * Arc from the marker to the PAP, rad: the spherical law of cosines at the pin, with the matching sine, so that small arcs keep their
 * digits (Todhunter & Leathem, Spherical Trigonometry).
 *
 * @param pinToMarker  arc from the pin to the marker, rad
 */
export function markerToPap({ pinToPap, drillingAngle }: Layout, pinToMarker = QUARTER_ARC): number {
  const [sinP, cosP] = [sin(pinToPap), cos(pinToPap)];
  const [sinM, cosM] = [sin(pinToMarker), cos(pinToMarker)];
  const along = sinM * cos(drillingAngle);
  return atan2(hypot(sinM * sin(drillingAngle), cosP * along - sinP * cosM), sinP * along + cosP * cosM);
}

/** Angles to distances; always possible. */
export const toDistances = (layout: Layout, pinToMarker = QUARTER_ARC): LayoutDistances => ({
  pinToPap: layout.pinToPap,
  markerToPap: markerToPap(layout, pinToMarker),
  pinBuffer: pinBuffer(layout),
  pinSide: layout.valAngle <= Math.PI / 2 ? 'above' : 'below',
});

/**
 * Distances to angles. Impossible when the pin cannot lie that far from the VAL, when the marker cannot lie that near to the PAP or that
 * far from it, and when the pin lies on the PAP, where distances fix no angle.
 *
 * The drilling angle is found from its cosine, so near 0° and 180° it keeps only half of the digits.
 */
export function toAngles(distances: LayoutDistances, pinToMarker = QUARTER_ARC): Conversion<Layout> {
  if (sin(distances.pinToPap) < ROUNDING) return { kind: 'impossible', clash: { why: 'pin-on-pap' } };
  const valAngle = valAngleOf(distances.pinToPap, distances.pinBuffer, distances.pinSide);
  if (valAngle === null) return { kind: 'impossible', clash: bufferTooLong(distances) };
  const cosine =
    (cos(distances.markerToPap) - cos(distances.pinToPap) * cos(pinToMarker)) /
    (sin(distances.pinToPap) * sin(pinToMarker));
  if (!(Math.abs(cosine) <= 1 + ROUNDING))
    return {
      kind: 'impossible',
      clash: { why: 'marker-out-of-reach', pinToMarker, markerToPap: distances.markerToPap },
    };
  const drillingAngle = acos(clamp(cosine, -1, 1));
  return { kind: 'found', value: { drillingAngle, pinToPap: distances.pinToPap, valAngle } };
}

/** The clash where `valAngleOf` finds no angle. */
export const bufferTooLong = ({
  pinBuffer,
  pinToPap,
}: Pick<LayoutDistances, 'pinBuffer' | 'pinToPap'>): ArcsClash => ({
  why: 'buffer-too-long',
  pinBuffer,
  pinToPap,
});

/** VAL angle (rad) that gives this buffer, on the wanted side of the PAP; null when none does. */
export function valAngleOf(pinToPap: number, buffer: number, side: 'above' | 'below'): number | null {
  const sine = sin(buffer) / sin(pinToPap);
  if (!(sine <= 1 + ROUNDING)) return null;
  const angle = asin(Math.min(1, sine));
  return side === 'above' ? angle : Math.PI - angle;
}

/** Sines and cosines that exceed 1 by no more than this do so by rounding. */
const ROUNDING = 1e-12;
