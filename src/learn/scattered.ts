import type { Shot } from '../motion/shot/shot.js';
import { type ShotDeviations, STILL } from '../simulate/worlds/release-scatter.js';

/** The readings of a shot, and how it ended. */
export interface ShotRead {
  readonly readings: Float64Array;
  readonly outcome: Shot['outcome'];
}

/** How the readings of a bowler's shots scatter about those of the mean shot. */
export interface Scattered {
  /** From the readings of the mean shot to the mean of the readings. */
  readonly shift: Float64Array;
  /** From shot to shot. */
  readonly covariance: readonly Float64Array[];
}

const RELEASE = ['speed', 'spin', 'axisTilt', 'axisRotation', 'launchAngle'] as const;

/** Distance √n of the 2n sigma points, in standard deviations: with equal weights they have the right covariance. */
const FAR = Math.sqrt(RELEASE.length);

/**
 * Mean and covariance of the readings over a bowler's shots, from two shots for each number of the release, √5 standard deviations to
 * either side (Julier & Uhlmann, Proc. SPIE 3068, 182, 1997; from memory). The mean is exact for readings of second degree; the
 * covariance holds only the slopes. Where one side sends the ball into the gutter, the other side alone gives the slope.
 *
 * @param read     readings of a shot that deviates from the mean shot
 * @param scatter  one standard deviation of the bowler's shots
 */
export function aboutTheMean(read: (shot: ShotDeviations) => ShotRead, scatter: ShotDeviations): Scattered {
  const { readings: middle, outcome } = read(STILL);
  const shift = new Float64Array(middle.length);
  const covariance = Array.from(middle, () => new Float64Array(middle.length));
  for (const name of RELEASE) {
    const at = (side: number): Float64Array | null => {
      const there = read({ ...STILL, [name]: side * FAR * scatter[name] });
      return there.outcome === outcome ? there.readings : null;
    };
    const [less, more] = [at(-1), at(1)];
    const slope = middle.map((here, i) => {
      if (less && more) return (more[i] - less[i]) / (2 * FAR);
      if (more) return (more[i] - here) / FAR;
      return less ? (here - less[i]) / FAR : 0;
    });
    for (let i = 0; i < middle.length; i++) {
      if (less && more) shift[i] += (less[i] + more[i] - 2 * middle[i]) / (2 * RELEASE.length);
      for (let j = 0; j < middle.length; j++) covariance[i][j] += slope[i] * slope[j];
    }
  }
  return { shift, covariance };
}
