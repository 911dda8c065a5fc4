import { GRAVITY, LANE_LENGTH, LANE_WIDTH } from '../../base/constants.js';
import { lent, memory } from '../kernel/memory.js';
import { enterStretch } from '../kernel/shot-stepper.js';
import { BALL_SLOT, FLAG, GROUND, RING, STEP } from '../kernel/slots.js';
import { type Surface, stretchAt } from '../lane/surface.js';
import type { PrincipalBody } from './principal-body.js';
import { RING_PLACES, type ShotSettings } from './shot-settings.js';

const { MASS, RADIUS, MOMENT_0, OFFSET_0, INVERSE_EFFECTIVE_MASS, SLIP_RATE } = BALL_SLOT;

/** Slip may end up to this many times as fast as for a ball at rest on its centre: the normal force sways, and so does the contact. */
const SWAY = 1.5;

/**
 * Writes everything that the shot kernel reads: the ball, the lane, the settings, and the state at release. Nothing of an earlier shot
 * remains.
 *
 * @param start   from `launchState`
 * @param isFull  whether samples hold all columns, or only those that reaction numbers need
 */
export function beginShot(
  body: PrincipalBody,
  start: Float64Array,
  surface: Surface,
  settings: ShotSettings,
  isFull: boolean,
): void {
  const { step: longestStep, freshSurface, gravity = GRAVITY, length = LANE_LENGTH } = settings;
  const { halfWidth = LANE_WIDTH / 2, ringPlaces = RING_PLACES } = settings;
  const { here, endRates, step, flags } = memory;
  here.set(start);
  endRates.fill(0); // the step before the first
  step.fill(0);
  flags.fill(0);
  step[STEP.LONGEST] = longestStep;
  flags[FLAG.IS_FULL] = isFull ? 1 : 0;
  writeBall(body, gravity);
  writeGround(surface, length, halfWidth);
  memory.placeCarried.fill(0);
  memory.placeFresh.fill(1);
  if (!freshSurface) return;
  const { ring } = memory;
  memory.ringPassed.fill(-1);
  flags[FLAG.HAS_RINGS] = 1;
  flags[FLAG.PER_TURN] = ringPlaces;
  flags[FLAG.LAST_OILED] = -1;
  ring[RING.PER_ANGLE] = ringPlaces / (2 * Math.PI);
  ring[RING.PLACE_ANGLE] = (2 * Math.PI) / ringPlaces;
  ring[RING.PER_BAND] = 1 / freshSurface.bandWidth;
  ring[RING.CARRIED_SHARE] = freshSurface.carriedShare;
  ring[RING.WORN_PER_PASS] = freshSurface.wornPerPass;
}

/** Writes the ball, in P, and what pulls it down, m/s². */
export function writeBall({ mass, radius, J, p_BoBcm_P, R_BP }: PrincipalBody, gravity: number): void {
  const { ball } = memory;
  ball[MASS] = mass;
  ball[RADIUS] = radius;
  ball.set(J, MOMENT_0);
  ball.set(p_BoBcm_P, OFFSET_0);
  ball[BALL_SLOT.GRAVITY] = gravity;
  ball[INVERSE_EFFECTIVE_MASS] = 1 / mass + (radius * radius) / J[0];
  ball[SLIP_RATE] = SWAY * gravity * mass * ball[INVERSE_EFFECTIVE_MASS];
  memory.R_BP.set(R_BP.flat());
}

function writeGround(surface: Surface, length: number, halfWidth: number): void {
  const { ground, flags, placeFilm } = memory;
  lent.surface = surface;
  if (surface.film) lent.film = surface.film;
  else placeFilm.fill(0);
  flags[FLAG.HAS_FILM] = surface.film ? 1 : 0;
  ground[GROUND.LENGTH] = length;
  ground[GROUND.HALF_WIDTH] = halfWidth;
  enterStretch(surface.stretches.indexOf(stretchAt(surface, 0)));
}
