import { quantile, sampleRankCorrelation } from 'simple-statistics';
import { rollAnswer } from '../../src/answer/roll-answer.js';
import { USUAL_BUDGET } from '../../src/prepare/budget.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { DEMO, demoBalls, demoBowlers, demoLanes, type Shelved } from '../../src/records/read/shelf.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { isOfThisEngine, MODELS, readWholeModel } from '../../src/regression/model-files.js';
import { keyOf } from '../../src/search/candidates/candidates.js';
import type { NominalShot } from '../../src/search/candidates/nominal-shots.js';
import { orderRules } from '../../src/search/order-rules.js';
import { cacheOutcomes } from '../../src/search/outcome-cache.js';
import type { SearchResult } from '../../src/search/race.js';
import { rankInWorlds } from '../../src/search/rank.js';
import { bandAtPins, shareAbove } from '../../src/search/scoring/world-statistics.js';
import { search } from '../../src/search/search.js';
import type { LayoutOutcomes } from '../../src/search/simulate-layouts.js';
import { problemScorer } from '../../src/search/surrogate/problem-scorer.js';
import type { BeliefEffects } from '../../src/search/voices/belief-effects.js';
import { physicsVoice } from '../../src/search/voices/physics-voice.js';
import type { Voice } from '../../src/search/voices/voice.js';
import type { Reached } from '../../src/simulate/readings.js';
import { type Setting, withSetting } from '../../src/simulate/setting.js';
import { shotScatter } from '../../src/simulate/shot-scatter.js';
import { type BruteForce, blindLayouts, bruteForce, remembered, WORLDS } from '../oracles/brute-force.js';
import type { ProofCase } from './proof-cases.js';

const SEED = 1;
const BLIND_SEED = 4242;
const BLIND_WORLDS = 40;

/** Worlds in which brute force and what is recommended are compared, whatever an answer is made with: the answer's own, and more. */
export const PROOF_WORLDS = 256;
const SHOWN = 3;

/** Worlds over which the regression's bands are taken. */
const BAND_WORLDS = 64;

/** How many values lay in a band, of how many. */
export interface Share {
  readonly inside: number;
  readonly of: number;
}

/** How the answer to one case does beside brute force. */
export interface Proof {
  /** Allowed layouts of the grid. */
  readonly layouts: number;
  /** Range of their mean scores, points. */
  readonly range: number;
  /** What the recommended layout lacks to brute force's best, over that range; negative when it is better. */
  readonly regret: number;
  /** Shots of physics that the search and the ranking rolled. */
  readonly shots: number;
  /** Of the answer: values in worlds of another seed inside its 90 % bands. */
  readonly bands: Share;
  /** Share of worlds in which the answer beats the usual middle layout: as it claims, and in worlds of another seed. */
  readonly beatsMiddle: { readonly claimed: number; readonly blind: number };
  /** Of the regression alone; null, with why, where it was not asked. */
  readonly regression: RegressionProof | null;
  readonly why: string | null;
}

/** How the regression alone does on the layouts and worlds of brute force. */
export interface RegressionProof {
  /** Rank correlation of mean scores. */
  readonly ranks: number;
  /** By reaction number: values in worlds of another seed inside its 90 % bands. */
  readonly bands: Readonly<Record<keyof Reached['reaction'], Share>>;
}

interface Settings {
  readonly setting: Setting;
  readonly proof: Setting;
  readonly blind: Setting;
}

/** What the engine does now with the demo shot: numbers that are remembered depend on it. */
function physicsNow(): string {
  const record = <T>(list: readonly Shelved<T>[], id: string): T =>
    list.find((each) => each.id === id)!.record;
  const { reaction } = rollAnswer({
    bowler: record(demoBowlers(), DEMO.bowler),
    ball: record(demoBalls(), DEMO.ball),
    lane: record(demoLanes(), DEMO.lane),
    layout: MIDDLE_LAYOUT,
  });
  return JSON.stringify(reaction);
}

/**
 * Brute force of one case beside the setting of its answer and two others: with the worlds they are compared in, and with worlds of
 * another seed.
 *
 * @param folder  where brute force is remembered between runs; null to work it out anew
 */
const withBruteForce = <T>(
  { inputs }: ProofCase,
  folder: string | null,
  use: (brute: BruteForce, settings: Settings) => Promise<T>,
  models?: string | null,
): Promise<T> => {
  const options = {
    workers: 1,
    pinSide: 'above' as const,
    models,
    practiceWeight: 0, // brute force knows physics alone
  };
  const budget = { ...USUAL_BUDGET, worlds: PROOF_WORLDS };
  return withSetting(inputs, { ...options, seed: SEED }, (setting) =>
    withSetting(inputs, { ...options, seed: SEED, budget }, (proof) =>
      withSetting(inputs, { ...options, seed: BLIND_SEED }, async (blind) => {
        const of = { inputs, physics: physicsNow(), seeds: [SEED, BLIND_SEED], worlds: PROOF_WORLDS };
        const brute = await remembered(folder, of, () => bruteForce(inputs.want, proof, blind));
        return use(brute, { setting, proof, blind });
      }),
    ),
  );
};

/**
 * Proves one case.
 *
 * @param folder  where what takes long is remembered, by case, physics, model and budget; to be emptied when the search has changed otherwise
 * @param models  folder of the regression; null for physics alone
 */
