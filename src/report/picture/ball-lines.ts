import { atan2 } from '../../math/atan.js';
import { arcAround, arcBetween, greatCircle, someTangent } from '../../math/curves.js';
import { arcAngle, walk } from '../../math/sphere.js';
import { cross, dot, rotateAbout, unit, type Vec3 } from '../../math/vec3.js';
import type { BallFace } from '../../records/answers/parts/ball-face.js';

/** Points of a ball that the lines of a layout run through, and its angles, all in B. */
export interface BallLines {
  readonly midline: readonly Vec3[];
  readonly centreLine: readonly Vec3[];
  readonly val: readonly Vec3[];
  readonly pinToPap: readonly Vec3[];
  /** From the pin toward the marker, as far as the marker. */
  readonly pinToMarker: readonly Vec3[];
  /** Shortest way from the pin to the VAL. */
  readonly buffer: readonly Vec3[];
  readonly drillingAngle: Wedge;
  readonly valAngle: Wedge;
}

/** An angle drawn on the ball: its arc, and where its number stands. */
export interface Wedge {
  readonly arc: readonly Vec3[];
  /** rad, positive. */
  readonly angle: number;
  readonly label: Vec3;
}

const GRIP_CENTRE: Vec3 = [0, 0, 1];
const FINGERS: Vec3 = [0, 1, 0];
const PAP_SIDE: Vec3 = [1, 0, 0];

/** How far from its corner an angle is drawn, and its number, rad. */
const WEDGE = 0.2;
const WEDGE_LABEL = 0.36;

/** The lines of a layout on the ball. Angles are taken from the marks, so that a picture shows what was placed. */
export function ballLines({ pap, pin, marker }: Pick<BallFace, 'pap' | 'pin' | 'marker'>): BallLines {
  const upTheVal = someTangent(pap, FINGERS);
  const pole = cross(pap, upTheVal); // of the VAL's great circle
  const foot = unit([0, 1, 2].map((i) => pin[i] - dot(pin, pole) * pole[i]) as unknown as Vec3);
  return {
    midline: greatCircle(GRIP_CENTRE, PAP_SIDE),
    centreLine: greatCircle(GRIP_CENTRE, FINGERS),
    val: greatCircle(pap, upTheVal),
    pinToPap: arcBetween(pin, pap),
    pinToMarker: arcBetween(pin, marker),
    buffer: arcBetween(pin, foot),
    drillingAngle: wedge(pin, someTangent(pin, pap), someTangent(pin, marker)),
    valAngle: wedge(pap, upTheVal, someTangent(pap, pin)),
  };
}

/** The angle at a corner from one unit tangent to another, drawn the shorter way. */
function wedge(corner: Vec3, from: Vec3, to: Vec3): Wedge {
  const turn = atan2(dot(corner, cross(from, to)), dot(from, to));
  return {
    arc: arcAround(corner, from, turn, WEDGE),
    angle: Math.abs(turn),
    label: walk(corner, rotateAbout(from, corner, turn / 2), WEDGE_LABEL),
  };
}

/** Whether a layout has both its angles: the pin lies on neither the PAP nor the marker. */
export const hasAngles = ({ pap, pin, marker }: Pick<BallFace, 'pap' | 'pin' | 'marker'>): boolean =>
  arcAngle(pin, pap) > WEDGE && arcAngle(pin, marker) > WEDGE;
