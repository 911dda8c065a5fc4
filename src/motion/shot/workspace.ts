import { emptySamples, LEAN_COLUMNS, type Samples, widthOf } from './samples.js';

/**
 * Columns that a caller lends for the samples of its shots. They grow as needed, so once they are wide enough a shot allocates
 * hardly anything. The samples of a shot are good until the next is rolled with the same workspace.
 */
export class Workspace {
  private columns: Samples;
  private count = 0;

  /** @param names  columns to keep; those that reaction numbers need when left out */
  constructor(private readonly names = LEAN_COLUMNS) {
    this.columns = emptySamples(0, names);
  }

  /** Forgets the samples of the shot before. */
  clear(): void {
    this.count = 0;
  }

  /** Adds the first this many samples of columns of the same names. */
  take(from: Samples, count: number): void {
    const wanted = this.count + count;
    const room = this.columns.time.length;
    if (wanted > room) this.grow(room > 0 ? 2 * wanted : wanted);
    for (const name of this.names) {
      const width = widthOf(name);
      this.columns[name].set(from[name].subarray(0, width * count), width * this.count);
    }
    this.count = wanted;
  }

  /** The samples taken, in the lent columns. */
  samples(): Samples {
    const taken: { -readonly [K in keyof Samples]: Float64Array } = { ...this.columns };
    for (const name of this.names) taken[name] = this.columns[name].subarray(0, widthOf(name) * this.count);
    return taken;
  }

  private grow(room: number): void {
    const { columns } = this;
    this.columns = emptySamples(room, this.names);
    for (const name of this.names) this.columns[name].set(columns[name]);
  }
}
