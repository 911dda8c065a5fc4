import type { Target } from './target.js';
import { ADJUST } from './targets/adjust.js';
import { COMMAND_LINES } from './targets/command-lines.js';
import { INTERVIEW } from './targets/interview.js';
import { LISTS } from './targets/lists.js';
import { LOGS } from './targets/logs.js';
import { MESHES_AND_CORES } from './targets/meshes.js';
import { RECORDS } from './targets/records.js';
import { SHOTS } from './targets/shots.js';
import { TYPED } from './targets/typed.js';

/** All that takes what comes from outside. A full run gives them more than a million inputs, and a hundred thousand shots. */
export const TARGETS: readonly Target[] = [
  ...TYPED,
  ...RECORDS,
  ...LISTS,
  ...MESHES_AND_CORES,
  ...LOGS,
  ...ADJUST,
  ...INTERVIEW,
  ...COMMAND_LINES,
  ...SHOTS,
];
