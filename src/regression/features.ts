import { BOARD } from '../base/constants.js';
import { FOOT } from '../base/units.js';
import { upTheVal } from '../layout/placement.js';
import { asin } from '../math/atan.js';
import { type Mat3, mulVec, rotateTensor } from '../math/mat3.js';
import { sin } from '../math/sin-cos.js';
import { cross, type Vec3 } from '../math/vec3.js';
import { frictionAt } from '../motion/kernel/film.js';
import type { FreshSurface } from '../motion/lane/fresh-surface.js';
import { frictionUnder, type Surface, stretchAt } from '../motion/lane/surface.js';
import { turnedInOil } from '../motion/reaction/flare.js';
import type { RollingBody } from '../motion/shot/body.js';
import type { Launch, Release } from '../motion/shot/release.js';
import { writeWander } from './axis-wander.js';
import type { ShotInputs } from './inputs.js';
import { plainHook, plainHookStart, plainSharpness } from './plain-numbers.js';
import { FEET, type PlainRoll, plainRoll } from './plain-roll.js';

/** One input of the regression. */
interface Feature {
  readonly name: string;
  readonly unit: string;
}

/*
 * The inputs, and why they were chosen. The equations of a shot contain the ball only through I/(m R²), the offset of
 * the centre of mass over R, and the surface speed R ω. What the lane does to any ball on this
 * line comes from the plain roll. What this ball does differently depends on its tensor and offset in the frame of the release: along
 * the PAP, up the vertical axis line, toward the grip.
 */

const f = (unit: string, ...names: readonly string[]): Feature[] => names.map((name) => ({ name, unit }));

/** Stretches of lane, ft, over which the friction on the plain path is averaged. */
const STRETCHES = [0, 15, 25, 30, 35, 40, 45, 50, FEET] as const;

/** Stretches, ft, over which the slope of that friction across the lane is averaged. */
const SLOPE_STRETCHES = [15, 35, 45, FEET] as const;

const stretchNames = (what: string, feet: readonly number[]): string[] =>
  feet.slice(1).map((to, i) => `${what}, ${feet[i]} to ${to} ft`);

/** Features of the ball alone, which the layout changes. */
export const BALL_FEATURES: readonly Feature[] = [
  ...f('1', 'inertia/mR² pap', 'inertia/mR² up', 'inertia/mR² grip'),
  ...f('1', 'inertia/mR² pap-up', 'inertia/mR² pap-grip', 'inertia/mR² up-grip'),
  ...f('1', 'centre of mass/R pap', 'centre of mass/R up', 'centre of mass/R grip'),
];

/** Features of release, line, lane and cover, which the world changes. */
export const WORLD_FEATURES: readonly Feature[] = [
  ...f('m/s', 'speed', 'surface speed Rω'),
  ...f('rad', 'axis tilt', 'axis rotation'),
  ...f('1', 'friction dry', 'friction at 5 units', 'friction oiled'),
  ...f('1', 'oil band/R', 'carried share', 'worn per pass'),
  ...f('units', 'most film met'),
  ...f('1', ...stretchNames('plain friction', STRETCHES)),
  ...f('1/board', ...stretchNames('plain friction across', SLOPE_STRETCHES)),
  ...f('rad', 'plain angle turned'),
  ...['clean', 'oily'].flatMap((cover) => [
    ...f('m', `plain hook, ${cover}`),
    ...f('rad', `plain entry angle, ${cover}`),
    ...f('m', `plain hook start, ${cover}`, `plain roll start, ${cover}`),
    ...f('rad/m', `plain sharpness, ${cover}`),
    ...f('rad', `plain angle turned in oil, ${cover}`),
  ]),
];

/**
 * Features of ball and world together: how much of its own oil the ball meets again, the plain rolls interpolated accordingly, and how
 * far the axis migrates while the ball rolls in oil.
 */
export const JOINT_FEATURES: readonly Feature[] = [
  ...f('1', 'oil met again', 'nearness of rings', 'ring turn up', 'ring turn grip'),
  ...f('m', 'plain hook'),
  ...f('rad', 'plain entry angle'),
  ...f('m', 'plain hook start', 'plain roll start'),
  ...f('rad/m', 'plain sharpness'),
  ...f('rad', 'plain angle turned in oil'),
  ...f('rad', 'axis wander in oil', 'axis wander up', 'axis wander grip'),
  ...f('1', 'oil met again, at its end'),
];

export const FEATURES: readonly Feature[] = [...BALL_FEATURES, ...WORLD_FEATURES, ...JOINT_FEATURES];

/** The frame of the release as rows: PAP, up the vertical axis line, and their cross product, toward the grip. */
export function releaseFrame(pap_B: Vec3): Mat3 {
  const up_B = upTheVal(pap_B);
  return [pap_B, up_B, cross(pap_B, up_B)];
}

/**
 * Writes the ball's features into `out` from `at` on.
 *
 * @param R_FB  `releaseFrame` of the ball's PAP
 */
export function writeBallFeatures(out: Float32Array, at: number, body: RollingBody, R_FB: Mat3): void {
  const perMass = 1 / (body.mass * body.radius ** 2);
  const [[a, d, e], [, b, g], [, , c]] = rotateTensor(R_FB, body.I_Bcm_B);
  [a, b, c, d, e, g].forEach((value, i) => {
    out[at + i] = value * perMass;
  });
  mulVec(R_FB, body.p_BoBcm_B).forEach((value, i) => {
    out[at + 6 + i] = value / body.radius;
  });
}

