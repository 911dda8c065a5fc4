import { DEGREE, from, MPH, RPM } from '../../base/units.js';
import type { Bowler, Scatter } from '../../records/schemas/bowler.js';
import type { Draws } from './draws.js';

/** How one shot differs from a bowler's mean shot: m/s, rad/s, rad. */
export interface ShotDeviations {
  readonly speed: number;
  readonly spin: number;
  readonly axisTilt: number;
  readonly axisRotation: number;
  readonly launchAngle: number;
}

/** The mean shot. */
export const STILL: ShotDeviations = { speed: 0, spin: 0, axisTilt: 0, axisRotation: 0, launchAngle: 0 };

/** Shot-to-shot scatter (one standard deviation) by skill, when a bowler gives none. Assumed, no source. */
export const SCATTER_BY_SKILL: Record<'beginner' | 'league' | 'advanced', Scatter> = {
  beginner: { speedMph: 0.8, revRateRpm: 25, axisTiltDeg: 3, axisRotationDeg: 8, launchAngleDeg: 0.6 },
  league: { speedMph: 0.4, revRateRpm: 15, axisTiltDeg: 2, axisRotationDeg: 5, launchAngleDeg: 0.35 },
  advanced: { speedMph: 0.2, revRateRpm: 8, axisTiltDeg: 1, axisRotationDeg: 3, launchAngleDeg: 0.2 },
};

export const scatterOf = (bowler: Bowler): Scatter =>
  bowler.scatter ?? SCATTER_BY_SKILL[bowler.skill ?? 'league'];

/** Shot-to-shot scatter of a bowler, one standard deviation of each number, SI. */
export function shotScatterOf(bowler: Bowler): ShotDeviations {
  const scatter = scatterOf(bowler);
  return {
    speed: from(scatter.speedMph, MPH),
    spin: from(scatter.revRateRpm, RPM),
    axisTilt: from(scatter.axisTiltDeg, DEGREE),
    axisRotation: from(scatter.axisRotationDeg, DEGREE),
    launchAngle: from(scatter.launchAngleDeg, DEGREE),
  };
}

/** Draws the deviations of one shot from the mean shot. */
export function drawShot({ normal }: Pick<Draws, 'normal'>, bowler: Bowler): ShotDeviations {
  const scatter = shotScatterOf(bowler);
  return {
    speed: scatter.speed * normal('speed'),
    spin: scatter.spin * normal('spin'),
    axisTilt: scatter.axisTilt * normal('axisTilt'),
    axisRotation: scatter.axisRotation * normal('axisRotation'),
    launchAngle: scatter.launchAngle * normal('launchAngle'),
  };
}
