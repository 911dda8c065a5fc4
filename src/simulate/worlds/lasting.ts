import { DEGREE, from, INCH, MPH, RPM } from '../../base/units.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { AssumedSurface } from './assumed-surface.js';
import { drawSurface } from './draw-surface.js';
import type { Drawn, Draws } from './draws.js';

/** What lasts from shot to shot: how far the means of the release and the PAP lie from the numbers stated; lane and cover. SI, rad. */
export interface Lasting {
  readonly speed: number;
  readonly spin: number;
  readonly axisTilt: number;
  readonly axisRotation: number;
  readonly papOver: number;
  readonly papUp: number;
  readonly surface: AssumedSurface;
}

/** The coordinates that the release is drawn from. */
export const RELEASE_COORDINATES = [
  'speedMean',
  'spinMean',
  'axisTiltMean',
  'axisRotationMean',
  'papOver',
  'papUp',
] as const satisfies readonly Drawn[];

/** All coordinates that what lasts is drawn from. */
export const LASTING = [
  ...RELEASE_COORDINATES,
  'frictionOiled',
  'frictionDry',
  'filmScale',
  'lawShape',
  'finishExponent',
  'finishOnDry',
  'carriedShare',
  'wornPerPass',
  'bandWidth',
  'burnPerGame',
  'carriedDown',
] as const satisfies readonly Drawn[];

export type LastingCoordinate = (typeof LASTING)[number];

/** Draws what lasts. @param radius  the ball's, m */
export function drawLasting(
  draw: Draws,
  { uncertainty }: Pick<Bowler, 'uncertainty'>,
  radius: number,
): Lasting {
  const { speedMph = 0, revRateRpm = 0, axisTiltDeg = 0, axisRotationDeg = 0 } = uncertainty ?? {};
  const { papOverIn = 0, papUpIn = 0 } = uncertainty ?? {};
  return {
    speed: from(speedMph, MPH) * draw.normal('speedMean'),
    spin: from(revRateRpm, RPM) * draw.normal('spinMean'),
    axisTilt: from(axisTiltDeg, DEGREE) * draw.normal('axisTiltMean'),
    axisRotation: from(axisRotationDeg, DEGREE) * draw.normal('axisRotationMean'),
    papOver: (from(papOverIn, INCH) / radius) * draw.normal('papOver'),
    papUp: (from(papUpIn, INCH) / radius) * draw.normal('papUp'),
    surface: drawSurface(draw),
  };
}
