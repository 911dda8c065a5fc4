import { FOOT, KMH, MPH } from '../../base/units.js';
import type { Oddity } from '../answers/statements/log-remarks.js';
import type { LoggedShot } from '../schemas/shot-log.js';

/* Numbers of a log that another unit would explain. */

/** Speed of a bowler's ball at release, and how far off that may be, mph. */
export interface ReleaseSpeed {
  readonly mph: number;
  /** One standard deviation, with the scatter of the shots. */
  readonly deviation: number;
}

/** The longest oil, 55 ft, in metres: a distance below that may be one, ft. */
const NEAREST_BREAKPOINT_FT = 17;

/** Fastest that a display shows of anyone, mph (a choice of this project). */
const FASTEST_DISPLAY = 23;

/** A display shows the mean over the lane, which is less than at release by up to so much (common practice, no source). */
const MOST_LOSS = 0.25;

/** Distance and speed of a shot that look like another unit. */
export const oddNumbers = (shot: LoggedShot, release: ReleaseSpeed | null): readonly Oddity[] => [
  ...oddDistance(shot),
  ...oddSpeed(shot, release),
];

function oddDistance({ breakpointFt }: LoggedShot): readonly Oddity[] {
  if (breakpointFt === undefined || breakpointFt >= NEAREST_BREAKPOINT_FT) return [];
  return [{ code: 'breakpoint-near', params: { breakpointFt, asMetresFt: breakpointFt / FOOT } }];
}

function oddSpeed({ displaySpeedMph }: LoggedShot, release: ReleaseSpeed | null): readonly Oddity[] {
  if (displaySpeedMph === undefined) return [];
  const room = 3 * (release?.deviation ?? 0);
  const fastest = release ? release.mph + room : FASTEST_DISPLAY;
  const slowest = release ? (1 - MOST_LOSS) * release.mph - room : 0;
  const ifFits = (mph: number): number | null => (mph >= slowest && mph <= fastest ? mph : null);
  const releaseMph = release?.mph ?? null;
  if (displaySpeedMph > fastest)
    return [
      {
        code: 'display-too-fast',
        params: { displaySpeedMph, releaseMph, meantMph: ifFits((displaySpeedMph * KMH) / MPH) },
      },
    ];
  if (release && displaySpeedMph < slowest)
    return [
      {
        code: 'display-too-slow',
        params: { displaySpeedMph, releaseMph: release.mph, meantMph: ifFits((displaySpeedMph * MPH) / KMH) },
      },
    ];
  return [];
}
