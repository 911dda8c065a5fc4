import { exp } from './exp.js';
import { ln } from './ln.js';

/**
 * xʸ for x ≥ 0; NaN for x < 0.
 *
 * `x ** y` differs in its last digit between versions of the language's engine, except for squares. This does not, since `exp` and `ln`
 * are our own. Its error is about 1 + |y ln x| units in the last place. A whole power is better written as a product.
 */
export const power = (x: number, y: number): number => (y === 0 ? 1 : exp(y * ln(x)));

/** x³, the same in every version of the language's engine. */
export const cube = (x: number): number => x * x * x;

/** x⁵, the same in every version of the language's engine. */
export const fifth = (x: number): number => x * x * x * x * x;
