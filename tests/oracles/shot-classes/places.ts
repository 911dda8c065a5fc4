/** Points of a ball's way in order of time, and what it meets there: columns with one entry a point, used again and again. */
export class Places {
  count = 0;
  /** Place of the contact on the lane, m. */
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Angle turned, rad. */
  readonly phase: Float64Array;
  /** Unit vector from Bo to the contact, expressed in P; three numbers a point. */
  readonly contact_P: Float64Array;
  /** Film on the lane and on the ball, units of oil. */
  readonly film: Float64Array;
  readonly carried: Float64Array;
  /** Share of the contact on clean cover. */
  readonly fresh: Float64Array;

  constructor(readonly room: number) {
    this.x = new Float64Array(room);
    this.y = new Float64Array(room);
    this.phase = new Float64Array(room);
    this.contact_P = new Float64Array(3 * room);
    this.film = new Float64Array(room);
    this.carried = new Float64Array(room);
    this.fresh = new Float64Array(room).fill(1);
  }
}
