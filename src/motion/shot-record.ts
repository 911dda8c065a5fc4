import type { PrincipalBody } from './principal-body.js';
import { PHASE, slipSpeed, VX, VY, WX, WY, WZ, writeRotation, X, Y } from './state.js';

const COLUMNS = [
  ...(['time', 'x', 'y', 'vx', 'vy', 'spin', 'slip', 'phase', 'film', 'carried', 'fresh'] as const),
  ...(['contact_B', 'axis_B'] as const),
] as const;

/** The samples of a shot, column by column, in SI. `contact_B` and `axis_B` hold three numbers a sample. */
export type Samples = { readonly [K in (typeof COLUMNS)[number]]: Float64Array };

/** Growing columns of samples. Room is made once for the expected length of a shot, and doubled if it runs long. */
export class ShotRecord {
  count = 0;
  columns: Samples;
  private capacity: number;
  private readonly R_WP = new Float64Array(9);

  constructor(
    private readonly body: PrincipalBody,
    expected: number,
  ) {
    this.capacity = expected;
    this.columns = emptySamples(expected);
  }

  /** Adds the ball's state at a time; friction's own numbers are filled in by whoever knows them. */
  add(time: number, state: Float64Array): void {
    if (this.count === this.capacity) this.grow();
    const { R_WP, columns } = this;
    const { R_BP, radius } = this.body;
    const i = this.count++;
    writeRotation(R_WP, state);
    const wx = state[WX];
    const wy = state[WY];
    const wz = state[WZ];
    const spin = Math.sqrt(wx * wx + wy * wy + wz * wz);
    columns.time[i] = time;
    columns.x[i] = state[X];
    columns.y[i] = state[Y];
    columns.vx[i] = state[VX];
    columns.vy[i] = state[VY];
    columns.spin[i] = spin;
    columns.slip[i] = slipSpeed(state, radius);
    columns.phase[i] = state[PHASE];
    const k = spin > 0 ? 1 / spin : 0;
    const a0 = k * (R_WP[0] * wx + R_WP[3] * wy + R_WP[6] * wz);
    const a1 = k * (R_WP[1] * wx + R_WP[4] * wy + R_WP[7] * wz);
    const a2 = k * (R_WP[2] * wx + R_WP[5] * wy + R_WP[8] * wz);
    for (let j = 0; j < 3; j++) {
      const row = R_BP[j];
      columns.contact_B[3 * i + j] = -(row[0] * R_WP[6] + row[1] * R_WP[7] + row[2] * R_WP[8]);
      columns.axis_B[3 * i + j] = row[0] * a0 + row[1] * a1 + row[2] * a2;
    }
  }

  /** The columns cut to the samples taken (views, no copy). */
  trimmed(): Samples {
    return mapColumns((name, width) => this.columns[name].subarray(0, width * this.count));
  }

  private grow(): void {
    const { columns } = this;
    this.capacity *= 2;
    this.columns = emptySamples(this.capacity);
    for (const name of COLUMNS) this.columns[name].set(columns[name]);
  }
}

/** Columns with room for a number of samples, all zero. */
export const emptySamples = (room = 0): Samples => mapColumns((_, width) => new Float64Array(width * room));

const mapColumns = (column: (name: keyof Samples, width: number) => Float64Array): Samples =>
  Object.fromEntries(COLUMNS.map((name) => [name, column(name, name.endsWith('_B') ? 3 : 1)])) as Samples;
