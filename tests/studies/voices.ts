import { uniformFloat64 } from 'pure-rand/distribution/uniformFloat64';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { meanSimple } from 'simple-statistics';
import { fromKeys } from '../../src/base/from-keys.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { Band } from '../../src/records/answers/answer.js';
import { COMPARED_IDS, type ComparedId, NUMBER_OF_WISH } from '../../src/records/schemas/reaction-numbers.js';
import { BELIEFS } from '../../src/records/shared/beliefs.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { nominalShots } from '../../src/search/candidates/nominal-shots.js';
import { orderRules } from '../../src/search/order-rules.js';
import { cacheOutcomes } from '../../src/search/outcome-cache.js';
import type { SearchResult } from '../../src/search/race.js';
import { rankInWorlds } from '../../src/search/rank.js';
import { wishMiss } from '../../src/search/scoring/score.js';
import { type Target, targetsOf } from '../../src/search/scoring/target.js';
import { bandAtPins, shiftTargets } from '../../src/search/scoring/world-statistics.js';
import { search } from '../../src/search/search.js';
import { drawBeliefs, expectedSizes } from '../../src/search/voices/draw-beliefs.js';
import { physicsVoice } from '../../src/search/voices/physics-voice.js';
import { problemBeliefs } from '../../src/search/voices/problem-beliefs.js';
import type { Voice } from '../../src/search/voices/voice.js';
import { believedOutcome, weighedVoice } from '../../src/search/voices/weighed-voice.js';
import { reader, wishedInUnit } from '../../src/simulate/readings.js';
import { type RecommendInputs, withSetting } from '../../src/simulate/setting.js';
import { type ShotScatter, shotScatter } from '../../src/simulate/shot-scatter.js';
import type { Outcome } from '../../src/simulate/simulator.js';
import { underOtherLaw } from './other-law.js';
import type { ProofCase } from './proof-cases.js';

/** What chose a layout. */
export const CHOOSERS = ['physics', 'practice', 'weighed'] as const;
type Chooser = (typeof CHOOSERS)[number];

/** Ways in which things may really be: the friction law, and what of practice's beliefs is true. */
export const TRUTHS = {
  'physics as assumed, no belief': { law: 'assumed', chance: 0, times: 1 },
  'physics as assumed, half of the beliefs, twice as large': { law: 'assumed', chance: 0.5, times: 2 },
  'physics as assumed, all beliefs, twice as large': { law: 'assumed', chance: 1, times: 2 },
  'another friction law, no belief': { law: 'other', chance: 0, times: 1 },
  'another friction law, half of the beliefs, twice as large': { law: 'other', chance: 0.5, times: 2 },
} as const satisfies Readonly<
  Record<string, { readonly law: 'assumed' | 'other'; readonly chance: number; readonly times: number }>
>;
export type Truth = keyof typeof TRUTHS;

/** What a chosen layout lacks to the best of those tried. */
export interface Regret {
  /** Of the mean score, over the range of mean scores of those tried. */
  readonly ofRange: number;
  /** Of how far it misses what is wished for, in standard deviations of the bowler's shots. */
  readonly inShots: number;
}

/** How many values lay in a band, of how many. */
interface Inside {
  readonly inside: number;
  readonly of: number;
}

/** What is found of one case. */
export interface VoicesFound {
  readonly regrets: Regrets;
  /** Of the weighed choice: reaction numbers in worlds of another seed, beliefs drawn by another generator, inside its 90 % bands. */
  readonly bands: Inside;
}

/** Under each truth, for each chooser. */
export type Regrets = Readonly<Record<Truth, Readonly<Record<Chooser, Regret>>>>;

const SEED = 1;
const TRUE_SEED = 4242;
const TRUE_WORLDS = 32;

/** Allowed layouts, spread over all, that a choice is held against. */
const AGAINST = 48;

/**
 * Lets physics alone, practice alone and both weighed choose, and tries their choices in worlds of another seed that are made by
 * another friction law, or in which beliefs hold that are larger than anybody said, or both.
 */
