import { LANE_LENGTH, LANE_WIDTH } from '../../base/constants.js';
import { power } from '../../math/power.js';

/** Where balls have run on an oil pattern, and how often; m in W. */
export interface Traffic {
  /** Games bowled on this oil by all bowlers together. */
  readonly games: number;
  /** Middle of the track: at least two points in order of y, with straight lines between them. */
  readonly track: readonly { readonly y: number; readonly x: number }[];
  /** Distance from the track's middle to where no ball runs. */
  readonly halfWidth: number;
  /** Where the pattern ends, and how far past its end carried oil is found. */
  readonly endY: number;
  readonly carryLength: number;
}

/** How fast games remove oil. */
export interface WearRates {
  /** Share of the film in the middle of the track that the first game takes away. */
  readonly burnPerGame: number;
  /** Share of the oil taken away that comes to lie past the pattern's end. The rest leaves on the balls. */
  readonly carriedDown: number;
}

type Field = (x: number, y: number) => number;

/**
 * What games do to a film: worn = fresh − burnt · (taken − carriedDown · laid), each a film in units of oil.
 *
 * Balls take a share of the film they run over, most in the middle of the track, so most oil is lost where most
 * lies: in the front part of the lane. Some of it is laid down past the pattern's end, less and less over `carryLength`. `laid` holds as
 * much oil as `taken`; what is not laid down has left the lane. **An assumption of flarewise: no measured
 * law was found.**
 *
 * @param fresh  the film before the first game
 */
export function wearOf(fresh: Field, traffic: Traffic): { readonly taken: Field; readonly laid: Field } {
  const across = (x: number, y: number): number => bump((x - trackAt(traffic, y)) / traffic.halfWidth);
  const taken: Field = (x, y) => (y <= traffic.endY ? fresh(x, y) * across(x, y) : 0);
  const fading: Field = (x, y) => {
    const past = (y - traffic.endY) / traffic.carryLength;
    return past > 0 && past < 1 ? (1 - past) * across(x, y) : 0;
  };
  const room = amountOf(fading);
  const perUnit = room > 0 ? amountOf(taken) / room : 0;
  return { taken, laid: (x, y) => perUnit * fading(x, y) };
}

/** Share of the film in the middle of the track that games have taken; each game takes the same share of what is left. */
export const burnt = ({ games }: Traffic, { burnPerGame }: WearRates): number =>
  1 - power(1 - burnPerGame, games);

/** Amount of oil of a film on the whole lane, units·m²: midpoints of a fine grid. */
export function amountOf(film: Field): number {
  const across = LANE_WIDTH / ACROSS;
  const along = LANE_LENGTH / ALONG;
  let sum = 0;
  for (let j = 0; j < ALONG; j++)
    for (let i = 0; i < ACROSS; i++) sum += film(-LANE_WIDTH / 2 + (i + 0.5) * across, (j + 0.5) * along);
  return sum * across * along;
}

/** Quarter boards by quarter feet. */
const ACROSS = 156;
const ALONG = 240;

/** (1 − u²)² within the track, nothing outside: falls off without a corner. */
const bump = (u: number): number => (u * u < 1 ? (1 - u * u) ** 2 : 0);

/** Middle of the track at a distance, by linear interpolation, extrapolated past both ends. */
function trackAt({ track }: Traffic, y: number): number {
  let i = 1;
  while (i < track.length - 1 && track[i].y < y) i++;
  const from = track[i - 1];
  const to = track[i];
  return from.x + ((to.x - from.x) * (y - from.y)) / (to.y - from.y);
}
