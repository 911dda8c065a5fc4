import { X, Y } from './state.js';
import type { Surface } from './surface.js';

/** How near a jump of friction its near side is still read, m. */
const NEAR_SIDE = 1e-9;

/** Samples nearer in time than this, s, tell nothing of a slope. */
const SHORT_GAP = 1e-5;

const UNREAD = -1;

/**
 * What the ball finds under it: the lane's film, the oil it carries there itself, and the friction they make.
 *
 * Knows the stretch of lane between two jumps of friction that the ball is on, and reads nothing beyond it, so
 * that no stage of a step sees past a jump.
 */
export class Contact {
  private nearEnd = Number.NEGATIVE_INFINITY;
  private farEnd = Number.POSITIVE_INFINITY;
  private carried = 0;
  private carriedSlope = 0;
  private carriedTime = 0;
  private startTime = 0;
  private startFilm = UNREAD;
  private readAfter = UNREAD;
  private friction = 0;

  constructor(private readonly surface: Surface) {}

  /** Confines reading to the lane from `near` to just short of `far`, m. */
  confine(near: number, far: number): void {
    this.nearEnd = near;
    this.farEnd = far - NEAR_SIDE;
    this.startFilm = UNREAD;
  }

  /** Steps begin at a new time, s: what was read before is void. */
  begin(time: number): void {
    this.startTime = time;
    this.startFilm = UNREAD;
    this.readAfter = UNREAD;
  }

  /** Another try at the same step, of another length. */
  retry(): void {
    this.readAfter = UNREAD;
  }

  /** Film of the lane where a step starts, units of oil. */
  filmAtStart(state: Float64Array): number {
    if (this.startFilm < 0) this.startFilm = this.filmAt(state[X], state[Y]);
    return this.startFilm;
  }

  /** Takes note of the film carried on the ball now; within the coming step it is taken to go on linearly. */
  carry(film: number): void {
    const gap = this.startTime - this.carriedTime;
    if (gap > SHORT_GAP) this.carriedSlope = (film - this.carried) / gap;
    this.carried = film;
    this.carriedTime = this.startTime;
    this.readAfter = UNREAD;
  }

  /**
   * Friction under a state reached `after` seconds into the step. Read once for each time: the two middle
   * stages of a Runge–Kutta step lie h² a/4, a few micrometres, apart.
   */
  frictionAt(state: Float64Array, after: number): number {
    if (after === this.readAfter) return this.friction;
    const film = after === 0 ? this.filmAtStart(state) : this.filmAt(state[X], state[Y]);
    const carried = this.carried + this.carriedSlope * (this.startTime - this.carriedTime + after);
    this.readAfter = after;
    this.friction = this.surface.frictionUnder(film + Math.max(0, carried));
    return this.friction;
  }

  private filmAt(x: number, y: number): number {
    return this.surface.filmAt(x, Math.min(this.farEnd, Math.max(this.nearEnd, y)));
  }
}
