import type { Mat3 } from '../../../src/math/mat3.js';
import type { Contact } from './contact.js';
import type { ContactKinematics } from './contact-kinematics.js';
import { PHASE, slipX, slipY, VX, VY, X, Y } from './state.js';

const COLUMNS = [
  ...(['time', 'x', 'y', 'vx', 'vy', 'spin', 'slip', 'phase', 'film', 'carried', 'fresh'] as const),
  ...(['contact_B', 'axis_B'] as const),
] as const;

/** The samples of a shot, column by column, in SI. `contact_B` and `axis_B` hold three numbers a sample. */
export type Samples = { readonly [K in (typeof COLUMNS)[number]]: Float64Array };

/** Samples that there is room for at first: those of a shot with few turns. */
const ROOM = 1024;

/** Columns of samples that grow as needed and serve one shot after another. */
export class ShotRecord {
  count = 0;
  columns = emptySamples(ROOM);

  /** Forgets the samples of the shot before. */
  clear(): void {
    this.count = 0;
  }

  /**
   * Adds a sample.
   *
   * @param contact  that has just met the lane in this state
   * @param radius   of the ball, m
   */
  add(
    time: number,
    state: Float64Array,
    { contact_P, axis_P, spin }: ContactKinematics,
    { here }: Contact,
    R_BP: Mat3,
    radius: number,
  ): void {
    if (this.count === this.columns.time.length) this.grow();
    const { columns } = this;
    const i = this.count++;
    const sX = slipX(state, radius);
    const sY = slipY(state, radius);
    columns.time[i] = time;
    columns.x[i] = state[X];
    columns.y[i] = state[Y];
    columns.vx[i] = state[VX];
    columns.vy[i] = state[VY];
    columns.spin[i] = spin;
    columns.slip[i] = Math.sqrt(sX * sX + sY * sY);
    columns.phase[i] = state[PHASE];
    columns.film[i] = here.film[0];
    columns.carried[i] = here.carried[0];
    columns.fresh[i] = here.fresh[0];
    for (let j = 0; j < 3; j++) {
      const row = R_BP[j];
      columns.contact_B[3 * i + j] = row[0] * contact_P[0] + row[1] * contact_P[1] + row[2] * contact_P[2];
      columns.axis_B[3 * i + j] = row[0] * axis_P[0] + row[1] * axis_P[1] + row[2] * axis_P[2];
    }
  }

  /** The samples taken, in memory of their own. */
  samples(): Samples {
    const taken = emptySamples(this.count);
    for (const name of COLUMNS) taken[name].set(this.columns[name].subarray(0, taken[name].length));
    return taken;
  }

  private grow(): void {
    const { columns } = this;
    this.columns = emptySamples(2 * this.count);
    for (const name of COLUMNS) this.columns[name].set(columns[name]);
  }
}

/** Columns for a number of samples, all zero, in one piece of memory. */
export function emptySamples(count = 0): Samples {
  const all = new Float64Array(COLUMNS.reduce((sum, name) => sum + widthOf(name), 0) * count);
  let from = 0;
  return Object.fromEntries(
    COLUMNS.map((name) => {
      const to = from + widthOf(name) * count;
      const column = all.subarray(from, to);
      from = to;
      return [name, column];
    }),
  ) as Samples;
}

const widthOf = (name: keyof Samples): number => (name.endsWith('_B') ? 3 : 1);
