import { mean } from 'simple-statistics';
import { beforeAll, describe, expect, test } from 'vitest';
import { recommend } from '../../src/answer/recommend.js';
import { driller } from '../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../src/ball/drill/drilled-numbers.js';
import { BOARD } from '../../src/base/constants.js';
import { DEGREE, FOOT, INCH, to } from '../../src/base/units.js';
import { placeLayout } from '../../src/layout/placement.js';
import { numbersOf } from '../../src/prepare/mark-of.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { RecommendAnswer } from '../../src/records/answers/answer.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import { WISHED_IDS, type WishedId } from '../../src/records/schemas/reaction-numbers.js';
import { wishedIds } from '../../src/records/schemas/want.js';
import { BELIEFS } from '../../src/records/shared/beliefs.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { layoutsApart } from '../../src/search/candidates/pick-differing.js';
import { score } from '../../src/search/scoring/score.js';
import type { Target } from '../../src/search/scoring/target.js';
import { shiftTargets } from '../../src/search/scoring/world-statistics.js';
import { visibility } from '../../src/search/visibility.js';
import { addedInUnit, beliefEffects } from '../../src/search/voices/belief-effects.js';
import { drawBeliefs } from '../../src/search/voices/draw-beliefs.js';
import type { LayoutQuantities } from '../../src/search/voices/layout-quantities.js';
import { type RecommendInputs, type Setting, withSetting } from '../../src/simulate/setting.js';
import { type Outcome, simulator } from '../../src/simulate/simulator.js';
import { TINY_BUDGET } from '../support/small-budget.js';

/* Whole answers to a few cases, with practice weighed and without, beside the same shots rolled and added up by the test. */

const { bowlers, balls, lanes } = demoShelf();
const byId = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;

const CASES = [
  { bowler: 'average-right', ball: 'plain-medium', lane: 'house-easy', want: { hookStart: 4, sharpness: 4 } },
  { bowler: 'average-left', ball: 'asymmetric-mild', lane: 'league-night', want: { totalHook: 5 } },
  { bowler: 'two-handed', ball: 'lobed-medium', lane: 'house-easy', want: { hookStart: 2 } },
  { bowler: 'high-tilt', ball: 'asymmetric-strong', lane: 'long', want: { totalHook: 5, sharpness: 2 } },
  { bowler: 'rev-dominant', ball: 'plain-high', lane: 'dry', want: { hookStart: 5, sharpness: 5 } },
] as const;

const SEED = 1;
const WEIGHT = 0.5;

/** How far the fit of drilled numbers may move what beliefs add: a quarter of half a size around lobes, 5 % else. */
const FIT_ERROR: Readonly<Record<WishedId, number>> = {
  hookStartFt: 0.03,
  sharpnessDegPerFt: 0.004,
  totalHookBoards: 0.28,
};

type Reading = Readonly<Record<WishedId, number>>;

const readingOf = ({ reaction }: Outcome): Reading => ({
  hookStartFt: reaction.hookStart / FOOT,
  sharpnessDegPerFt: reaction.sharpness / (DEGREE / FOOT),
  totalHookBoards: reaction.totalHook / BOARD,
});

/** Rolls layouts in the worlds of a setting, one after the other, each on its own line. */
function roller({ problem, ball }: Setting) {
  const engine = simulator(problem);
  const { radius } = ball.published;
  const known = new Map<string, readonly Outcome[]>();
  return (layout: LayoutNumbers): readonly Outcome[] => {
    const key = JSON.stringify(layout);
    const marked = toLayout(layout, radius);
    const rolled =
      known.get(key) ??
      problem.worlds.slice(1).map((world) => engine.outcome(marked, world, engine.ownShot(marked).launch));
    known.set(key, rolled);
    return rolled;
  };
}

