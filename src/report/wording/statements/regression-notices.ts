import type { RegressionNotices } from '../../../records/answers/statements/regression-notices.js';
import type { Wording } from './wording.js';

const alone = (why: string) => (): string => `Searched by physics alone: ${why}.`;

/** Why physics searched without the fitted regression, as sentences. */
export const REGRESSION_NOTICES: Wording<RegressionNotices> = {
  'regression-not-wanted': alone('the fitted regression was switched off'),
  'regression-missing': alone('the fitted regression is missing'),
  'regression-damaged': alone('the fitted regression is damaged'),
  'regression-of-earlier-engine': alone('the fitted regression was made for an earlier physics engine'),
  'regression-unreadable': alone('the file of the fitted regression cannot be read'),
  'too-few-layouts-to-tune': alone('too few layouts may be drilled to tune the regression'),
  'outside-what-was-fitted': alone(
    'this bowler, ball or lane lies outside what the regression was fitted on',
  ),
};
