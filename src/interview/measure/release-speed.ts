import { LANE_LENGTH } from '../../base/constants.js';
import { from, MPH } from '../../base/units.js';
import { hypot } from '../../math/hypot.js';
import type { Measured } from './measured.js';

/**
 * How much faster a ball leaves the hand than it is on average on its way to the pins, m/s.
 *
 * Friction slows it. Over this project's demo bowlers, balls and lanes the simulated difference is 1.2 to 2.7 mph
 * and 1.4 on a usual house pattern.
 */
const LOSS = from(1.6, MPH);
const LOSS_DEVIATION = from(0.35, MPH);

/** How exactly a person stops a watch at foul line and pins, s (assumed). */
const WATCH_DEVIATION = 0.1;

/** Speed at release, m/s, from the average over the lane that a display shows, m/s. */
export const speedFromAverage = (average: number): Measured => ({
  value: average + LOSS,
  deviation: LOSS_DEVIATION,
});

/**
 * Speed at release, m/s, from the time between foul line and head pin.
 *
 * @param time    mean of the timings, s
 * @param timings how many were taken, at least one
 */
export function speedFromTime(time: number, timings: number): Measured {
  const average = LANE_LENGTH / time;
  const watch = (average * WATCH_DEVIATION) / (time * Math.sqrt(timings));
  return { value: average + LOSS, deviation: hypot(watch, LOSS_DEVIATION) };
}
