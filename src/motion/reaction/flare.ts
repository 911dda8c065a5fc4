import { peak } from '../../math/peak.js';
import type { LeanShot } from '../shot/shot.js';
import { ringTrack } from './rings.js';
import { distanceToTrack } from './track.js';

/** Points on each of the two rings that are compared. */
const POINTS = 49;

/** A film too thin to leave a ring that can be seen, units of oil. */
export const FAINT = 0.5;

/**
 * Flare: tape distance from the first full ring to the last visible one, at the widest place, m.
 *
 * A ring is visible where it was laid in oil, so the last one is the turn that ends where the oil does (`visibleTurns`). Flare is the
 * greatest distance of its points from the first ring, whose end is joined to its beginning. A parabola finds the widest place between
 * points, so that flare changes smoothly with the shot. Less than one turn leaves no ring.
 */
export function flareOf(shot: LeanShot, radius: number): number {
  const turns = visibleTurns(shot);
  if (!(turns >= 1)) return 0;
  const first = ringTrack(shot, 0, POINTS).subarray(0, 3 * (POINTS - 1)); // its end lies beside its beginning
  const last = ringTrack(shot, 2 * Math.PI * (turns - 1), POINTS);
  const apart: number[] = [];
  for (let n = 0; n < POINTS; n++)
    apart.push(distanceToTrack(first, [last[3 * n], last[3 * n + 1], last[3 * n + 2]], 'closed'));
  return radius * peak(apart);
}

/** Turns made in oil that makes a visible ring; all turns on a lane without such oil. */
export const visibleTurns = ({ film, phase }: LeanShot): number =>
  turnedInOil({ film, turned: phase }) / (2 * Math.PI);

/**
 * Angle turned in oil that makes a visible ring, rad; all of it on a lane without such oil.
 *
 * Oil of twice the faintest film counts in full and thinner oil in proportion, so that a long thin stretch, as games carry it down the
 * lane, does not begin or cease to count all at once.
 *
 * @param film    met at places along the path, units of oil
 * @param turned  angle turned since the release at these places, rad
 */
export function turnedInOil({
  film,
  turned,
}: {
  readonly film: Float64Array;
  readonly turned: Float64Array;
}): number {
  if (!film.some((oil) => oil > FAINT)) return turned[turned.length - 1] ?? 0;
  const share = (oil: number): number => Math.min(1, Math.max(0, oil / (2 * FAINT)));
  let angle = 0;
  for (let i = 1; i < film.length; i++)
    angle += ((turned[i] - turned[i - 1]) * (share(film[i - 1]) + share(film[i]))) / 2;
  return angle;
}
