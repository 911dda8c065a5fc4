/** The value between `low` and `high` that is nearest to `x`; NaN stays. */
export const clamp = (x: number, low: number, high: number): number => Math.max(low, Math.min(high, x));
