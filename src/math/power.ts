import { exp } from './exp.js';
import { ln } from './ln.js';

/**
 * xʸ for x of zero and up.
 *
 * `x ** y` differs in its last digit between versions of the language's engine, squares alone excepted; this does not, as the engine's
 * logarithm is the same in all of them. It errs by about |y ln x| units in the last place, which is little where that is near 1.
 * A whole power is better written as a product.
 */
export const power = (x: number, y: number): number => (y === 0 ? 1 : exp(y * ln(x)));

/** x³, the same in every version of the language's engine. */
export const cube = (x: number): number => x * x * x;

/** x⁵, the same in every version of the language's engine. */
export const fifth = (x: number): number => x * x * x * x * x;
