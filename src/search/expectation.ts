import { meanSimple } from 'simple-statistics';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import type { ScoredCache } from './outcome-cache.js';
import { controlVariates } from './scoring/control-variates.js';
import { type KnownValue, krige } from './scoring/krige.js';
import type { Survey } from './surrogate/survey.js';

/** Expected score of a layout: its mean over worlds. */
export type Expects = (layout: LayoutNumbers) => number;

/**
 * The expected score of any layout, from shots of physics in worlds: the scores of layouts that were rolled, smoothed over
 * their neighbours.
 *
 * @param survey  the scores by the regression, or null. With them the regression's errors are smoothed instead, unless these vary more
 *   than the scores do, and its scores in single worlds serve as control variates against luck
 */
export function expectation(
  cache: Pick<ScoredCache, 'known'>,
  survey: Pick<Survey, 'expected' | 'scores'> | null,
): Expects {
  const { leader, rows } = controlVariates(cache.known(), survey?.scores);
  const plain = krige(rows);
  const base = leader.worlds.meanScore;
  const ofLeader = survey?.expected(leader.layout);
  if (!survey || ofLeader === undefined) return (layout) => base + plain(layout);
  const surveyed = (layout: LayoutNumbers): number => (survey.expected(layout) ?? ofLeader) - ofLeader;
  const errors = rows.map((row) => ({ ...row, value: row.value - surveyed(row.layout) }));
  if (spreadOf(errors) > spreadOf(rows)) return (layout) => base + plain(layout);
  const error = krige(errors);
  return (layout) => base + surveyed(layout) + error(layout);
}

function spreadOf(rows: readonly KnownValue[]): number {
  const mean = meanSimple(rows.map(({ value }) => value));
  return rows.reduce((sum, { value }) => sum + (value - mean) ** 2, 0);
}