export async function voicesRegret({ inputs }: ProofCase): Promise<VoicesFound> {
  const options = { workers: 1, pinSide: 'above' as const };
  const { choices, against, bands } = await withSetting(
    inputs,
    { ...options, seed: SEED },
    async (setting) => {
      let byPhysics: SearchResult | undefined;
      const voices = await search(inputs.want, setting, {
        onPhysics: (found) => {
          byPhysics = found;
        },
      });
      const scatter = shotScatter(setting.problem, inputs.bowler, SEED);
      const rules = orderRules(inputs.want, scatter, voices, setting);
      const weighed = await rankInWorlds(voices.weighed, 1, setting, rules);
      const physics = await rankInWorlds(byPhysics!, 1, setting, { ...rules, byPractice: () => 0 });
      const [best] = weighed.ranked;
      const even = voices.weighed.attained.map(({ layout }) => layout);
      const step = Math.max(1, even.length / AGAINST);
      return {
        choices: {
          physics: physics.ranked[0].layout,
          practice: voices.practice!.layout,
          weighed: best.layout,
        },
        bands: fromKeys(COMPARED_IDS, (id) => bandAtPins(best.worlds.outcomes, reader(id))),
        against: Array.from({ length: Math.min(AGAINST, even.length) }, (_, i) => even[Math.floor(i * step)]),
      };
    },
  );
  const regrets: Partial<Regrets> = {};
  for (const law of ['assumed', 'other'] as const)
    Object.assign(
      regrets,
      await regretsUnder(
        law === 'assumed' ? inputs : { ...inputs, lane: underOtherLaw(inputs.lane, 'hyperbola') },
        law,
        choices,
        against,
      ),
    );
  return {
    regrets: regrets as Regrets,
    bands: await insideBands(inputs, choices.weighed, against, bands),
  };
}

/** Tries bands in worlds of another seed in which each belief holds or not, and in some size, by another generator. */
async function insideBands(
  inputs: RecommendInputs,
  layout: LayoutNumbers,
  against: readonly LayoutNumbers[],
  bands: Readonly<Record<ComparedId, Band>>,
): Promise<Inside> {
  const options = { workers: 1, pinSide: 'above' as const, seed: TRUE_SEED };
  return withSetting(inputs, options, async (setting) => {
    const rolled = nominalShots(setting);
    await rolled.roll([MIDDLE_LAYOUT, layout]);
    const outcomes = await cacheOutcomes(setting);
    const chosen = rolled.get(layout);
    if (!chosen) return { inside: 0, of: 0 };
    const { effectsOf } = problemBeliefs(inputs.want, setting.problem, against, [chosen], outcomes.middle, {
      seed: TRUE_SEED,
      chanceOf: () => 0,
    });
    const generator = xoroshiro128plus(TRUE_SEED);
    const uniform = (): number => uniformFloat64(generator);
    const cache = outcomes.by(physicsVoice([]));
    await cache.roll([chosen], TRUE_WORLDS);
    const played = cache.get(layout)!.outcomes.filter(({ shot }) => shot === 'pins');
    const values = played.flatMap((outcome) => {
      const sizes = BELIEFS.map(() => (uniform() < 0.5 ? uniform() : 0));
      const believed = believedOutcome(outcome, effectsOf(layout), sizes);
      return COMPARED_IDS.map((id) => ({ value: reader(id)(believed), band: bands[id] }));
    });
    const inside = values.filter(({ value, band }) => value >= band.low && value <= band.high).length;
    return { inside, of: values.length };
  });
}

