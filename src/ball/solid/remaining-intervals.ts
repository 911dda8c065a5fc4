/** Moments along one ray: ∫dm (kg), ∫t dm (kg·m), ∫t² dm (kg·m²). */
export interface LineMoments {
  m0: number;
  m1: number;
  m2: number;
}

/**
 * The parts of a stretch of a ray that no solid has claimed yet, as solids claim theirs in turn, the uppermost first.
 *
 * Allocates nothing once it has grown to the greatest number of pieces.
 */
export class RemainingIntervals {
  private readonly from: number[] = [];
  private readonly to: number[] = [];
  private pieces = 0;

  /** Starts again with the whole stretch s ≤ t ≤ e. */
  begin(s: number, e: number): void {
    this.from[0] = s;
    this.to[0] = e;
    this.pieces = e > s ? 1 : 0;
  }

  /** Claims enter ≤ t ≤ leave: adds matter of `lineDensity` (kg/m) to `sum` wherever that was still unclaimed. */
  claim(enter: number, leave: number, lineDensity: number, sum: LineMoments): void {
    for (let i = this.pieces - 1; i >= 0; i--) {
      const s = this.from[i];
      const e = this.to[i];
      const low = Math.max(enter, s);
      const high = Math.min(leave, e);
      if (!(high > low)) continue;
      sum.m0 += lineDensity * (high - low);
      sum.m1 += (lineDensity * (high * high - low * low)) / 2;
      sum.m2 += (lineDensity * (high * high * high - low * low * low)) / 3;
      this.remove(i);
      if (low > s) this.put(s, low);
      if (high < e) this.put(high, e);
    }
  }

  private remove(i: number): void {
    this.pieces -= 1;
    this.from[i] = this.from[this.pieces];
    this.to[i] = this.to[this.pieces];
  }

  private put(s: number, e: number): void {
    this.from[this.pieces] = s;
    this.to[this.pieces] = e;
    this.pieces += 1;
  }
}
