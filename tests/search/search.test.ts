import { beforeAll, describe, expect, test } from 'vitest';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { keyOf } from '../../src/search/candidates/candidates.js';
import { rejectByMarks } from '../../src/search/candidates/constraints.js';
import { drilledGrid } from '../../src/search/candidates/drilled-grid.js';
import { layoutsApart, pickDiffering } from '../../src/search/candidates/pick-differing.js';
import { cacheOutcomes } from '../../src/search/outcome-cache.js';
import type { SearchResult } from '../../src/search/race.js';
import { score } from '../../src/search/scoring/score.js';
import { targetsOf } from '../../src/search/scoring/target.js';
import { ARRIVES_ALIKE } from '../../src/search/scoring/world-statistics.js';
import { search } from '../../src/search/search.js';
import type { Survey } from '../../src/search/surrogate/survey.js';
import type { Trial } from '../../src/simulate/evaluator.js';
import { type Setting, withSetting } from '../../src/simulate/setting.js';
import { type MadeUpShot, madeUpEngine, madeUpOutcome, madeUpSetting } from '../support/made-up-setting.js';
import { layoutAt } from '../support/outcomes.js';
import { averageBowler, houseLane, plainBall } from '../support/problems.js';
import { SMALL_BUDGET } from '../support/small-budget.js';

const want = { hookStart: '39 ft' } as const;

/** Layouts hook late around one of them, earlier all around; worlds move all alike, and tilt what the angle does. */
const hill: MadeUpShot = ({ drillingAngleDeg, pinToPapIn, valAngleDeg }, world) => {
  const off =
    ((drillingAngleDeg - 30) / 40) ** 2 + ((pinToPapIn - 3.5) / 2) ** 2 + ((valAngleDeg - 50) / 40) ** 2;
  const luck = world === 0 ? 0 : Math.sin(7 * world);
  return { hookStartFt: 36 + 4 * Math.exp(-off) + luck + 0.004 * luck * (drillingAngleDeg - 50) };
};

/** No layout with the drilling angle of 70° may be drilled: its ring runs over a hole; with 90° the ball is lost. */
const barred: MadeUpShot = (layout, world) => ({
  ...hill(layout, world),
  shot: layout.drillingAngleDeg === 90 ? 'gutter' : 'pins',
});

const markable = (setting: Setting): readonly LayoutNumbers[] =>
  drilledGrid(setting.budget.grid.finest, setting).filter(
    (layout) => rejectByMarks(layout, setting.ball, setting.practice) === null,
  );
const layoutsOf = ({ found }: SearchResult): readonly LayoutNumbers[] => found.map(({ layout }) => layout);

describe('a search by physics alone', () => {
  const { setting, trials } = madeUpSetting(barred, { practiceWeight: 0 });
  const searched = search(want, setting);

  test('looks at every layout of the coarse grid, and says why some are set aside', async () => {
    const { weighed } = await searched;
    const coarse = drilledGrid(setting.budget.grid.coarse, setting);
    const lost = coarse.filter(({ drillingAngleDeg }) => drillingAngleDeg === 90);
    const nearHoles = coarse.filter(
      (layout) => rejectByMarks(layout, setting.ball, setting.practice) !== null,
    );
    const allowed = coarse.filter((layout) => !lost.includes(layout) && !nearHoles.includes(layout));
    expect(nearHoles.length).toBeGreaterThan(0);
    expect(weighed.attained.map(({ layout }) => layout)).toEqual(allowed);
    for (const layout of allowed) expect(layoutsOf(weighed)).toContainEqual(layout);
    for (const layout of lost) expect(layoutsOf(weighed)).not.toContainEqual(layout);
    const counted = Object.fromEntries(weighed.rejected.map(({ why, count }) => [why.code, count]));
    expect(counted['ball-goes-into-gutter']).toBeGreaterThanOrEqual(
      lost.filter((layout) => !nearHoles.includes(layout)).length,
    );
    expect(counted['pin-near-hole']).toBe(nearHoles.length); // later ones are looked for among those that may be marked
    expect(weighed.candidates).toBe(drilledGrid(setting.budget.grid.finest, setting).length);
  });

  test('aims for what that grid attains, and stands by its scores', async () => {
    const { weighed } = await searched;
    const outcomes = weighed.attained.map(({ outcome }) => outcome);
    expect(weighed.targets).toEqual(targetsOf(want, outcomes));
    for (const { outcome, score: scored } of weighed.found)
      expect(scored).toBe(score(outcome, weighed.targets));
  });

  test('lists by what is expected; what was rolled in no world comes last, by its nominal score', async () => {
    const { weighed } = await searched;
    const { found, cache } = weighed;
    const rolled = new Set(cache.known().map(({ layout }) => keyOf(layout)));
    const count = found.filter(({ expected }) => expected > Number.NEGATIVE_INFINITY).length;
    expect(rolled.size).toBeGreaterThan(10);
    expect(new Set(found.slice(0, count).map(({ layout }) => keyOf(layout)))).toEqual(rolled);
    for (let i = 1; i < found.length; i++) {
      expect(found[i].expected).toBeLessThanOrEqual(found[i - 1].expected);
      if (i > count) expect(found[i].score).toBeLessThanOrEqual(found[i - 1].score);
    }
  });

  test('finds what brute force over all layouts in all worlds finds, within 5 points though it tries a thirtieth of it', async () => {
    const { weighed, byPhysics } = await searched;
    const { setting: again } = madeUpSetting(barred);
    const brute = (await cacheOutcomes(again)).by(weighed.voice);
    const all = markable(again).filter(({ drillingAngleDeg }) => drillingAngleDeg < 90);
    await brute.roll(
      all.map((layout) => ({ layout, outcome: madeUpOutcome(barred(layout, 0)) })),
      again.problem.luck.length,
    );
    const mean = (layout: LayoutNumbers): number => brute.get(layout)!.meanScore;
    const best = Math.max(...all.map(mean));
    expect(best - mean(weighed.found[0].layout)).toBeLessThan(5);
    expect(Math.abs(weighed.found[0].expected - mean(weighed.found[0].layout))).toBeLessThan(5);
    expect(byPhysics.known().length).toBe(weighed.cache.known().length);
  });

  test('counts the shots it rolls, and has nothing from practice or a regression', async () => {
    const { weighed, practice } = await searched;
    expect(weighed.shots()).toBe(trials.length - 1); // but for the nominal shot of the usual layout, which targets are moved from
    expect(practice).toBeNull();
    expect(weighed.surveyed).toMatchObject({ why: { code: 'regression-missing' } });
    expect(weighed.byRegression(MIDDLE_LAYOUT)).toBeNull();
  });
});

