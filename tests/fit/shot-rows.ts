import { Workspace } from '../../src/motion/shot/workspace.js';
import { designShots } from '../../src/regression/design.js';
import { FEATURES, middlingRoll, writeFeatures } from '../../src/regression/features.js';
import { observe } from '../../src/regression/observe.js';
import { TARGETS } from '../../src/regression/targets.js';
import { isPlayable } from './playable.js';

/** Numbers in a row: the features of a shot, what it did, and the lane it was on. */
export const ROW = FEATURES.length + TARGETS.length + 1;

/**
 * Rolls the design's shots of some lanes that a bowler would play and that reach the pins.
 *
 * @returns one row of `ROW` numbers a shot
 */
export function shotRows(seed: number, fromLane: number, toLane: number): Float32Array {
  const workspace = new Workspace();
  const answers = new Float64Array(TARGETS.length);
  const rows: Float32Array[] = [];
  for (let lane = fromLane; lane < toLane; lane++)
    for (const shot of designShots(seed, lane)) {
      const { body, release, launch, surface, freshSurface } = shot;
      if (!isPlayable(middlingRoll(body.radius, release, launch, surface, freshSurface), launch)) continue;
      if (!observe(answers, 0, shot, workspace)) continue;
      const row = new Float32Array(ROW);
      writeFeatures(row, 0, shot);
      row.set(answers, FEATURES.length);
      row[ROW - 1] = lane;
      if (row.every(Number.isFinite)) rows.push(row);
    }
  const all = new Float32Array(ROW * rows.length);
  rows.forEach((row, i) => {
    all.set(row, ROW * i);
  });
  return all;
}
