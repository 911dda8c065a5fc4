import { RANKING_RAYS, type RayRule, REPORT_RAYS } from '../ball/drill/ray-rule.js';

/** How far apart neighbouring layouts of a grid lie. */
export interface GridStep {
  readonly arcIn: number;
  readonly angleDeg: number;
}

/** A round of a race: the worlds that each layout still in it has met afterwards, and how many of the best stay. */
export interface Round {
  readonly worlds: number;
  readonly keep: number;
}

/** How many layouts a race by physics takes up, and in how many worlds. */
export interface RaceSize {
  /** Layouts that start, and how many of them are the best of the grid, whatever else is likely. */
  readonly starters: number;
  readonly leastOfGrid: number;
  readonly rounds: readonly Round[];
  /** Besides, this many that differ stay, for an answer shows layouts that do. */
  readonly differing: number;
  /** After the race: batches of new layouts, about so far apart, where most is expected, and the worlds they meet. */
  readonly batches: number;
  readonly batch: { readonly layouts: number; readonly apart: number; readonly worlds: number };
  /** The best then meet this many. */
  readonly best: { readonly layouts: number; readonly worlds: number };
}

/**
 * How much is tried for one answer: counts that cost time and say nothing about ball, bowler or lane. Every answer is made with one;
 * a smaller one gives an answer of the same shape, sooner and less certain.
 */
export interface Budget {
  /** Differing cores that stand for all that have the published numbers. */
  readonly cores: number;
  /** Rays that stand for a hole: where layouts are ranked, and where numbers are shown. */
  readonly rays: { readonly ranking: RayRule; readonly report: RayRule };
  /**
   * Plausible worlds that each finalist meets. Like all counts of worlds here a power of two: the first this many worlds are then
   * spread most evenly.
   */
  readonly worlds: number;
  /** The first grid over all layouts, whose outcomes also say what is attainable; and what a person can mark. */
  readonly grid: { readonly coarse: GridStep; readonly finest: GridStep };
  readonly survey: {
    /** Nominal shots below which the regression is not tuned. */
    readonly leastNominal: number;
    /** Shots in worlds that it is tuned to, besides the nominal ones. */
    readonly shotsInWorlds: number;
    /** Layouts drilled in every world, from which the others' balls are interpolated. */
    readonly sample: number;
    /** The last one keeps none. */
    readonly rounds: readonly Round[];
    /** So many of the best are rolled at a time, about so far apart, until enough of them may be drilled. */
    readonly looks: {
      readonly layouts: number;
      readonly apart: number;
      readonly enough: number;
      readonly times: number;
    };
  };
  /** Where the regression has named the likely layouts, and where physics alone has to look around. */
  readonly race: { readonly surveyed: RaceSize; readonly alone: RaceSize };
  /** Rounds before the final, each in more worlds, and how many go into each and into the final besides those that differ. */
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
  /** How far apart the layouts of a page's map lie. */
  readonly pageMap: GridStep;
}

/** Layouts that an answer lists unless another number is asked for. */
export const USUAL_TOP = 4;

/** What every answer is made with unless another is passed in. */
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
    // less than a third of the coarse grid speaks for few layouts
    leastNominal: 100,
    // four in each world
    shotsInWorlds: 256,
    // twice the functions of the layout that are fitted through them, and a few more
    sample: 60,
    // few worlds for the hopeless, all for the close
    rounds: [
      { worlds: 8, keep: 1000 },
      { worlds: 32, keep: 200 },
      { worlds: 64, keep: 0 },
    ],
    // rings over holes bar some of each batch, so up to three are rolled
    looks: { layouts: 24, apart: 0.4, enough: 20, times: 3 },
  },
  race: {
    // where the regression has named the likely ones, few need be tried
    surveyed: {
      starters: 40,
      // where the regression is wrong about a problem, the grid's best still win
      leastOfGrid: 16,
      rounds: [
        { worlds: 4, keep: 12 },
        { worlds: 8, keep: 6 },
        { worlds: 16, keep: 4 },
      ],
      differing: 5,
      batches: 1,
      batch: { layouts: 6, apart: 0.2, worlds: 8 },
      best: { layouts: 5, worlds: 32 },
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
    { worlds: 16, least: 4, most: 10, moreThanShown: 2 },
    { worlds: 32, least: 3, most: 8, moreThanShown: 1 },
    { worlds: 64, least: 2, most: 6, moreThanShown: 0 },
  ],
  final: { least: 2, most: 4 },
  // paired with the layout itself, so little is left of luck
  stepWorlds: 16,
  // three in four then lies two standard errors from one in two
  practiceWorlds: 16,
  // finishes a shop gives a cover; four boards to the outside and to the inside
  levers: { grits: [500, 1000, 2000, 4000], movesBoards: [-4, 4] },
  // a table that fits a page
  pageMap: { arcIn: 0.5, angleDeg: 20 },
};
