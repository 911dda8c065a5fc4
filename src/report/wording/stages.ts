import type { Stage } from '../../records/answers/stage.js';

/**
 * What a search is at, for the person who waits; a stage that is none of the engine's stands as it is.
 *
 * @param worlds  plausible conditions that finalists meet
 */
export const stageText = (stage: string, worlds: number): string =>
  isStage(stage) ? STAGES[stage].replace('{worlds}', String(worlds)) : stage;

const STAGES: { readonly [S in Stage]: string } = {
  'logged shots': 'Learning from logged shots',
  layouts: 'Trying layouts',
  'shots to tune to': 'Rolling shots under plausible conditions',
  'worlds surveyed': 'Looking at every layout',
  'shots in worlds': 'Trying the likeliest layouts',
  worlds: 'Comparing the best under {worlds} plausible conditions',
  'bowlers x lanes': 'Bowlers and lanes done',
};

const isStage = (stage: string): stage is Stage => Object.hasOwn(STAGES, stage);
