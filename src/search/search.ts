import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import type { Want } from '../records/schemas/want.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { type Setting, SILENT } from '../simulate/setting.js';
import { bestByPractice } from './best-by-practice.js';
import { withOthers } from './candidates/candidates.js';
import type { NominalShot } from './candidates/nominal-shots.js';
import type { ScoredCache } from './outcome-cache.js';
import { race, type SearchResult } from './race.js';
import { startSearch } from './search-start.js';
import { openSurvey } from './surrogate/open-survey.js';
import { physicsVoice } from './voices/physics-voice.js';
import { type ProblemBeliefs, problemBeliefs } from './voices/problem-beliefs.js';

/** What each voice makes of the same shots. */
export interface VoicesResult {
  /** Physics and practice weighed: what is recommended. */
  readonly weighed: SearchResult;
  /** The best layout by practice alone that may be drilled; null where it was not wanted, or no layout may be drilled. */
  readonly practice: NominalShot | null;
  readonly beliefs: ProblemBeliefs;
  /** All layouts rolled in worlds: as physics alone reads them, and as both combined do. */
  readonly byPhysics: ScoredCache;
  readonly byBoth: ScoredCache;
}

/**
 * Searches all layouts, coarse to fine.
 *
 * A coarse grid is simulated by physics in the nominal world; its quantiles turn the wishes into targets. Then the fitted
 * regression, tuned to this problem, scores every layout at marking resolution over plausible worlds. Physics rolls
 * the most promising layouts in some of those worlds (or, without a regression, the best of the grid), and tries layouts between
 * and beside the best. Each voice searches by its own scores and finds what it would find without the other, but
 * shots rolled for one are not rolled again for the other.
 *
 * @param also       layouts that are not surveyed, but may be looked up in the survey later
 * @param onPhysics  receives what physics alone finds, while the search by both voices goes on. If left out, physics does not search
 *   alone unless practice has no weight
 */
export async function search(
  want: Want,
  setting: Setting,
  {
    also = [],
    onPhysics,
  }: {
    readonly also?: readonly LayoutNumbers[];
    readonly onPhysics?: (physics: SearchResult) => void;
  } = {},
): Promise<VoicesResult> {
  const start = await startSearch(want, setting);
  const { markable, nominal, attained, outcomes } = start;
  const beliefs = problemBeliefs(want, setting.problem, markable, attained, outcomes.middle, setting);
  const surveyBy = await openSurvey(withOthers(markable, [MIDDLE_LAYOUT]), attained, setting, also);
  const plain = physicsVoice(start.targets);
  const byPhysics = outcomes.by(plain);
  if (attained.length === 0 || setting.practiceWeight === 0) {
    const physics = await race(plain, await surveyBy(plain), start, setting);
    return { weighed: physics, practice: null, beliefs, byPhysics, byBoth: byPhysics };
  }
  const byBoth = outcomes.by(beliefs.voice);
  // one voice races while the other surveys, so that all threads have work
  const surveyed = onPhysics && (await surveyBy(plain));
  const alone = surveyed && race(plain, surveyed, start, { ...setting, progress: SILENT }).then(onPhysics);
  const [weighed] = await Promise.all([
    surveyBy(beliefs.voice).then((surveyed) => race(beliefs.voice, surveyed, start, setting)),
    alone,
  ]);
  const practice = onPhysics ? await bestByPractice(markable, beliefs, nominal.apart()) : null;
  return { weighed, practice, beliefs, byPhysics, byBoth };
}
