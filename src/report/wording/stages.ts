import type { Stage } from '../../records/answers/stage.js';

/** The stage of a search, for the person who waits; a stage that is not the engine's is shown as it is. */
export const stageText = (stage: string): string => (isStage(stage) ? STAGES[stage] : stage);

const STAGES: { readonly [S in Stage]: string } = {
  'logged shots': 'Learning from logged shots',
  layouts: 'Trying layouts',
  'shots to tune to': 'Rolling shots under plausible conditions',
  'worlds surveyed': 'Looking at every layout',
  'shots in worlds': 'Trying the likeliest layouts',
  worlds: 'Comparing under plausible conditions',
  'bowlers x lanes': 'Bowlers and lanes done',
};

const isStage = (stage: string): stage is Stage => Object.hasOwn(STAGES, stage);