describe('a search by physics and practice', () => {
  /** What physics alone finds beside it. */
  async function both() {
    const { setting } = madeUpSetting(barred);
    const physics: SearchResult[] = [];
    const result = await search(want, setting, { onPhysics: (found) => physics.push(found) });
    return { setting, result, physics };
  }

  test('hands on what physics finds, as if it were alone', async () => {
    const { physics, result } = await both();
    expect(physics).toHaveLength(1);
    const alone = await search(want, madeUpSetting(barred, { practiceWeight: 0 }).setting);
    const listed = ({ found }: SearchResult) => found.map(({ layout, expected }) => ({ layout, expected }));
    expect(listed(physics[0])).toEqual(listed(alone.weighed));
    expect(listed(result.weighed)).not.toEqual(listed(physics[0]));
    expect(result.weighed.voice).toBe(result.beliefs.voice);
    const without = await search(want, madeUpSetting(barred).setting);
    expect(listed(without.weighed)).toEqual(listed(result.weighed));
    expect(without.practice).toBeNull();
  });

  test('names the best by practice alone that may be drilled, of equals the one nearest to the usual', async () => {
    const { setting, result } = await both();
    const { byPractice } = result.beliefs;
    const may = markable(setting).filter(({ drillingAngleDeg }) => drillingAngleDeg < 90);
    const most = Math.max(...may.map(byPractice));
    const best = may.filter((layout) => byPractice(layout) === most);
    const nearest = Math.min(...best.map((layout) => layoutsApart(layout, MIDDLE_LAYOUT)));
    expect(byPractice(result.practice!.layout)).toBe(most);
    expect(layoutsApart(result.practice!.layout, MIDDLE_LAYOUT)).toBe(nearest);
  });
});

test('where the best by practice may not be drilled, the best that may is named', async () => {
  const bestOf = async (shot: MadeUpShot) => {
    const { setting } = madeUpSetting(shot);
    const { practice, beliefs } = await search(want, setting, { onPhysics: () => {} });
    return { best: practice!.layout, may: markable(setting), byPractice: beliefs.byPractice };
  };
  const { best } = await bestOf(barred);
  const isLost = (layout: LayoutNumbers): boolean =>
    layout.drillingAngleDeg === 90 || layoutsApart(layout, best) < 0.01;
  const next = await bestOf((layout, world) => ({
    ...barred(layout, world),
    shot: isLost(layout) ? 'gutter' : 'pins',
  }));
  expect(next.byPractice(best)).toBe(Math.max(...next.may.map(next.byPractice)));
  const may = next.may.filter((layout) => !isLost(layout));
  expect(next.byPractice(next.best)).toBe(Math.max(...may.map(next.byPractice)));
});

test('where the first that practice would try all end in the gutter, the best of those that were rolled is named', async () => {
  const FAR = 3;
  const apart = (layout: LayoutNumbers): number => layoutsApart(layout, MIDDLE_LAYOUT);
  const { setting } = madeUpSetting((layout, world) => ({
    ...hill(layout, world),
    shot: apart(layout) < FAR ? 'gutter' : 'pins',
  }));
  const { practice, weighed, beliefs } = await search(want, setting, { onPhysics: () => {} });
  const { byPractice } = beliefs;
  const order = [...markable(setting)].sort((a, b) => byPractice(b) - byPractice(a) || apart(a) - apart(b));
  expect(order.slice(0, 120).every((layout) => apart(layout) < FAR)).toBe(true); // as many as are tried
  const { layout } = practice!;
  expect(apart(layout)).toBeGreaterThanOrEqual(FAR);
  for (const rolled of weighed.attained)
    expect(byPractice(layout)).toBeGreaterThanOrEqual(byPractice(rolled.layout));
});

