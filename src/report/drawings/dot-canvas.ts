/** A drawing in a terminal, finer than its letters: each cell holds the 2 x 4 dots of a Braille character. */
export class DotCanvas {
  private readonly dots: Uint8Array;
  private readonly layers: Int8Array;

  constructor(
    readonly columns: number,
    readonly rows: number,
  ) {
    this.dots = new Uint8Array(columns * rows);
    this.layers = new Int8Array(columns * rows).fill(-1);
  }

  /**
   * Sets a dot; what lies outside is left out.
   *
   * @param x, y   in cells from the top left corner
   * @param layer  the highest one of a cell's dots is what `layerAt` gives
   */
  set(x: number, y: number, layer: number): void {
    const [column, row] = [Math.floor(x), Math.floor(y)];
    if (column < 0 || column >= this.columns || row < 0 || row >= this.rows) return;
    const i = row * this.columns + column;
    this.dots[i] |= DOT_BITS[Math.floor((y - row) * 4)][Math.floor((x - column) * 2)];
    this.layers[i] = Math.max(this.layers[i], layer);
  }

  /** Highest layer that has a dot in a cell; −1 for none. */
  layerAt(column: number, row: number): number {
    return this.layers[row * this.columns + column];
  }

  /** The Braille sign of a cell's dots. */
  signAt(column: number, row: number): string {
    return String.fromCodePoint(BRAILLE + this.dots[row * this.columns + column]);
  }
}

/** Where Unicode's Braille patterns begin; the low eight bits are the dots. */
const BRAILLE = 0x2800;

/** Bit of each dot by row and column (The Unicode Standard, Braille Patterns). */
const DOT_BITS = [
  [0x01, 0x08],
  [0x02, 0x10],
  [0x04, 0x20],
  [0x40, 0x80],
] as const;
