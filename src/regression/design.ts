import { BOARD, LANE_LENGTH, LANE_WIDTH } from '../base/constants.js';
import { DEGREE, FOOT, from, INCH, MM, MPH } from '../base/units.js';
import { atan2 } from '../math/atan.js';
import { diagonal, fromColumns, rotateTensor } from '../math/mat3.js';
import type { OilZone } from '../math/oil-zones.js';
import { cos, sin } from '../math/sin-cos.js';
import { addScaled, cross, rotateAbout, scale, type Vec3 } from '../math/vec3.js';
import { boardToX } from '../motion/lane/boards.js';
import type { FreshSurface } from '../motion/lane/fresh-surface.js';
import { type OilPattern, oiledLane } from '../motion/lane/oil.js';
import { type Surface, surfaceOf } from '../motion/lane/surface.js';
import {
  CARRY_LENGTH,
  EDGE_LENGTH,
  EDGE_WIDTH,
  TRACK_HALF_WIDTH,
  TRACK_PINS_BOARD,
} from '../motion/lane/usual-oil.js';
import type { Traffic } from '../motion/lane/wear.js';
import type { RollingBody } from '../motion/shot/body.js';
import type { Launch, Release } from '../motion/shot/release.js';
import { middlingRoll } from './features.js';
import type { ShotInputs } from './inputs.js';
import { FEET } from './plain-roll.js';

/**
 * The axes of the design, as least, usual and greatest values: they span real bowlers, drilled balls, lanes and covers. Where a
 * usual value is given, the distribution is triangular with its peak there; otherwise it is uniform. Trade ranges (common
 * practice, no source), or limits of the sport where there are any, with margins for the scatter of shots.
 */
export const DESIGN = {
  speedMph: [10, 16.5, 21.5],
  /** Surface speed R ω over ball speed: 0.45 for 310 rpm at 17.5 mph. */
  spinRatio: [0.1, 0.44, 0.8],
  axisTiltDeg: [0, 13, 52],
  axisRotationDeg: [0, 52, 94],
  circumferenceIn: [26.704, 27.002],
  /** Low RG of the drilled ball, about its centre of mass. */
  lowRgIn: [2.42, 2.54, 2.77],
  differentialIn: [0.006, 0.042, 0.067],
  /** Intermediate differential over differential. */
  intermediateShare: [0.02, 0.2, 0.7],
  /** From the PAP to the low-RG axis, and its direction from up the VAL toward the grip. */
  lowAxisDeg: [15, 90],
  lowAxisTurnDeg: [5, 175],
  middleAxisTurnDeg: [0, 180],
  centrePapMm: [-0.7, 0.5, 1.85],
  centreUpMm: [-1.85, -0.3, 1.25],
  centreGripMm: [-2.1, -0.5, 1.5],
  frictionOiled: [0.009, 0.024, 0.055],
  frictionDry: [0.125, 0.2, 0.32],
  filmScale: [1.4, 3.2, 7],
  bandWidthIn: [0.14, 0.41],
  carriedShare: [0.04, 0.31],
  wornPerPass: [0, 0.72],
  laydownBoard: [7, 34],
  /** Board at the pins at which a plain ball is aimed. Most real balls hook more (median 2 boards), so the usual value is short of the pocket. */
  pinsBoard: [-4, 12, 27],
} as const satisfies Axes;

/** The same for oil. Each lane serves `SHOTS_PER_LANE` shots in a row, since laying its oil takes longer than rolling a shot. */
export const LANE_DESIGN = {
  patternFt: [27, 40, 49],
  innerUnits: [12, 46, 62],
  innerEdgeBoard: [4, 8, 14],
  innerTaper: [0.15, 0.3, 0.5],
  innerShortFt: [0.5, 2, 4],
  coreUnits: [0, 12, 18],
  coreInsetBoards: [2, 4],
  coreShortFt: [1, 3, 8],
  outerShare: [0.1, 0.3, 0.9],
  outerTaper: [0.15, 0.3, 0.5],
  /** Oil found past the pattern's end; negative values mean none. */
  carriedDownUnits: [-6, 5],
  carriedFt: [3, 9],
  carriedEdgeBoard: [7, 12],
  /** Share of the film that games have taken from the middle of their track; negative values mean a fresh lane. */
  takenShare: [-0.9, 0.92],
  carriedOfTaken: [0, 0.011],
  /** Side of the track: the bowler's own where positive, the other where negative. */
  trackSide: [-0.3, 1],
  trackLaydownBoard: [17, 23],
  trackEndBoard: [3, 15],
} as const satisfies Axes;

