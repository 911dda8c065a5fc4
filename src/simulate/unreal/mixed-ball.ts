import type { Layout } from '../../layout/layout.js';

/**
 * A ball that never is: drilled with two layouts at once. Rolled beside balls that are, it tells what a part of the drilled ball does.
 */
export interface MixedBall {
  /** The layout whose centre of mass it has. */
  readonly centreOf: Layout;
  /** The layout whose mass and inertia about the centre of mass it has. */
  readonly inertiaOf: Layout;
  /** Whether oil stays on the ball's own rings; without it flare does nothing. */
  readonly carriesOil: boolean;
  /** The ball's own finish, or the usual one. */
  readonly finish: 'own' | 'usual';
}