/** What beliefs start from, by drilling the very layout. */
function really({ ball, problem }: Setting, layout: LayoutNumbers): LayoutQuantities {
  const { radius, intermediateDifferential } = ball.published;
  const marked = toLayout(layout, radius);
  const { R_BC } = placeLayout(marked, ball.pap_B);
  const rg = inertiaNumbers(driller(ball.bodies[0], ball.rankingRays)(R_BC));
  const toMark = Math.acos(Math.abs(Math.sin(marked.pinToPap) * Math.cos(marked.drillingAngle)));
  return {
    ...layout,
    markToPapIn: intermediateDifferential > 0.004 * INCH ? to(radius * toMark, INCH) : 0,
    differentialIn: to(rg.differential, INCH),
    intermediateDifferentialIn: to(rg.intermediateDifferential, INCH),
    rgIn: to(rg.lowRg, INCH),
    finishGrit: problem.grit,
  };
}

const bothAtPins = (a: readonly Outcome[], b: readonly Outcome[]): number[] =>
  a.flatMap(({ shot }, k) => (shot === 'pins' && b[k].shot === 'pins' ? [k] : []));

describe.each(CASES)('$bowler with $ball on $lane', ({ bowler, ball, lane, want }) => {
  const inputs: RecommendInputs = {
    bowler: byId(bowlers, bowler),
    ball: byId(balls, ball),
    lane: byId(lanes, lane),
    want,
  };
  const options = { seed: SEED, workers: 1, pinSide: 'above' as const, budget: TINY_BUDGET };
  let byPhysics: RecommendAnswer;
  let weighed: RecommendAnswer;
  let setting: Setting;
  let roll: ReturnType<typeof roller>;
  beforeAll(async () => {
    byPhysics = await recommend(inputs, { ...options, top: 2, practiceWeight: 0 });
    weighed = await recommend(inputs, { ...options, top: 2, practiceWeight: WEIGHT });
    setting = await withSetting(inputs, options, async (each) => each);
    roll = roller(setting);
  });

  test('physics chooses the same, with the same score, whether or not practice is heard', () => {
    const [first] = byPhysics.layouts;
    expect(weighed.voices!.physics.text).toBe(first.text);
    expect(weighed.voices!.physics.scores.physics).toBe(first.score);
    expect(weighed.targets).toEqual(byPhysics.targets);
  });

  test('where practice has no weight there are no voices, and every score is that of physics’ own shots', () => {
    expect(byPhysics.voices).toBeNull();
    const units = { hookStart: FOOT, sharpness: DEGREE / FOOT, totalHook: BOARD, entryAngle: DEGREE };
    const targets = byPhysics.targets.map(({ wish, step, value, attainable }): Target => {
      const unit = (units as Readonly<Record<string, number>>)[wish];
      return { wish, step, value: value * unit, low: attainable.low * unit, high: attainable.high * unit };
    });
    const engine = simulator(setting.problem);
    const middle = toLayout(MIDDLE_LAYOUT, setting.ball.published.radius);
    const nominal = engine.outcome(middle, setting.problem.worlds[0]);
    const luck = setting.problem.luck.map((each) => engine.outcome(middle, each, nominal.launch));
    for (const layout of [byPhysics.middle, ...byPhysics.layouts]) {
      const scores = roll(numbersOf(layout)).flatMap((outcome, k) =>
        outcome.shot === 'pins' ? [score(outcome, shiftTargets(targets, luck[k], nominal))] : [],
      );
      expect(layout.score).toBeCloseTo(scores.length > 0 ? mean(scores) : 0, 6);
      expect(layout.gutterShare).toBeCloseTo(1 - scores.length / TINY_BUDGET.worlds, 12);
    }
    for (const { confidence } of byPhysics.layouts) {
      const { byPhysics: same, ...own } = confidence;
      expect(own).toMatchObject(same);
      if (own.overMiddle) expect(own.overMiddle.weighed).toEqual(own.overMiddle.physics);
    }
  });

  test('sizes are the differences of the two layouts’ own mean numbers, and are seen beside the scatter of shots', () => {
    const sizes = drawBeliefs(SEED, TINY_BUDGET.worlds, () => WEIGHT);
    const usual = really(setting, MIDDLE_LAYOUT);
    const effectsOf = (layout: LayoutNumbers) => beliefEffects(really(setting, layout), usual);
    for (const [i, layout] of weighed.layouts.entries()) {
      const { overMiddle, overRunnerUp } = layout.confidence;
      const pairs = [
        { said: overMiddle, other: MIDDLE_LAYOUT },
        ...(weighed.layouts[i + 1] ? [{ said: overRunnerUp, other: numbersOf(weighed.layouts[i + 1]) }] : []),
      ];
      for (const { said, other } of pairs) {
        if (!said) continue;
        const [own, others] = [roll(numbersOf(layout)), roll(other)];
        const worlds = bothAtPins(own, others);
        const [ownEffects, otherEffects] = [effectsOf(numbersOf(layout)), effectsOf(other)];
        for (const id of WISHED_IDS) {
          const differences = worlds.map((k) => readingOf(own[k])[id] - readingOf(others[k])[id]);
          const physics = worlds.length > 0 ? mean(differences) : 0;
          expect(said.physics.size[id]).toBeCloseTo(physics, 9);
          const added = worlds.map(
            (k) => addedInUnit(id, ownEffects, sizes[k]) - addedInUnit(id, otherEffects, sizes[k]),
          );
          const both = physics + (worlds.length > 0 ? mean(added) : 0);
          expect(Math.abs(said.weighed.size[id] - both)).toBeLessThan(FIT_ERROR[id]);
          const half = BELIEFS.map(() => 1 / 2); // all beliefs reach from 0 to their most
          const practice = addedInUnit(id, ownEffects, half) - addedInUnit(id, otherEffects, half);
          expect(Math.abs(said.practice.size[id] - practice)).toBeLessThan(FIT_ERROR[id]);
        }
        for (const { size, visibility: seen } of Object.values(said))
          expect(seen).toBe(visibility(size, weighed.scatter, wishedIds(want)));
      }
    }
  });

  test('the first choice is behind neither the usual, where that may be drilled, nor the next', () => {
    for (const { layouts, middle } of [byPhysics, weighed]) {
      const [{ confidence }] = layouts;
      if (middle.objections.length === 0) expect(confidence.beatsMiddle).toBeGreaterThanOrEqual(0.5);
      if (confidence.overRunnerUp) expect(confidence.beatsRunnerUp).toBeGreaterThanOrEqual(0.5);
    }
  });

  test('each voice prefers its own choice to the others’, as far as its own score decides', () => {
    const { practice, physics } = weighed.voices!;
    expect(practice.scores.practice).toBeGreaterThanOrEqual(physics.scores.practice);
    expect(practice.scores.practice).toBeGreaterThanOrEqual(weighed.voices!.weighed.scores.practice);
    expect(weighed.voices!.practicePercent).toBe(100 * WEIGHT);
    expect(weighed.voices!.weighed.text).toBe(weighed.layouts[0].text);
    expect(weighed.voices!.weighed.scores.weighed).toBe(weighed.layouts[0].score);
  });

  test('practice’s choice is set against physics’ where they differ, and what decides is about something wished for', () => {
    const { physics, practice, apart } = weighed.voices!;
    expect(apart === null).toBe(layoutsApart(numbersOf(physics), numbersOf(practice)) < 1);
    if (!apart) return;
    for (const id of WISHED_IDS)
      expect(apart.difference.practice.size[id]).toBeCloseTo(
        practice.overMiddle.practice.size[id] - physics.overMiddle.practice.size[id],
        9,
      );
    if (!apart.belief) {
      expect(practice.scores.practice).toBeLessThanOrEqual(physics.scores.practice);
      return;
    }
    const { id, share, says } = apart.belief;
    const belief = BELIEFS.find((each) => each.id === id)!;
    expect(says).toBe(belief.says);
    expect(wishedIds(want)).toContain(belief.reading);
    expect(share).toBeGreaterThan(0);
  });

  test('headline and beliefs are of the first layout', () => {
    const { headline } = weighed;
    if (!('difference' in headline.params)) expect(weighed.layouts[0].text).toBe(weighed.middle.text);
    else {
      expect(headline.params.layout).toBe(weighed.layouts[0].text);
      expect(headline.params.difference).toEqual(weighed.layouts[0].confidence.overMiddle);
      expect(headline.params.ahead).toBe(weighed.layouts[0].confidence.beatsMiddle);
      expect(headline.params.ties).toBeLessThanOrEqual(headline.params.of);
    }
  });
});
