import { RANKING_RAYS, type RayRule, REPORT_RAYS } from '../ball/drill/ray-rule.js';

/** How far apart neighbouring layouts of a grid lie. */
export interface GridStep {
  readonly arcIn: number;
  readonly angleDeg: number;
}

/** A round of a race: the number of worlds that each remaining layout has met after it, and how many of the best stay. */
export interface Round {
  readonly worlds: number;
  readonly keep: number;
}

/** How many layouts take part in a race by physics, and in how many worlds. */
export interface RaceSize {
  /** Number of layouts at the start, and how many of these at least are the best of the grid. */
  readonly starters: number;
  readonly leastOfGrid: number;
  readonly rounds: readonly Round[];
  /** In each round this many layouts that differ also stay, since an answer shows layouts that differ. */
  readonly differing: number;
  /** After the race: batches of new layouts with the highest expected scores, how far apart they are, and the worlds they meet. */
  readonly batches: number;
  readonly batch: { readonly layouts: number; readonly apart: number; readonly worlds: number };
  /** Then this many of the best meet this many worlds. */
  readonly best: { readonly layouts: number; readonly worlds: number };
}

/**
 * How much is tried for one answer: counts that cost time and do not depend on ball, bowler or lane. A smaller budget gives an answer
 * of the same form, sooner and less certain.
 */
export interface Budget {
  /** Number of different cores that represent all those with the published numbers. */
  readonly cores: number;
  /** Rays that represent a hole, for ranking layouts and for the numbers shown. */
  readonly rays: { readonly ranking: RayRule; readonly report: RayRule };
  /**
   * Number of plausible worlds that each finalist meets. A power of two, like all counts of worlds here, since so many Sobol points are
   * spread most evenly.
   */
  readonly worlds: number;
  /** The first grid over all layouts, which also shows what is attainable; and the finest that a person can mark. */
  readonly grid: { readonly coarse: GridStep; readonly finest: GridStep };
  readonly survey: {
    /** Least number of nominal shots with which the regression is tuned. */
    readonly leastNominal: number;
    /** Number of shots in worlds that it is tuned to, in addition to the nominal ones. */
    readonly shotsInWorlds: number;
    /** Number of layouts drilled into every core, from which all other drilled balls are interpolated. */
    readonly sample: number;
    /** Rounds of the survey; the last one keeps none. */
    readonly rounds: readonly Round[];
    /** How many of the best are rolled at a time, how far apart, until enough of them may be drilled, and how often at most. */
    readonly looks: {
      readonly layouts: number;
      readonly apart: number;
      readonly enough: number;
      readonly times: number;
    };
  };
  /** With promising layouts from the regression, and for physics alone. */
  readonly race: { readonly surveyed: RaceSize; readonly alone: RaceSize };
  /** Rounds before the final, each in more worlds; how many layouts enter each of them and the final, in addition to those that differ. */
  readonly heats: readonly {
    readonly worlds: number;
    readonly least: number;
    readonly most: number;
    /** Layouts that differ, beyond those shown. */
    readonly moreThanShown: number;
  }[];
  readonly final: { readonly least: number; readonly most: number };
  /** Worlds in which one more step in each layout number is tried. */
  readonly stepWorlds: number;
  /** Worlds in which each belief of common practice is tried. */
  readonly practiceWorlds: number;
  /** Other finishes (grit) and moves of the feet (boards) that are tried with the best layout. */
  readonly levers: { readonly grits: readonly number[]; readonly movesBoards: readonly number[] };
  /** Spacing of the layouts on a page's map. */
  readonly pageMap: GridStep;
}

/** The budget of every answer unless another is passed in. */
export const USUAL_BUDGET: Budget = {
  // their median errs by about a sixth of the standard deviation among cores
  cores: 64,
  // within 1e-4 in and 1e-5 in of RG and differentials: see `ray-rule`
  rays: { ranking: RANKING_RAYS, report: REPORT_RAYS },
  // evenly spread: a mean over this many is clearly more accurate than over 200 drawn at random
  worlds: 128,
  grid: {
    // some 350 layouts: quantiles of what is attainable, and enough to tune to
    coarse: { arcIn: 0.5, angleDeg: 10 },
    // a tape is read to an eighth of an inch, a protractor to five degrees
    finest: { arcIn: 0.125, angleDeg: 5 },
  },
  survey: {
    // less than a third of the coarse grid would represent few layouts
    leastNominal: 100,
    // two in each world
    shotsInWorlds: 128,
    // a little more than twice the size of the layout basis fitted to them
    sample: 60,
    // few worlds for poor layouts, all for close ones: some nine thousand begin
    rounds: [
      { worlds: 2, keep: 3000 },
      { worlds: 4, keep: 1000 },
      { worlds: 8, keep: 400 },
      { worlds: 16, keep: 200 },
      { worlds: 32, keep: 100 },
      { worlds: 64, keep: 0 },
    ],
    // rings over holes rule out some of each batch, so up to three batches are rolled
    looks: { layouts: 24, apart: 0.4, enough: 20, times: 3 },
  },
  race: {
    // few need to be tried where the regression has named promising ones
    surveyed: {
      starters: 40,
      // if the regression is wrong about a problem, the best of the grid still win
      leastOfGrid: 16,
      rounds: [
        { worlds: 4, keep: 10 },
        { worlds: 8, keep: 5 },
        { worlds: 16, keep: 4 },
      ],
      differing: 4,
      batches: 1,
      batch: { layouts: 6, apart: 0.2, worlds: 8 },
      best: { layouts: 4, worlds: 32 },
    },
    alone: {
      starters: 100,
      leastOfGrid: 100,
      rounds: [
        { worlds: 4, keep: 30 },
        { worlds: 8, keep: 12 },
        { worlds: 16, keep: 6 },
      ],
      differing: 6,
      batches: 2,
      batch: { layouts: 8, apart: 0.2, worlds: 8 },
      best: { layouts: 6, worlds: 32 },
    },
  },
  heats: [
    { worlds: 16, least: 4, most: 10, moreThanShown: 1 },
    { worlds: 32, least: 3, most: 8, moreThanShown: 0 },
    { worlds: 64, least: 2, most: 6, moreThanShown: 0 },
  ],
  final: { least: 2, most: 4 },
  // paired with the layout itself, which removes most luck
  stepWorlds: 16,
  // then three in four is two standard errors from one in two
  practiceWorlds: 16,
  // usual finishes; four boards outside and inside
  levers: { grits: [500, 1000, 2000, 4000], movesBoards: [-4, 4] },
  // a table that fits a page
  pageMap: { arcIn: 0.5, angleDeg: 20 },
};