type Range = readonly [least: number, most: number];
type Triangle = readonly [least: number, usual: number, most: number];
type Axes = Record<string, Range | Triangle>;
type Point<D extends Axes> = Record<keyof D, number>;

export const SHOTS_PER_LANE = 16;

/**
 * Point `index` of a low-discrepancy sequence over some axes: index·√prime + offset, modulo 1.
 *
 * Square roots of the primes are independent over the rationals, so every projection is evenly filled.
 * Source: Richtmyer, 1951; Niederreiter, Random Number Generation and Quasi-Monte Carlo Methods, 1992, ch. 3
 * (from memory). The seed moves the whole sequence.
 */
function designPoint<D extends Axes>(axes: D, seed: number, index: number): Point<D> {
  const names = Object.keys(axes) as (keyof D)[];
  const roots = primes(2 * names.length).map(Math.sqrt);
  const entries = names.map((name, i) => {
    const u = (index + 1) * roots[i] + seed * roots[names.length + i];
    return [name, valueAt(axes[name], u % 1)];
  });
  return Object.fromEntries(entries);
}

/** Quantile `u` of an axis. */
function valueAt(axis: Range | Triangle, u: number): number {
  if (axis.length === 2) return axis[0] + (axis[1] - axis[0]) * u;
  const [least, usual, most] = axis;
  const below = (usual - least) / (most - least);
  return u < below
    ? least + Math.sqrt(u * (most - least) * (usual - least))
    : most - Math.sqrt((1 - u) * (most - least) * (most - usual));
}

/** The first primes. */
function primes(count: number): number[] {
  const found: number[] = [];
  for (let n = 2; found.length < count; n++) if (found.every((p) => n % p !== 0)) found.push(n);
  return found;
}

/** The shots of one lane of the design. */
export function designShots(seed: number, lane: number): readonly ShotInputs[] {
  const point = designPoint(LANE_DESIGN, seed, lane);
  const rates = { burnPerGame: point.takenShare, carriedDown: point.carriedOfTaken };
  const oil = oiledLane(designPattern(point), rates);
  return Array.from({ length: SHOTS_PER_LANE }, (_, i) =>
    designShot(designPoint(DESIGN, seed, SHOTS_PER_LANE * lane + i), oil),
  );
}

function designShot(point: Point<typeof DESIGN>, oil: Surface): ShotInputs {
  const radius = from(point.circumferenceIn, INCH) / (2 * Math.PI);
  const speed = from(point.speedMph, MPH);
  const release: Release = {
    speed,
    spin: (point.spinRatio * speed) / radius,
    axisTilt: from(point.axisTiltDeg, DEGREE),
    axisRotation: from(point.axisRotationDeg, DEGREE),
    pap_B: PAP,
  };
  const surface = surfaceOf(oil.film, {
    oiled: point.frictionOiled,
    dry: point.frictionDry,
    filmScale: point.filmScale,
  });
  const freshSurface: FreshSurface = {
    bandWidth: from(point.bandWidthIn, INCH),
    carriedShare: point.carriedShare,
    wornPerPass: point.wornPerPass,
  };
  const laydownX = boardToX(point.laydownBoard);
  const toward = boardToX(point.pinsBoard);
  const launch = aimPlain(radius, release, laydownX, toward, surface, freshSurface);
  return { body: designBody(point, radius), release, launch, surface, freshSurface };
}

/** The ball's frame is the frame of the release: PAP along x, up the VAL along y, grip along z. */
const PAP: Vec3 = [1, 0, 0];
const UP: Vec3 = [0, 1, 0];
const GRIP: Vec3 = [0, 0, 1];

