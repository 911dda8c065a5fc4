/** A family of cores: what it is called, how its published numbers are bounded, and what is asked about it. */
interface CoreFamilyEntry {
  /** As it stands before "core", with its article: `a lobed`. */
  readonly name: string;
  /** What it looks like, or has, in a few words. */
  readonly is: string;
  /**
   * Whether its three moments of inertia differ by design. Then the published intermediate differential is one, and the
   * ball has a mass-bias mark to measure drilling angles to; else the number is 0 or nearly so.
   */
  readonly hasMassBias: boolean;
  /** Whether a record may say how many noses it has and how they stand; the questions about them are put for it alone. */
  readonly hasNoses: boolean;
  /** How a person says that their symmetric core is of it; null where the numbers tell the family. */
  readonly answer: string | null;
}

/**
 * The core families, by the word that stands in a ball's record. Their shapes are in `ball/core/core-families.ts`.
 *
 * A ball with a core of its own is of none: its file says what it is made of.
 */
export const CORE_FAMILIES = {
  plain: {
    name: 'a plain',
    is: 'a body of revolution',
    hasMassBias: false,
    hasNoses: false,
    answer: 'No, it is round all around',
  },
  lobed: {
    name: 'a lobed',
    is: 'symmetric by its numbers, with side features',
    hasMassBias: false,
    hasNoses: true,
    answer: 'Yes',
  },
  asymmetric: {
    name: 'an asymmetric',
    is: 'a mass bias',
    hasMassBias: true,
    hasNoses: false,
    answer: null,
  },
} as const satisfies Readonly<Record<string, CoreFamilyEntry>>;

/** Which kind of core a ball has. */
export type CoreFamily = keyof typeof CORE_FAMILIES;

export const CORE_FAMILY_IDS = Object.keys(CORE_FAMILIES) as [CoreFamily, ...CoreFamily[]];

/** Up to this a published intermediate differential is scatter of manufacture, not a design, in. */
export const LEAST_MASS_BIAS_IN = 0.004;

/**
 * The families a core may be of: as stated, else those that go with its intermediate differential. Where several do,
 * its numbers cannot tell which.
 */
export const familiesWith = (
  stated: CoreFamily | undefined,
  intermediateDifferentialIn: number,
): CoreFamily[] =>
  stated
    ? [stated]
    : CORE_FAMILY_IDS.filter(
        (id) => CORE_FAMILIES[id].hasMassBias === intermediateDifferentialIn > LEAST_MASS_BIAS_IN,
      );

/** Whether a core of a family has a mass-bias mark. */
export const hasMassBias = (family: CoreFamily): boolean => CORE_FAMILIES[family].hasMassBias;

/** Whether a core of a family has noses. */
export const hasNoses = (family: CoreFamily): boolean => CORE_FAMILIES[family].hasNoses;
