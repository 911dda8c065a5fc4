/**
 * How oil that the ball picks up comes back to the lane. **An assumption of flarewise: no published model of
 * it is known.** Logged shots could fit its three numbers.
 *
 * Each turn lays an oil ring on the ball. Where the contact later passes over a ring it meets the film that
 * ring carries, and friction is what the lane's film and that film together allow. A ball that flares brings
 * clean cover instead; where its rings cross (the bow tie) it runs on oil again.
 */
export interface FreshSurface {
  /** Distance from a ring's middle at which its oil has faded to nothing, m. */
  readonly bandWidth: number;
  /** Share of the lane's film that a passing contact keeps. */
  readonly carriedShare: number;
  /** Share of a ring's oil that a contact takes off when it passes right over it: 0 never wears a ring off. */
  readonly wornPerPass: number;
}
