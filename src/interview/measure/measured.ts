/** A number found by measuring, and how far off it may be (one standard deviation), in the same unit. */
export interface Measured {
  readonly value: number;
  readonly deviation: number;
}
