import { type Budget, type RaceSize, USUAL_BUDGET } from '../../src/prepare/budget.js';

/** As many worlds as any of a small budget: JSON, in which it goes to other processes, has no infinity. */
const ALL = 1000;

const race: RaceSize = {
  starters: 10,
  leastOfGrid: 4,
  rounds: [
    { worlds: 2, keep: 5 },
    { worlds: 4, keep: 3 },
  ],
  differing: 4,
  batches: 1,
  batch: { layouts: 2, apart: 0.2, worlds: 4 },
  best: { layouts: 2, worlds: 8 },
};

/**
 * A whole answer in a quarter of the usual time, by all the steps of a usual one: for tests of its form and of what holds whatever is
 * tried. What it says of a layout is too unsure for anything else.
 */
export const SMALL_BUDGET: Budget = {
  ...USUAL_BUDGET,
  cores: 8,
  worlds: 16,
  grid: { coarse: { arcIn: 1, angleDeg: 20 }, finest: { arcIn: 0.5, angleDeg: 10 } },
  survey: {
    leastNominal: 20,
    shotsInWorlds: 64,
    sample: 60,
    rounds: [
      { worlds: 4, keep: 100 },
      { worlds: ALL, keep: 0 },
    ],
    looks: { layouts: 8, apart: 0.4, enough: 5, times: 2 },
  },
  race: { surveyed: race, alone: race },
  heats: [{ worlds: 8, least: 2, most: 4, moreThanShown: 1 }],
  final: { least: 2, most: 3 },
  stepWorlds: 4,
  practiceWorlds: 4,
  levers: { grits: [500, 4000], movesBoards: [4] },
  pageMap: { arcIn: 1, angleDeg: 40 },
};

/** Smaller still, for many whole answers in a row of which nothing is asked but that they keep their word. */
export const TINY_BUDGET: Budget = {
  ...SMALL_BUDGET,
  cores: 2,
  worlds: 8,
  grid: { coarse: { arcIn: 1.5, angleDeg: 40 }, finest: { arcIn: 0.75, angleDeg: 20 } },
  heats: [{ worlds: 4, least: 2, most: 4, moreThanShown: 1 }],
  practiceWorlds: 1,
  levers: { grits: [500], movesBoards: [] },
};
