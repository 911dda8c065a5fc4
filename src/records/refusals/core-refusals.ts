import type { LengthUnit } from '../schemas/core.js';

/** Masses and densities of a ball around its own core. */
interface OwnMasses {
  readonly coverLb: number;
  readonly coreLb: number;
  readonly fillerLb: number;
  readonly fillerGcc: number;
  /** Fillers that are poured, and what the ball would weigh with them. */
  readonly leastFillerGcc: number;
  readonly mostFillerGcc: number;
  readonly leastBallLb: number;
  readonly mostBallLb: number;
}

/**
 * What is wrong with a core file. Lengths without a unit in their name are in the file's own, which `unit` names.
 * `field` and `part` are paths in it, a part's with its name.
 */
export interface CoreRefusals {
  /** The lengths make no ball, but would in another unit. */
  'core-unit': {
    readonly field: string;
    readonly unit: LengthUnit;
    readonly radius: number;
    /** Null where the cover is in another unit. */
    readonly coverThickness: number | null;
    /** How far the core reaches from the ball's centre; null where nothing of it is in this unit. */
    readonly reach: number | null;
    readonly usualWith: readonly LengthUnit[];
  };
  'cover-thickness': {
    readonly unit: LengthUnit;
    readonly thickness: number;
    readonly least: number;
    readonly most: number;
    readonly usualLeast: number;
    readonly usualMost: number;
  };
  'part-outside': {
    readonly part: string;
    readonly unit: LengthUnit;
    readonly reach: number;
    readonly room: number;
  };
  /** No filler makes the weight come out, but another density of this part, or of the cover, would. */
  'part-density': OwnMasses & {
    readonly part: string;
    readonly densityGcc: number;
    readonly bound: 'most' | 'least';
    readonly boundGcc: number;
  };
  /** No filler and no density of a part makes the weight come out. */
  'no-filler': OwnMasses & { readonly heaviestPart: string };
}