/** Writes the features of everything except the ball into `out` from `at` on. */
export function writeWorldFeatures(
  out: Float32Array,
  at: number,
  radius: number,
  release: Release,
  launch: Launch,
  surface: Surface,
  fresh: FreshSurface,
): void {
  const plain = middlingRoll(radius, release, launch, surface, fresh);
  let i = at;
  out[i++] = release.speed;
  out[i++] = radius * release.spin;
  out[i++] = release.axisTilt;
  out[i++] = release.axisRotation;
  const law = stretchAt(surface, 0);
  out[i++] = frictionUnder(law, 0);
  out[i++] = frictionUnder(law, 5);
  out[i++] = frictionUnder(law, Number.POSITIVE_INFINITY);
  out[i++] = fresh.bandWidth / radius;
  out[i++] = fresh.carriedShare;
  out[i++] = fresh.wornPerPass;
  out[i++] = plain.film.reduce((most, film) => Math.max(most, film), 0);
  for (let k = 1; k < STRETCHES.length; k++)
    out[i++] = mean(STRETCHES[k - 1], STRETCHES[k], (foot) => plain.friction[foot]);
  const across = (foot: number): number =>
    (frictionBeside(plain, surface, foot, BOARD) - frictionBeside(plain, surface, foot, -BOARD)) / 2;
  for (let k = 1; k < SLOPE_STRETCHES.length; k++)
    out[i++] = mean(SLOPE_STRETCHES[k - 1], SLOPE_STRETCHES[k], across);
  out[i++] = plain.turned[FEET];
  for (const carried of [0, fresh.carriedShare]) {
    const roll = plainRoll(radius, release, launch, surface, carried, fresh.wornPerPass);
    out[i++] = plainHook(roll, launch);
    out[i++] = roll.heading[FEET];
    out[i++] = plainHookStart(roll, launch);
    out[i++] = roll.rollStart;
    out[i++] = plainSharpness(roll);
    out[i++] = turnedInOil(roll);
  }
}

/** Share of the oil kept by a contact that a ball of medium flare meets again. A rough guess is enough for a feature. */
const MET_AGAIN = 0.35;

/** The plain roll of a ball of medium flare. */
export const middlingRoll = (
  radius: number,
  release: Release,
  launch: Launch,
  surface: Surface,
  { carriedShare, wornPerPass }: FreshSurface,
): PlainRoll => plainRoll(radius, release, launch, surface, MET_AGAIN * carriedShare, wornPerPass);

/**
 * Writes the joint features from those of the ball and the world.
 *
 * Free rotation moves the axis in the ball by about I_px/I_pp per radian turned, and therefore a ring by 2π times that per turn;
 * for a body of revolution this is S = πR (dI/I) sin 2θ. Two successive rings cross at two points; a quarter of a turn away
 * they lie S apart, and in between S cos φ.
 */
export function writeJointFeatures(out: Float32Array, at: number, ball: number, world: number): void {
  const perBand = (2 * Math.PI) / (out[ball] * out[world + BAND]);
  const up = out[ball + 3] * perBand;
  const grip = out[ball + 4] * perBand;
  const spacing = Math.sqrt(up * up + grip * grip);
  const again = metAgain(spacing);
  const nearness = 1 / (1 + spacing);
  out[at] = again;
  out[at + 1] = nearness;
  out[at + 2] = up * nearness;
  out[at + 3] = grip * nearness;
  const rolls = at + 4;
  for (let k = 0; k < ROLL_NUMBERS; k++) {
    const clean = out[world + CLEAN + k];
    out[rolls + k] = clean + again * (out[world + CLEAN + ROLL_NUMBERS + k] - clean);
  }
  const wander = rolls + ROLL_NUMBERS;
  const inOil = out[wander - 1];
  writeWander(out, wander, ball, Math.max(0, inOil - 2 * Math.PI));
  out[wander + 3] = metAgain((2 * Math.PI * out[wander + 3]) / out[world + BAND]);
}

/**
 * Share of the last ring's oil under the contact, averaged over a turn: the mean of (1 − (s cos φ)²)² where positive.
 *
 * @param s  spacing of rings over the width of the oil band
 */
function metAgain(s: number): number {
  const s2 = s * s;
  if (s <= 1) return 1 - s2 + 0.375 * s2 * s2;
  const b = asin(1 / s);
  const sin2 = sin(2 * b);
  const sin4 = sin(4 * b);
  return (2 / Math.PI) * (b - s2 * (b / 2 - sin2 / 4) + s2 * s2 * ((3 * b) / 8 - sin2 / 4 + sin4 / 32));
}

const BAND = WORLD_FEATURES.findIndex(({ name }) => name === 'oil band/R');
const CLEAN = WORLD_FEATURES.findIndex(({ name }) => name === 'plain hook, clean');

/** How many numbers are taken from each plain roll; the angle turned in oil is the last. */
const ROLL_NUMBERS = 6;

/** All features of one shot, in the order of `FEATURES`. */
export function writeFeatures(out: Float32Array, at: number, shot: ShotInputs): void {
  const { body, release, launch, surface, freshSurface } = shot;
  const world = at + BALL_FEATURES.length;
  writeBallFeatures(out, at, body, releaseFrame(release.pap_B));
  writeWorldFeatures(out, world, body.radius, release, launch, surface, freshSurface);
  writeJointFeatures(out, world + WORLD_FEATURES.length, at, world);
}

/** Trapezoidal mean over the feet from one to another. */
function mean(from: number, to: number, at: (foot: number) => number): number {
  let sum = (at(from) + at(to)) / 2;
  for (let foot = from + 1; foot < to; foot++) sum += at(foot);
  return sum / (to - from);
}

const frictionBeside = ({ x }: PlainRoll, surface: Surface, foot: number, aside: number): number =>
  frictionAt(surface, x[foot] + aside, foot * FOOT);
