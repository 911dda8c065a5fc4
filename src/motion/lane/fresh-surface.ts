/**
 * How oil that the ball picks up acts again under its contact. **An assumption of flarewise: no published model of
 * it is known.** Logged shots narrow its three numbers.
 *
 * Each turn lays an oil ring on the ball. Where the contact later passes over a ring, friction follows from the sum of the lane's film
 * and the film on the ring. A ball that flares brings clean cover to the lane instead; where its rings cross (the bow tie) it runs
 * on oil again.
 */
export interface FreshSurface {
  /** Distance from a ring's middle at which its oil has faded to nothing, m. */
  readonly bandWidth: number;
  /** Share of the lane's film that a passing contact keeps. */
  readonly carriedShare: number;
  /** Share of a ring's oil that a contact removes where it passes directly over it, 0 to 1. */
  readonly wornPerPass: number;
}
