/** Numbers of a release, in record units. */
export interface ReleaseGuess {
  readonly speedMph: number;
  readonly revRateRpm: number;
  readonly axisTiltDeg: number;
  readonly axisRotationDeg: number;
  readonly papOverIn: number;
  readonly papUpIn: number;
}

export type ReleaseKey = keyof ReleaseGuess;

/** Usual numbers of the kinds of bowler a person may call themselves (common practice, no source). */
export const RELEASE_GUESSES = {
  usual: {
    speedMph: 17.5,
    revRateRpm: 310,
    axisTiltDeg: 14,
    axisRotationDeg: 48,
    papOverIn: 4.875,
    papUpIn: 0.375,
  },
  straight: {
    speedMph: 15,
    revRateRpm: 160,
    axisTiltDeg: 16,
    axisRotationDeg: 20,
    papOverIn: 4.25,
    papUpIn: 0,
  },
  'many-revs': {
    speedMph: 17,
    revRateRpm: 430,
    axisTiltDeg: 12,
    axisRotationDeg: 55,
    papOverIn: 5.125,
    papUpIn: 0.5,
  },
  'two-handed': {
    speedMph: 18,
    revRateRpm: 460,
    axisTiltDeg: 8,
    axisRotationDeg: 62,
    papOverIn: 5.375,
    papUpIn: 1,
  },
  young: {
    speedMph: 13,
    revRateRpm: 190,
    axisTiltDeg: 14,
    axisRotationDeg: 40,
    papOverIn: 4.375,
    papUpIn: 0.25,
  },
} as const satisfies Readonly<Record<string, ReleaseGuess>>;

export type BowlerKind = keyof typeof RELEASE_GUESSES;

export const BOWLER_KIND_IDS = Object.keys(RELEASE_GUESSES) as readonly BowlerKind[];

/** How far a guess by kind may be off (one standard deviation; assumed, no source). */
export const GUESS_DEVIATION: ReleaseGuess = {
  speedMph: 1.2,
  revRateRpm: 50,
  axisTiltDeg: 5,
  axisRotationDeg: 11,
  papOverIn: 0.4,
  papUpIn: 0.45,
};

export const RELEASE_KEYS = Object.keys(GUESS_DEVIATION) as readonly ReleaseKey[];
