import type { GridStep } from '../../prepare/budget.js';
import { NO_ANGLE_DEG } from '../../prepare/mark-of.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { Setting } from '../../simulate/setting.js';
import { gridCandidates, layoutOf } from './candidates.js';

/** The layouts of a grid that the trade drills. */
export function drilledGrid(
  step: GridStep,
  { ball, practice, sides }: Pick<Setting, 'ball' | 'practice' | 'sides'>,
): readonly LayoutNumbers[] {
  const drilled =
    ball.marker === null
      ? { ...practice, drillingAngleDeg: { least: NO_ANGLE_DEG, most: NO_ANGLE_DEG } }
      : practice;
  return gridCandidates(drilled, ball.published.radius, step, sides)
    .map((candidate) => layoutOf(candidate, drilled, ball.published.radius))
    .filter((layout) => layout !== null);
}
