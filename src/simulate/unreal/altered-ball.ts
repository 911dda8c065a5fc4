import type { Layout } from '../../layout/layout.js';
import { symmetricEigen } from '../../math/eigen3.js';
import { addMat, type Mat3, outer, scaleMat, ZERO_MAT } from '../../math/mat3.js';
import type { RollingBody } from '../../motion/shot/body.js';

/** A number of a drilled ball's inertia that can be changed while the other two and the axes stay. */
export type AlteredNumber = 'rg' | 'differential' | 'intermediateDifferential';

/**
 * A virtual ball: a drilled ball with another finish, or with one number of its inertia changed. Compared with the ball itself, it
 * shows what that change alone does.
 */
export interface AlteredBall {
  readonly layout: Layout;
  /** Grit of its finish; the ball's own when left out. */
  readonly grit?: number | undefined;
  /** One number of its inertia, m; its own when left out. */
  readonly inertia?: { readonly number: AlteredNumber; readonly value: number } | undefined;
}

/** A ball with one number of its inertia changed to a value (m); its axes and the other two numbers stay. */
export function withInertiaNumber(body: RollingBody, number: AlteredNumber, value: number): RollingBody {
  const { values, axes } = symmetricEigen(body.I_Bcm_B);
  const [low, middle, high] = values.map((each) => Math.sqrt(each / body.mass));
  const radii: Readonly<Record<AlteredNumber, readonly [number, number, number]>> = {
    rg: [value, value + middle - low, value + high - low],
    differential: [low, Math.max(low, low + value - (high - middle)), low + value],
    intermediateDifferential: [low, Math.max(low, high - value), high],
  };
  const I_Bcm_B = radii[number].reduce<Mat3>(
    (sum, rg, i) => addMat(sum, scaleMat(body.mass * rg ** 2, outer(axes[i], axes[i]))),
    ZERO_MAT,
  );
  return { ...body, I_Bcm_B };
}
