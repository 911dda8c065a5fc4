import type { RegressionNotice } from '../../records/answers/statements/regression-notices.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import type { Setting } from '../../simulate/setting.js';
import type { NominalShot } from '../candidates/nominal-shots.js';
import type { Voice } from '../voices/voice.js';
import { problemScorer } from './problem-scorer.js';
import { type Surveyed, survey } from './survey.js';

/**
 * Tunes the regression to a problem.
 *
 * @param layouts  all to survey
 * @param nominal  what physics says of layouts spread over all
 * @param also     others that may be looked at later
 * @returns the survey that a voice asks for; where the regression cannot be used, the reason instead of every survey
 */
export async function openSurvey(
  layouts: readonly LayoutNumbers[],
  nominal: readonly NominalShot[],
  setting: Setting,
  also: readonly LayoutNumbers[],
): Promise<(voice: Voice) => Promise<Surveyed>> {
  const without = (why: RegressionNotice) => async (): Promise<Surveyed> => ({ why });
  if (nominal.length < setting.budget.survey.leastNominal)
    return without({ code: 'too-few-layouts-to-tune', params: {} });
  const regression = await setting.regression.open();
  if (regression.kind === 'unusable') return without(regression.why);
  const scorer = await problemScorer(layouts, nominal, setting, regression, also);
  return 'why' in scorer ? without(scorer.why) : (voice) => survey(scorer, voice, setting);
}
