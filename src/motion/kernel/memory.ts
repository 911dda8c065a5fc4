import type { Surface } from '../lane/surface.js';

/** Most places at which a step is looked at; two in each part. */
export const MOST_PLACES = 128;

/** Places of rings remembered, a power of two: 170 turns of 96. The oldest are overwritten. */
export const MOST_RING_PLACES = 2 ** 14;

/** Most rings that a contact can meet: with the fewest places a turn that are allowed. */
export const MOST_RINGS = 2 ** 11;

/** Samples that the record has room for until a keeper takes them. */
export const RECORD_ROOM = 1024;

/** Least size of an array: V8 would keep smaller ones among its objects, where they move and cannot be addressed directly. */
const LEAST_SIZE = 16;

const floats = (size: number): Float64Array => new Float64Array(Math.max(LEAST_SIZE, size));

/**
 * The memory of the shot kernel: arrays that each of its files aliases at its top.
 *
 * This is the one place where flarewise keeps state in a module. A shot runs to its end before the next begins, each shot begins by
 * writing everything that it reads, and workers have memory of their own, so the state cannot be seen from outside. It makes shots much
 * faster: arrays that are constants of a module are addressed directly, and no number is boxed to be passed from one function to another.
 * For the same reason the kernel's functions take and return no fractional numbers, but read and write them here.
 */
export const memory = {
  /** The state at the start of the step, at its end, and one in between that rates and contacts are asked for at. */
  here: floats(16),
  next: floats(16),
  trial: floats(16),
  /** Rates at `trial`; and of the last step at its start, its middle and its end. */
  rates: floats(16),
  startRates: floats(16),
  middleRates: floats(16),
  endRates: floats(16),
  /** Sum of the rates of both middle stages of a step. */
  middleSum: floats(16),
  /** Orientation of `trial`, row by row. */
  R_WP: floats(9),
  ball: floats(16),
  R_BP: floats(9),
  ground: floats(8),
  ring: floats(8),
  step: floats(24),
  flags: new Int32Array(24),
  contact: floats(8),
  ahead: floats(24),
  /** The track at a place, at both ends of the step with rates times H, and its cubics: four numbers for each of them. */
  track: floats(16),
  trackStart: floats(16),
  trackEnd: floats(16),
  trackStartRates: floats(16),
  trackEndRates: floats(16),
  trackCubic: floats(40),
  /** What lies at the places looked at: x, y (m, W), contact in P, film, oil carried, clean share, friction. */
  placeX: floats(MOST_PLACES),
  placeY: floats(MOST_PLACES),
  placeC: floats(3 * MOST_PLACES),
  placeFilm: floats(MOST_PLACES),
  placeCarried: floats(MOST_PLACES),
  placeFresh: floats(MOST_PLACES),
  placeFriction: floats(MOST_PLACES),
  /** Angle turned there, in places of a ring: the whole ones and the rest. */
  placeRing: new Int32Array(MOST_PLACES),
  placeShare: floats(MOST_PLACES),
  /** Rings: plane of each place (four numbers, in band widths) and its oil. */
  ringPlane: floats(4 * MOST_RING_PLACES),
  ringOil: floats(MOST_RING_PLACES),
  /**
   * Of each ring, counted back from now, at the place it was passed at last: how far off it was, in band widths, the oil
   * before, and the contact's own place.
   */
  ringOffset: floats(MOST_RINGS),
  ringOilBefore: floats(MOST_RINGS),
  ringPassed: new Int32Array(MOST_RINGS),
  ringNear: new Int32Array(MOST_RINGS),
  /** Samples, column by column; see `Samples`. */
  record: {
    time: floats(RECORD_ROOM),
    x: floats(RECORD_ROOM),
    y: floats(RECORD_ROOM),
    vx: floats(RECORD_ROOM),
    vy: floats(RECORD_ROOM),
    spin: floats(RECORD_ROOM),
    phase: floats(RECORD_ROOM),
    film: floats(RECORD_ROOM),
    contact_B: floats(3 * RECORD_ROOM),
    slip: floats(RECORD_ROOM),
    carried: floats(RECORD_ROOM),
    fresh: floats(RECORD_ROOM),
    axis_B: floats(3 * RECORD_ROOM),
  },
};

/** What callers lend for the length of a shot. */
export const lent: { surface: Surface; film: Float64Array } = {
  surface: { film: null, filmEnd: 0, stretches: [] },
  film: floats(0),
};
