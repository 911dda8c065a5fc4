import type { Layout } from '../../layout/layout.js';

/**
 * A virtual ball that mixes two layouts. Compared with real balls, it separates the effect of one part of the drilled ball.
 */
export interface MixedBall {
  /** The layout whose centre of mass it has. */
  readonly centreOf: Layout;
  /** The layout whose mass and inertia about the centre of mass it has. */
  readonly inertiaOf: Layout;
  /** Whether oil stays on the ball's own rings; without it flare does nothing. */
  readonly carriesOil: boolean;
  /** Grit of its finish; the ball's own when left out. */
  readonly grit?: number;
}
