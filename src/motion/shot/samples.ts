/** Columns of samples that reaction numbers need; `contact_B` holds three numbers a sample. */
const LEAN = ['time', 'x', 'y', 'vx', 'vy', 'spin', 'phase', 'film', 'contact_B'] as const;

/** The other columns of a sample; `axis_B` holds three numbers. */
const MORE = ['slip', 'carried', 'fresh', 'axis_B'] as const;

type Columns<Name extends string> = { readonly [K in Name]: Float64Array };

/**
 * The samples of a shot, column by column, in SI, one entry per sample; the first is the release.
 *
 * `time`; `x`, `y`, `vx`, `vy` of Bo in W; `spin` (|w|); `phase`, the angle turned; `film` on the lane. `contact_B`: the contact
 * point on the ball, unit vectors.
 */
export type LeanSamples = Columns<(typeof LEAN)[number]>;

/**
 * Samples with all columns. The additional ones are `slip` of the contact point; oil `carried` on the ball under it; `fresh`,
 * the share of contact on clean cover; `axis_B`, the migrating PAP (w/|w|; zeros while the ball does not spin).
 */
export type Samples = LeanSamples & Columns<(typeof MORE)[number]>;

export const LEAN_COLUMNS: readonly (keyof Samples)[] = LEAN;
export const ALL_COLUMNS: readonly (keyof Samples)[] = [...LEAN, ...MORE];

/** How many numbers a column holds for each sample. */
export const widthOf = (name: keyof Samples): number => (name.endsWith('_B') ? 3 : 1);

/** Columns of zeros for a number of samples, in one piece of memory; columns not named are empty. */
export function emptySamples(count = 0, names = ALL_COLUMNS): Samples {
  const room = (name: keyof Samples): number => (names.includes(name) ? widthOf(name) * count : 0);
  const all = new Float64Array(ALL_COLUMNS.reduce((sum, name) => sum + room(name), 0));
  let from = 0;
  return Object.fromEntries(
    ALL_COLUMNS.map((name) => {
      const column = all.subarray(from, from + room(name));
      from += room(name);
      return [name, column];
    }),
  ) as Samples;
}
