/* Ids that statements name. They stand apart from the schemas, which are slow to load: a search needs the ids alone. */

/** Kinds of levers other than the layout. */
export const LEVER_KINDS = ['surface', 'line', 'ball'] as const;
export type LeverKind = (typeof LEVER_KINDS)[number];

/** What of a drilled ball makes its shot differ: where its centre of mass lies, its flare, its inertia itself. */
export const CAUSES = ['centre', 'flare', 'inertia'] as const;
export type Cause = (typeof CAUSES)[number];

/** Release numbers that may be known only so well. */
export const RELEASE_IDS = ['speedMph', 'revRateRpm', 'axisTiltDeg', 'axisRotationDeg'] as const;
