/** What the ball rolls on. Positions in m (W), film in units of oil. */
export interface Surface {
  /** Oil film on the lane. */
  readonly filmAt: (x: number, y: number) => number;
  /** Kinetic friction under a film: the lane's own and what the ball carries there. Falls as the film grows. */
  readonly frictionUnder: (film: number) => number;
  /** Distances where friction jumps, ascending: a step of the integrator ends on each. */
  readonly breaks: readonly number[];
}

/** A dry lane of one friction everywhere: the case with a closed form. */
export const uniformLane = (friction: number): Surface => ({
  filmAt: () => 0,
  frictionUnder: () => friction,
  breaks: [],
});

/** Two frictions that meet at a line across the lane: again a closed form. The film is a mere label here. */
export const twoZoneLane = (first: number, second: number, atY: number): Surface => ({
  filmAt: (_, y) => (y < atY ? 1 : 0),
  frictionUnder: (film) => (film > 0.5 ? first : second),
  breaks: [atY],
});