describe('where there is little to go by', () => {
  test('no layout may be drilled: nothing is found, nothing aimed for, and nothing thrown', async () => {
    const { setting } = madeUpSetting(() => ({ shot: 'gutter' }));
    const { weighed, practice } = await search(want, setting, { onPhysics: () => {} });
    expect([weighed.found, weighed.targets, practice]).toEqual([[], [], null]);
    expect(weighed.rejected.map(({ why }) => why.code)).toContain('ball-goes-into-gutter');
  });

  test('so few layouts may be drilled that the regression is not asked', async () => {
    const { setting } = madeUpSetting((layout, world) => ({
      ...hill(layout, world),
      shot: layout.pinToPapIn > 5 ? 'pins' : 'gutter',
    }));
    const survey = { ...setting.budget.survey, leastNominal: 1000 };
    const open = () => Promise.reject(new Error('not to be opened'));
    const few = {
      ...setting,
      budget: { ...setting.budget, survey },
      regression: { ...setting.regression, open },
    };
    const { weighed } = await search(want, few);
    expect(weighed.surveyed).toEqual({ why: { code: 'too-few-layouts-to-tune', params: {} } });
    expect(weighed.found[0].layout.pinToPapIn).toBeGreaterThan(5);
  });
});

describe('a search with the regression, tuned to the made-up engine', () => {
  const inputs = { bowler: averageBowler, ball: plainBall, lane: houseLane, want };
  const budget = { ...SMALL_BUDGET, cores: 2, worlds: 8 };
  const options = { seed: 1, workers: 1, pinSide: 'above', budget, practiceWeight: 0 } as const;
  const also = layoutAt(13, 2.3, 66);
  let found: SearchResult;
  let trials: Trial[];
  let setting: Setting;
  beforeAll(async () => {
    await withSetting(inputs, options, async (real) => {
      const engine = madeUpEngine(barred, real.ball.published.radius);
      trials = engine.trials;
      setting = { ...real, evaluator: engine.evaluator };
      ({ weighed: found } = await search(want, setting, { also: [also, MIDDLE_LAYOUT] }));
      const { surveyed } = found;
      if ('why' in surveyed) throw new Error(surveyed.why.code);
      await surveyed.look([also]); // while the regression is open
    });
  });

  test('surveys what may be marked and the usual, and may look at more', () => {
    const survey = found.surveyed as Survey;
    const may = markable(setting);
    expect(new Set(survey.ranked.map(keyOf))).toEqual(new Set([...may, MIDDLE_LAYOUT].map(keyOf)));
    expect(survey.ranked).toHaveLength(new Set([...may, MIDDLE_LAYOUT].map(keyOf)).size);
    expect(survey.scores(also)).toHaveLength(8);
    expect(found.byRegression(may[5])).toBe(survey.expected(may[5]));
    expect(found.byRegression(layoutAt(11, 2.2, 66))).toBeNull();
  });

  test('counts the shots that it was tuned to', () => {
    const survey = found.surveyed as Survey;
    expect(survey.shots).toBe(budget.survey.shotsInWorlds);
    expect(survey.tunedTo).toBeLessThanOrEqual(found.attained.length + survey.shots);
    expect(survey.tunedTo).toBeGreaterThan(found.attained.length);
    expect(found.shots()).toBe(trials.length - 1);
  });

  test('races the likeliest of the survey and the best of the grid', () => {
    const { race } = budget;
    const raced = new Set(found.cache.known().map(({ layout }) => keyOf(layout)));
    const nominally = [...found.attained].sort(
      (a, b) => score(b.outcome, found.targets) - score(a.outcome, found.targets),
    );
    for (const { layout } of nominally.slice(0, race.surveyed.leastOfGrid))
      expect(raced).toContain(keyOf(layout));
    const survey = found.surveyed as Survey;
    const least = survey.arrives(MIDDLE_LAYOUT)! - ARRIVES_ALIKE;
    const { layouts, apart } = budget.survey.looks;
    const likeliest = pickDiffering(
      survey.ranked.filter((layout) => survey.arrives(layout)! >= least).map((layout) => ({ layout })),
      layouts,
      apart,
    ).filter(({ layout }) => layout.drillingAngleDeg < 90);
    const starters = likeliest.slice(0, race.surveyed.starters - race.surveyed.leastOfGrid);
    expect(starters.length).toBeGreaterThan(3);
    for (const { layout } of starters) expect(raced).toContain(keyOf(layout));
    expect([...raced].some((key) => !found.attained.some(({ layout }) => keyOf(layout) === key))).toBe(true);
    expect(found.found[0].expected).toBeGreaterThan(found.found[5].expected);
  });
});
