import { describe, expect, test } from 'vitest';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import { BELIEFS } from '../../../src/records/shared/beliefs.js';
import { drilledGrid } from '../../../src/search/candidates/drilled-grid.js';
import { beliefEffects } from '../../../src/search/voices/belief-effects.js';
import { drawBeliefs, expectedSizes, MIDDLE_SIZES } from '../../../src/search/voices/draw-beliefs.js';
import { layoutQuantities } from '../../../src/search/voices/layout-quantities.js';
import { practiceScore } from '../../../src/search/voices/practice-voice.js';
import { problemBeliefs } from '../../../src/search/voices/problem-beliefs.js';
import { NOMINAL } from '../../../src/search/voices/voice.js';
import { believedOutcome } from '../../../src/search/voices/weighed-voice.js';
import { madeUpSetting } from '../../support/made-up-setting.js';
import { layoutAt, outcomeOf } from '../../support/outcomes.js';

const { setting } = madeUpSetting(() => ({}));
const { problem } = setting;
const want = { hookStart: 5, sharpness: 4 } as const;
const markable = drilledGrid({ arcIn: 1, angleDeg: 20 }, setting);
const usual = { layout: MIDDLE_LAYOUT, outcome: outcomeOf() };
const even = markable
  .slice(0, 20)
  .map((layout, i) => ({ layout, outcome: outcomeOf({ hookStartFt: 36 + i / 5 }) }));
const chanceOf = (belief: (typeof BELIEFS)[number]): number =>
  BELIEFS.indexOf(belief) % 2 === 0 ? 0.8 : 0.3;
const beliefs = problemBeliefs(want, problem, markable, even, usual, { seed: 3, chanceOf });

const quantitiesOf = layoutQuantities(problem, markable);
const effectsOf = (layout: typeof MIDDLE_LAYOUT) =>
  beliefEffects(quantitiesOf(layout), quantitiesOf(MIDDLE_LAYOUT));
const LAYOUTS = [markable[3], markable[17], layoutAt(85, 5.5, 60)];

describe('problemBeliefs', () => {
  test('of a layout are what its quantities say beside the usual one, worked out once', () => {
    for (const layout of LAYOUTS) {
      expect(beliefs.effectsOf(layout)).toEqual(effectsOf(layout));
      expect(beliefs.effectsOf({ ...layout })).toBe(beliefs.effectsOf(layout));
    }
    expect([...beliefs.effectsOf(MIDDLE_LAYOUT)].every((effect) => effect === 0)).toBe(true);
    expect(beliefs.effectsOf(LAYOUTS[0])).not.toEqual(beliefs.effectsOf(LAYOUTS[1]));
  });

  test('are drawn for each world, by their chances; in the nominal one they count by those', () => {
    expect(beliefs.sizes).toEqual(drawBeliefs(3, problem.luck.length, chanceOf));
    const { voice } = beliefs;
    const shot = outcomeOf();
    for (const layout of LAYOUTS) {
      const effects = effectsOf(layout);
      expect(voice.effectsOf(layout)).toEqual(effects);
      expect(voice.outcome(effects, 5, shot)).toEqual(believedOutcome(shot, effects, beliefs.sizes[5]));
      expect(voice.outcome(effects, NOMINAL, shot)).toEqual(
        believedOutcome(shot, effects, expectedSizes(chanceOf)),
      );
    }
  });

  test('score layouts by practice alone, in the middle of their sizes, and without any one of them', () => {
    const allowed = even.map(({ layout }) => layout);
    const scoreBy = (sizes: readonly number[]) =>
      practiceScore(want, usual.outcome, allowed, effectsOf, sizes);
    const whole = scoreBy(MIDDLE_SIZES);
    for (const layout of LAYOUTS) expect(beliefs.byPractice(layout)).toBe(whole(layout));
    const moving = BELIEFS.map((_, out) => {
      const without = scoreBy(MIDDLE_SIZES.map((size, b) => (b === out ? 0 : size)));
      for (const layout of LAYOUTS) expect(beliefs.byPracticeWithout(out)(layout)).toBe(without(layout));
      return LAYOUTS.some((layout) => Math.abs(without(layout) - whole(layout)) > 0.1);
    });
    expect(moving.filter((moves) => moves).length).toBeGreaterThan(1);
  });

  test('targets of a world are found once', () => {
    for (const world of [NOMINAL, 0, 4])
      expect(beliefs.voice.targetsIn(world)).toBe(beliefs.voice.targetsIn(world));
    expect(beliefs.voice.targetsIn(0)).not.toEqual(beliefs.voice.targetsIn(4));
  });
});
