/*
 * Where each number lies in the arrays of `memory.ts`. Each file of the kernel copies the names it needs into constants of its own, whose
 * values the engine's compiler knows; names imported one by one would be looked up each time.
 */

/**
 * The state of a ball under way: x, y and vx, vy of Bo (m, m/s, in W); quaternion of R_WP (scalar first); w_WP_W (rad/s); the
 * angle turned so far, ∫|w| dt (rad). Rates also carry, past the state, the normal force and the lane's horizontal push on the
 * ball (N, in W).
 *
 * The angular velocity is kept in W, not in P: there it hardly changes during a turn, so a step of the integrator errs far
 * less than on components that swing round with the ball.
 */
export const STATE = {
  X: 0,
  Y: 1,
  VX: 2,
  VY: 3,
  QW: 4,
  QX: 5,
  QY: 6,
  QZ: 7,
  WX: 8,
  WY: 9,
  WZ: 10,
  PHASE: 11,
  STATE_SIZE: 12,
  NORMAL: 12,
  PUSH_X: 13,
  PUSH_Y: 14,
} as const;

/** The ball, and what pulls it down. */
export const BALL_SLOT = {
  MASS: 0,
  RADIUS: 1,
  /** Principal moments about Bcm, kg·m². */
  MOMENT_0: 2,
  MOMENT_1: 3,
  MOMENT_2: 4,
  /** From Bo to Bcm, in P, m. */
  OFFSET_0: 5,
  OFFSET_1: 6,
  OFFSET_2: 7,
  /** m/s² */
  GRAVITY: 8,
  /** Change of slip per change of the lane's push, about the same in all directions, 1/kg. */
  INVERSE_EFFECTIVE_MASS: 9,
  /** How fast slip ends at a friction of 1, at most, m/s². */
  SLIP_RATE: 10,
} as const;

/** The stretch of lane the ball is on: friction is OILED + DROP exp(film PER_SCALE). */
export const GROUND = {
  OILED: 0,
  DROP: 1,
  /** Minus one over the film's scale, 1/units. */
  PER_SCALE: 2,
  /** Friction where there is no film: the greatest, on an oiled lane. */
  DRY: 3,
  /** Film beyond which more of it changes friction by a negligible amount, units. */
  THICK: 7,
  /** Where the stretch ends, m. */
  END: 4,
  /** Where the shot ends, m. */
  LENGTH: 5,
  /** Beyond this on either side is gutter, m. */
  HALF_WIDTH: 6,
} as const;

/** Oil rings on the ball. */
export const RING = {
  /** One over the distance from a ring's middle at which its oil has faded to nothing, 1/m. */
  PER_BAND: 0,
  CARRIED_SHARE: 1,
  WORN_PER_PASS: 2,
  /** Places of a ring per angle turned, 1/rad. */
  PER_ANGLE: 3,
  /** Angle turned from one place to the next, rad. */
  PLACE_ANGLE: 4,
} as const;

/** The step under way. */
export const STEP = {
  /** Time at its start, s, and how long it is. */
  TIME: 0,
  H: 1,
  /** Longest step, and longest shot, s. */
  LONGEST: 2,
  LAST_TIME: 3,
  /** Friction along the step: MEAN + (2 share − 1) SLOPE. */
  MEAN: 4,
  SLOPE: 5,
  /** Friction with which rates are computed. */
  FRICTION: 6,
  /** At its start: friction found, friction that holding the ball takes, and the normal force while it holds, N. */
  FOUND: 7,
  NEEDED: 8,
  HELD_NORMAL: 9,
  /** Push per normal force that holding the ball takes at its start, in W, and the one given through the step. */
  NEEDED_X: 10,
  NEEDED_Y: 11,
  GIVEN_X: 12,
  GIVEN_Y: 13,
  /** Share of the step for which the lane holds a rolling ball. */
  HELD: 14,
  /** Slip at its start, m/s. */
  SLIP: 15,
  /** A share of the step. */
  SHARE: 16,
  /** One over the angle that the ball turns in it, 1/rad. */
  PER_TURNED: 17,
} as const;

/** Whole numbers and claims (0 or 1). */
export const FLAG = {
  IS_ROLLING: 0,
  HAS_ROLLED: 1,
  /** Whether the lane's push is given, not friction against the slip. */
  IS_GIVEN: 2,
  IS_LOST: 3,
  HAS_HOPPED: 4,
  /** Cautious steps in a row. */
  CAUTIOUS: 5,
  HAS_FILM: 6,
  HAS_RINGS: 7,
  /** Number of the stretch of lane. */
  STRETCH: 8,
  /** Number of parts into which the step is divided to look ahead. */
  PARTS: 9,
  /** Rings that may be met in this step. */
  NEAR: 10,
  /** Places of rings laid so far, and a turn. */
  PLACES: 11,
  PER_TURN: 12,
  /** Samples in the record. */
  RECORDED: 13,
  /** Whether samples hold all columns, or only those that reaction numbers need. */
  IS_FULL: 14,
  /** The latest place that was laid in oil. */
  LAST_OILED: 15,
} as const;

/** Where the ball touches the lane and about which axis it spins, both in P; the spin |w|, rad/s. */
export const CONTACT = { C0: 0, C1: 1, C2: 2, A0: 3, A1: 4, A2: 5, SPIN: 6 } as const;

/**
 * The ball's way through the step, before it is taken. Vectors of three numbers in P, that turn as the ball does the other way:
 * the contact, and its lag under the angular acceleration, each as parts along the axis, across it and aside from both.
 */
export const AHEAD = {
  ALONG: 0,
  ACROSS: 3,
  ASIDE: 6,
  LAG_ALONG: 9,
  LAG_ACROSS: 12,
  LAG_ASIDE: 15,
  /** The contact at mid-step. */
  MIDDLE: 18,
  /** Half the angle that the ball turns, rad. */
  REACH: 21,
} as const;

/** The track that the ball rolls in a step; see `ring-track.ts`. Vectors of three numbers in P. */
export const TRACK = {
  /** Of Bo, m in W. */
  ON_X: 0,
  ON_Y: 1,
  CONTACT_P: 2,
  /** ω, rad/s. */
  SPIN_P: 5,
  /** The angle turned, rad. */
  TURNED: 8,
  TRACK_SIZE: 9,
} as const;

/**
 * How one advance ended: with its time used up, or before that when the ball began to roll, at a jump of
 * friction, at the end of the lane, or with the ball lost (it would hop, or a number is not finite).
 */
export const ADVANCE = { WENT: 0, ROLLS: 1, CROSSED: 2, ARRIVED: 3, LOST: 4 } as const;
