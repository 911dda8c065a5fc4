import { GRAVITY, LANE_LENGTH } from '../base/constants.js';
import { FOOT } from '../base/units.js';
import { atan2 } from '../math/atan.js';
import { hypot } from '../math/hypot.js';
import { power } from '../math/power.js';
import { cos, sin } from '../math/sin-cos.js';
import { filmAt } from '../motion/kernel/film.js';
import { frictionUnder, type Surface, stretchAt } from '../motion/lane/surface.js';
import type { Launch, Release } from '../motion/shot/release.js';

/** The path of a plain ball, at every foot from the foul line to the pins. SI, in W. */
export interface PlainRoll {
  /** Lateral position, m; one more than there are feet. */
  readonly x: Float64Array;
  /** The lane's film there, units of oil, and the friction it makes. */
  readonly film: Float64Array;
  readonly friction: Float64Array;
  /** Heading, rad, positive toward the left. */
  readonly heading: Float64Array;
  /** Angle turned since the release, rad. */
  readonly turned: Float64Array;
  /** Where the slip ends, m; the lane's length when it does not. */
  readonly rollStart: number;
  /** Heading at which it would finally roll if the lane were long enough, rad, positive toward the left. */
  readonly rollHeading: number;
}

/** Feet from the foul line to the pins, and steps of the plain roll. */
export const FEET = Math.round(LANE_LENGTH / FOOT);

/** Second moment of the plain ball over m R²: an RG of 2.55 in on a ball 27 in around. */
const INERTIA = 0.352;

/**
 * Rolls the plainest ball: its centre of mass at its centre, and the same inertia about every axis.
 *
 * Its slip keeps its direction, so that one number describes the effect of friction: the speed taken off so far
 * (any mechanics textbook; cf. Hopkins & Patterson, Am. J. Phys. 45, 1977). This takes a few microseconds and does not depend on the
 * layout. It tells the regression what the lane does to *any* ball on this line, so that the regression only has to fit what
 * this ball does differently. Steps of a foot, each with the friction at its beginning.
 *
 * @param carried  film under the contact in addition to the lane's, as a share of the greatest film met so far less what has worn off: 0
 *   for a ball that always rolls on clean cover, the share that a contact keeps for one that always meets its own oil
 * @param wornPerPass  share of that oil that each turn removes
 */
export function plainRoll(
  radius: number,
  release: Pick<Release, 'speed' | 'spin' | 'axisTilt' | 'axisRotation'>,
  launch: Launch,
  surface: Surface,
  carried: number,
  wornPerPass: number,
): PlainRoll {
  const { speed, spin, axisTilt, axisRotation } = release;
  const startX = speed * sin(launch.angle);
  const startY = speed * cos(launch.angle);
  // Slip v − R ω×z, with ω = spin times the release axis.
  const surfaceSpeed = radius * spin * cos(axisTilt);
  const slipX = startX + surfaceSpeed * sin(axisRotation);
  const slipY = startY - surfaceSpeed * cos(axisRotation);
  const slip = hypot(slipX, slipY);
  const toRoll = (INERTIA / (1 + INERTIA)) * slip;

  const x = new Float64Array(FEET + 1);
  const film = new Float64Array(FEET + 1);
  const friction = new Float64Array(FEET + 1);
  const heading = new Float64Array(FEET + 1);
  const turned = new Float64Array(FEET + 1);
  const upright = spin * sin(axisTilt);
  x[0] = launch.x;
  let takenOff = 0;
  let rollStart = LANE_LENGTH;
  let mostFilm = 0;
  for (let foot = 0; foot <= FEET; foot++) {
    const y = foot * FOOT;
    const share = slip > 0 ? takenOff / slip : 0;
    const vx = startX - share * slipX;
    const vy = Math.max(SLOWEST, startY - share * slipY);
    const law = stretchAt(surface, y);
    film[foot] = filmAt(surface, x[foot], y);
    friction[foot] = frictionUnder(law, film[foot]);
    heading[foot] = atan2(-vx, vy);
    if (foot === FEET) break;
    const turns = foot > 0 ? (turned[foot] - turned[foot - 1]) / (2 * Math.PI) : 0;
    mostFilm = Math.max(mostFilm * power(1 - wornPerPass, turns), film[foot]);
    const met = frictionUnder(law, film[foot] + carried * mostFilm);
    const time = FOOT / vy;
    const left = toRoll > 0 ? 1 - takenOff / toRoll : 0;
    const across = hypot(vx - left * slipX, vy - left * slipY) / radius; // spin about the horizontal
    turned[foot + 1] = turned[foot] + hypot(across, upright) * time;
    const before = takenOff;
    takenOff = Math.min(toRoll, takenOff + met * GRAVITY * time);
    if (takenOff === toRoll && rollStart === LANE_LENGTH && met > 0)
      rollStart = y + (vy * (toRoll - before)) / (met * GRAVITY);
    x[foot + 1] = x[foot] + vx * time;
  }
  const lost = INERTIA / (1 + INERTIA); // of the slip, once it rolls
  const rollHeading = atan2(lost * slipX - startX, Math.max(SLOWEST, startY - lost * slipY));
  return { x, film, friction, heading, turned, rollStart: Math.min(rollStart, LANE_LENGTH), rollHeading };
}

/** Speed down the lane below which a plain ball is not followed, m/s. */
const SLOWEST = 0.5;
