import type { RegressionAnswer } from '../../records/answers/answer.js';
import type { Units } from '../text/display-units.js';
import { decimals } from '../text/figures.js';
import { say } from './say.js';

/** What the fitted regression did, and how it and physics differ, in a line or two. */
export function regressionText(
  { notice, arithmetic, candidateWorlds, listed, difference }: RegressionAnswer,
  units: Units,
): string {
  if (notice) return say(notice, units);
  const scores = listed
    .map((row) => `${decimals(row.byRegression, 1)} and ${decimals(row.byPhysics, 1)}`)
    .join(', ');
  const differs = difference
    ? ` On the layouts listed the regression expected and physics found mean scores of ${scores}: ` +
      `${decimals(difference.typical, 1)} points apart, at most ${decimals(difference.worst, 1)}.`
    : '';
  return (
    `The fitted regression scored all layouts (${candidateWorlds} tries under plausible conditions), and physics then tried the likeliest.` +
    `${differs} All other numbers shown are by physics.${arithmetic === 'plain' ? ` ${WITHOUT_RUNTIME}` : ''}`
  );
}

/** What was unusual about the regression, in a sentence; none where nothing was. */
export const regressionNote = ({ notice, arithmetic }: RegressionAnswer, units: Units): readonly string[] =>
  notice ? [say(notice, units)] : arithmetic === 'plain' ? [WITHOUT_RUNTIME] : [];

const WITHOUT_RUNTIME =
  'The package onnxruntime-node is missing or does not load on this machine: the regression was computed without it, which ' +
  'takes longer and gives the same answer.';