/** A ball of mass 1 kg, since mass cancels from the motion, with the point's radii of gyration and axes of inertia. */
function designBody(point: Point<typeof DESIGN>, radius: number): RollingBody {
  const low = point.lowRgIn;
  const high = low + point.differentialIn;
  const middle = high - point.intermediateShare * point.differentialIn;
  const turn = from(point.lowAxisTurnDeg, DEGREE);
  const arc = from(point.lowAxisDeg, DEGREE);
  const away = addScaled(scale(cos(turn), UP), sin(turn), GRIP);
  const low_B = addScaled(scale(cos(arc), PAP), sin(arc), away);
  const middle_B = rotateAbout(cross(PAP, away), low_B, from(point.middleAxisTurnDeg, DEGREE));
  const axes = fromColumns(low_B, middle_B, cross(low_B, middle_B));
  const square = (rgIn: number): number => from(rgIn, INCH) ** 2;
  return {
    mass: 1,
    radius,
    p_BoBcm_B: [from(point.centrePapMm, MM), from(point.centreUpMm, MM), from(point.centreGripMm, MM)],
    I_Bcm_B: rotateTensor(axes, diagonal([square(low), square(middle), square(high)])),
  };
}

/** An oil pattern of up to four layers: outside, inside, a thicker core of it, and what was carried down. */
function designPattern(point: Point<typeof LANE_DESIGN>): OilPattern {
  const end = from(point.patternFt, FOOT);
  const zone = (edge: number, fromY: number, toY: number, film: number, taper: number): OilZone => ({
    fromY,
    toY,
    fromX: -LANE_WIDTH / 2 + edge * BOARD,
    toX: LANE_WIDTH / 2 - edge * BOARD,
    film,
    filmEnd: film * taper,
  });
  const innerEnd = end - from(point.innerShortFt, FOOT);
  const coreEnd = innerEnd - from(point.coreShortFt, FOOT);
  const coreEdge = point.innerEdgeBoard + point.coreInsetBoards;
  const inner = point.innerUnits;
  const zones = [
    zone(0, 0, end, point.outerShare * inner, point.outerTaper),
    zone(point.innerEdgeBoard, 0, innerEnd, inner, point.innerTaper),
    zone(coreEdge, 0, coreEnd, inner + point.coreUnits, Math.max(0.45, point.innerTaper)),
  ];
  if (point.carriedDownUnits > 0) {
    const past = end + from(point.carriedFt, FOOT);
    zones.push(zone(point.carriedEdgeBoard, end - 2 * FOOT, past, point.carriedDownUnits, 0.3));
  }
  return {
    zones,
    ...MIDDLE_FRICTION,
    edgeLength: EDGE_LENGTH,
    edgeWidth: EDGE_WIDTH,
    ...(point.takenShare > 0 ? { traffic: designTraffic(point, end) } : {}),
  };
}

/** One game that takes as much oil as many, along a usual track. */
function designTraffic(point: Point<typeof LANE_DESIGN>, endY: number): Traffic {
  const side = Math.sign(point.trackSide);
  return {
    games: 1,
    track: [
      { y: 0, x: side * boardToX(point.trackLaydownBoard) },
      { y: endY, x: side * boardToX(point.trackEndBoard) },
      { y: LANE_LENGTH, x: side * boardToX(TRACK_PINS_BOARD) },
    ],
    halfWidth: TRACK_HALF_WIDTH,
    endY,
    carryLength: CARRY_LENGTH,
  };
}

/** Replaced shot by shot. */
const MIDDLE_FRICTION = { frictionOiled: 0.024, frictionDry: 0.2, filmScale: 3.2 };

const AIMING_ROUNDS = 4;

/** The launch with which a plain ball runs from one lateral position to another at the pins; real balls then end around that. */
function aimPlain(
  radius: number,
  release: Release,
  x: number,
  pinsX: number,
  surface: Surface,
  freshSurface: FreshSurface,
): Launch {
  let angle = atan2(pinsX - x, LANE_LENGTH);
  for (let round = 0; round < AIMING_ROUNDS; round++) {
    const plain = middlingRoll(radius, release, { x, angle }, surface, freshSurface);
    angle += atan2(pinsX - plain.x[FEET], LANE_LENGTH);
  }
  return { x, angle };
}