export async function prove(
  proofCase: ProofCase,
  folder: string | null = null,
  models?: string | null,
): Promise<Proof> {
  const stored = models === null ? null : await readWholeModel(models ?? MODELS);
  const model =
    stored?.kind === 'ready' && (await isOfThisEngine(stored.card)) ? stored.card.file.sha256 : null;
  const of = { proof: proofCase.inputs, physics: physicsNow(), model, budget: USUAL_BUDGET };
  return remembered(folder, of, () =>
    withBruteForce(
      proofCase,
      folder,
      async (brute, { setting, proof, blind }) => {
        const { bowler, want } = proofCase.inputs;
        const voices = await search(want, setting);
        const result = voices.weighed;
        const order = orderRules(want, shotScatter(setting.problem, bowler, SEED), voices, setting);
        const { ranked, middle } = await rankInWorlds(result, SHOWN, setting, order);
        const range = Math.max(...brute.means) - Math.min(...brute.means);
        const best = await inProofWorlds(ranked[0], result, proof);
        const { surveyed } = result;
        return {
          layouts: brute.layouts.length,
          range,
          regret: (brute.best - best) / range,
          shots: result.shots(),
          ...(await blindly(ranked[0], middle, result, blind)),
          regression: 'why' in surveyed ? null : await alone(brute, result, setting),
          why: 'why' in surveyed ? surveyed.why.code : null,
        };
      },
      models,
    ),
  );
}

/** Mean score of what is recommended in the worlds it is compared in. */
async function inProofWorlds(
  best: LayoutOutcomes,
  { targets }: SearchResult,
  proof: Setting,
): Promise<number> {
  const cache = (await cacheOutcomes(proof)).by(physicsVoice(targets));
  await cache.roll([{ layout: best.layout, outcome: best.nominal }], PROOF_WORLDS);
  return cache.get(best.layout)!.meanScore;
}

/** Tries bands and confidence of an answer in worlds of another seed. */
async function blindly(
  best: LayoutOutcomes,
  usual: LayoutOutcomes,
  { targets }: SearchResult,
  blind: Setting,
): Promise<Pick<Proof, 'bands' | 'beatsMiddle'>> {
  const cache = (await cacheOutcomes(blind)).by(physicsVoice(targets));
  await cache.roll([{ layout: best.layout, outcome: best.nominal }, cache.middle], BLIND_WORLDS);
  const own = cache.get(best.layout)!;
  const shares = NUMBERS.map((name) => {
    const band = bandAtPins(best.worlds.outcomes, ({ reaction }) => reaction[name]);
    return shareWithin(own.outcomes, name, band);
  });
  const middle = cache.get(cache.middle.layout)!;
  return {
    bands: shares.reduce(addShares),
    beatsMiddle: { claimed: shareAbove(best.worlds, usual.worlds), blind: shareAbove(own, middle) },
  };
}

/** Asks the regression for the layouts and worlds of brute force. */
async function alone(
  { layouts, means, targets, blind }: BruteForce,
  { found }: SearchResult,
  setting: Setting,
): Promise<RegressionProof> {
  const regression = await setting.regression.open();
  if (regression.kind === 'unusable') throw new Error(regression.why.code);
  const shots = new Map(found.map(({ layout, outcome }) => [keyOf(layout), { layout, outcome }]));
  const nominal = layouts.map((layout): NominalShot => shots.get(keyOf(layout))!);
  const scorer = await problemScorer(layouts, nominal, setting, regression);
  if ('why' in scorer) throw new Error(scorer.why.code);
  const all = Int32Array.from(layouts.keys());
  const some = Int32Array.from(blindLayouts(layouts.length));
  const expected = layouts.map(() => 0);
  const reached = new Map([...some].map((place): [number, Reached[]] => [place, []]));
  const scoreIn = scorer.by(
    overheard(physicsVoice(targets), layouts, (place, { shot, reaction }) =>
      reached.get(place)?.push({ shot, reaction: { ...reaction } }),
    ),
  );
  for (let world = 0; world < BAND_WORLDS; world++)
    await scoreIn(world, world < WORLDS ? all : some, (place, score) => {
      if (world < WORLDS) expected[place] += score / WORLDS;
    });
  const within = (name: keyof Reached['reaction']): Share =>
    [...some]
      .map((place, i) => {
        const values = atPins(reached.get(place)!, name);
        if (values.length === 0) return { inside: 0, of: 0 };
        const band = { low: quantile(values, 0.05), high: quantile(values, 0.95) };
        return shareWithin(blind[i], name, band);
      })
      .reduce(addShares);
  return {
    ranks: sampleRankCorrelation([...means], expected),
    bands: {
      hookStart: within('hookStart'),
      sharpness: within('sharpness'),
      totalHook: within('totalHook'),
      entryAngle: within('entryAngle'),
    },
  };
}

/** A voice that tells what it is asked to score, beside the place of its layout. */
function overheard(
  voice: Voice,
  layouts: readonly LayoutNumbers[],
  tell: (place: number, reached: Reached) => void,
): Voice {
  const places = new Map<BeliefEffects, number>();
  return {
    ...voice,
    effectsOf(layout) {
      const own = Float64Array.from(voice.effectsOf(layout));
      places.set(own, layouts.indexOf(layout));
      return own;
    },
    reached(effects, world, byPhysics) {
      tell(places.get(effects)!, byPhysics);
      return voice.reached(effects, world, byPhysics);
    },
  };
}

/** Reaction numbers with bands. */
export const NUMBERS = ['hookStart', 'sharpness', 'totalHook', 'entryAngle'] as const;

const atPins = (rows: readonly Reached[], name: keyof Reached['reaction']): number[] =>
  rows.filter(({ shot }) => shot === 'pins').map(({ reaction }) => reaction[name]);

function shareWithin(
  rows: readonly Reached[],
  name: keyof Reached['reaction'],
  { low, high }: { readonly low: number; readonly high: number },
): Share {
  const values = atPins(rows, name);
  return { inside: values.filter((value) => value >= low && value <= high).length, of: values.length };
}

export const addShares = (a: Share, b: Share): Share => ({ inside: a.inside + b.inside, of: a.of + b.of });
