import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import type { LayoutDifference, VoicesAnswer } from '../../records/answers/answer.js';
import { BELIEFS } from '../../records/shared/beliefs.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { layoutsApart } from '../../search/candidates/pick-differing.js';
import type { VoicesResult } from '../../search/search.js';
import type { ProblemBeliefs } from '../../search/voices/problem-beliefs.js';
import type { Setting } from '../../simulate/setting.js';
import { layoutAnswer } from './layout-answer.js';

/**
 * What physics alone, practice alone and both combined would choose, and how far apart the first two are. All met every world.
 *
 * @param difference  of a layout from another
 */
export function voicesAnswer(
  choices: Readonly<Record<'weighed' | 'physics' | 'practice', LayoutNumbers>>,
  { byBoth, byPhysics, beliefs }: VoicesResult,
  difference: (layout: LayoutNumbers, from: LayoutNumbers) => LayoutDifference,
  { ball, practiceWeight }: Pick<Setting, 'ball' | 'practiceWeight'>,
): VoicesAnswer {
  const choice = (layout: LayoutNumbers): VoicesAnswer['weighed'] => ({
    ...layoutAnswer(layout, ball),
    scores: {
      weighed: byBoth.get(layout)!.meanScore,
      physics: byPhysics.get(layout)!.meanScore,
      practice: beliefs.byPractice(layout),
    },
    overMiddle: difference(layout, MIDDLE_LAYOUT),
  });
  const { physics, practice } = choices;
  return {
    practicePercent: 100 * practiceWeight,
    weighed: choice(choices.weighed),
    physics: choice(physics),
    practice: choice(practice),
    apart:
      layoutsApart(physics, practice) < 1
        ? null
        : { difference: difference(practice, physics), belief: decidingBelief(practice, physics, beliefs) },
  };
}

/** The belief without which practice would prefer its own choice to physics' by least; null where it prefers it by nothing. */
function decidingBelief(
  practice: LayoutNumbers,
  physics: LayoutNumbers,
  { byPractice, byPracticeWithout }: ProblemBeliefs,
): NonNullable<VoicesAnswer['apart']>['belief'] {
  const preferred = byPractice(practice) - byPractice(physics);
  if (!(preferred > 0)) return null;
  const [most] = BELIEFS.map(({ id, says }, b) => {
    const without = byPracticeWithout(b);
    return { id, says, share: (preferred - (without(practice) - without(physics))) / preferred };
  }).sort((a, b) => b.share - a.share);
  return most && most.share > 0 ? most : null;
}