async function regretsUnder(
  inputs: RecommendInputs,
  law: 'assumed' | 'other',
  choices: Readonly<Record<Chooser, LayoutNumbers>>,
  against: readonly LayoutNumbers[],
): Promise<Partial<Regrets>> {
  const options = { workers: 1, pinSide: 'above' as const, seed: TRUE_SEED };
  return withSetting(inputs, options, async (setting) => {
    const rolled = nominalShots(setting);
    await rolled.roll([MIDDLE_LAYOUT, ...against, ...Object.values(choices)]);
    const even = rolled.allowed();
    const targets = targetsOf(
      inputs.want,
      even.map(({ outcome }) => outcome),
    );
    const outcomes = await cacheOutcomes(setting);
    const beliefs = problemBeliefs(inputs.want, setting.problem, against, even, outcomes.middle, {
      seed: TRUE_SEED,
      chanceOf: () => 0,
    });
    const physics = outcomes.by(physicsVoice(targets));
    await physics.roll(even, TRUE_WORLDS);
    const middle = toLayout(MIDDLE_LAYOUT, setting.ball.published.radius);
    const { launch } = outcomes.middle.outcome;
    const luck = await setting.evaluator.evaluate(
      Array.from({ length: TRUE_WORLDS }, (_, k) => ({
        layout: middle,
        world: setting.problem.worlds.length + k,
        launch,
      })),
    );
    const scatter = shotScatter(setting.problem, inputs.bowler, TRUE_SEED);
    const found: Partial<Record<Truth, Record<Chooser, Regret>>> = {};
    for (const [name, truth] of Object.entries(TRUTHS)) {
      if (truth.law !== law) continue;
      const times = (sizes: readonly number[]): readonly number[] => sizes.map((size) => truth.times * size);
      const sizes = drawBeliefs(TRUE_SEED, setting.problem.luck.length, () => truth.chance).map(times);
      const voice: Voice = weighedVoice(
        inputs.want,
        even,
        beliefs.effectsOf,
        sizes,
        times(expectedSizes(() => truth.chance)),
      );
      const cache = outcomes.by(voice);
      const means = even.map(({ layout }) => cache.get(layout)!.meanScore);
      const [best, worst] = [Math.max(...means), Math.min(...means)];
      const aimed = luck.map((here, k) => shiftTargets(voice.targetsIn(k), here, outcomes.middle.outcome));
      const missOf = (layout: LayoutNumbers): number => meanMiss(cache.get(layout)!.outcomes, aimed, scatter);
      const misses = even.map(({ layout }) => missOf(layout));
      const [least, most] = [Math.min(...misses), Math.max(...misses)];
      // a choice that may not be drilled where things are otherwise is as bad as the worst
      const regretOf = (layout: LayoutNumbers): Regret => {
        const isAllowed = rolled.get(layout) !== undefined;
        return {
          ofRange: (best - (isAllowed ? cache.get(layout)!.meanScore : worst)) / Math.max(1e-9, best - worst),
          inShots: (isAllowed ? missOf(layout) : most) - least,
        };
      };
      found[name as Truth] = {
        physics: regretOf(choices.physics),
        practice: regretOf(choices.practice),
        weighed: regretOf(choices.weighed),
      };
    }
    return found;
  });
}

/** Root mean square miss of the wishes, in standard deviations of shots; mean over the worlds in which the ball reaches the pins. */
function meanMiss(
  outcomes: readonly Outcome[],
  aimed: readonly (readonly Target[])[],
  scatter: ShotScatter,
): number {
  const misses = outcomes.flatMap((outcome, k) => {
    if (outcome.shot !== 'pins') return [];
    const squares = aimed[k].map((target) => {
      const off = wishMiss(outcome, target) * (target.high - target.low);
      return (wishedInUnit(target.wish, off) / scatter[NUMBER_OF_WISH[target.wish]]) ** 2;
    });
    return [Math.sqrt(meanSimple(squares))];
  });
  return misses.length > 0 ? meanSimple(misses) : 0;
}

/** The mean regret of each chooser over cases, under the truth in which it is greatest. */
export const worstMeans = (all: readonly Regrets[], by: keyof Regret): Readonly<Record<Chooser, number>> => {
  const worst = (chooser: Chooser): number =>
    Math.max(...Object.keys(TRUTHS).map((truth) => meanRegret(all, truth as Truth, chooser, by)));
  return { physics: worst('physics'), practice: worst('practice'), weighed: worst('weighed') };
};

export const meanRegret = (
  all: readonly Regrets[],
  truth: Truth,
  chooser: Chooser,
  by: keyof Regret,
): number => meanSimple(all.map((regrets) => regrets[truth][chooser][by]));
