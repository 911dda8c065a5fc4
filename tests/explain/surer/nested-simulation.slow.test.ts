import { mean, probit, sampleStandardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';
import { DEGREE, from, INCH } from '../../../src/base/units.js';
import { alternativesTo } from '../../../src/explain/surer/alternatives.js';
import { smoothColumns } from '../../../src/explain/surer/smooth-columns.js';
import { variedUnknowns } from '../../../src/explain/surer/unknowns.js';
import { valueOfKnowing } from '../../../src/explain/surer/value-of-knowing.js';
import { scrambledSobol } from '../../../src/math/scrambled-sobol.js';
import { USUAL_BUDGET } from '../../../src/prepare/budget.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import type { LayoutNumbers } from '../../../src/records/text/layout-text.js';
import { drilledGrid } from '../../../src/search/candidates/drilled-grid.js';
import { cacheOutcomes, type ScoredCache } from '../../../src/search/outcome-cache.js';
import { targetsOf } from '../../../src/search/scoring/target.js';
import { physicsVoice } from '../../../src/search/voices/physics-voice.js';
import { type Deviations, luckOf, NO_DEVIATIONS, scatterOf } from '../../../src/simulate/deviations.js';
import { localEvaluator } from '../../../src/simulate/evaluator.js';
import { type RecommendInputs, type Setting, withSetting } from '../../../src/simulate/setting.js';
import type { Outcome } from '../../../src/simulate/simulator.js';

/*
 * The same value by brute force: at many values of what could be known, all layouts are rolled in all worlds with that value put in, and
 * the best is taken. Nested simulation; Strong, Oakley & Brennan, Med. Decis. Making 34, 311, 2014, take it as the yardstick.
 */

/** Values of what could be known, and worlds that each is put into. */
const VALUES = 24;
const WORLDS = 128;

/** Worlds of the fit: so many that luck is small beside what is looked for. */
const MANY = 1024;

const EVEN = { arcIn: 1, angleDeg: 30 };

/** The best of some for this case, and one that lies between. */
const LAYOUTS = [
  [75, 5.375, 25],
  [85, 5.5, 21],
  [80, 5.875, 20],
  [90, 5.25, 25],
  [80, 6, 20],
].map(([drillingAngleDeg, pinToPapIn, valAngleDeg]) => ({ drillingAngleDeg, pinToPapIn, valAngleDeg }));

const uncertainty = { axisRotationDeg: 11, papOverIn: 0.4, papUpIn: 0.45 };
const { bowlers, balls, lanes } = demoShelf();
const recordOf = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;
const inputs: RecommendInputs = {
  bowler: { ...recordOf(bowlers, 'rev-dominant'), uncertainty },
  ball: recordOf(balls, 'asymmetric-strong'),
  lane: recordOf(lanes, 'long'),
  want: { totalHook: 5 },
};

/** Rolls all layouts in some worlds, the wishes aiming at what an even grid attains. */
async function roller(setting: Setting): Promise<(worlds: readonly Deviations[]) => Promise<ScoredCache>> {
  const { problem } = setting;
  const nominal = async (layouts: readonly LayoutNumbers[]): Promise<readonly Outcome[]> =>
    localEvaluator(problem).evaluate(
      layouts.map((layout) => ({ layout: toLayout(layout, problem.ball.published.radius), world: 0 })),
    );
  const voice = physicsVoice(targetsOf(inputs.want, await nominal(drilledGrid(EVEN, setting))));
  const outcomes = await nominal(LAYOUTS);
  const shots = LAYOUTS.map((layout, i) => ({ layout, outcome: outcomes[i] }));
  return async (worlds) => {
    const here = { ...problem, worlds: [NO_DEVIATIONS, ...worlds], luck: worlds.map(luckOf) };
    const cache = (await cacheOutcomes({ problem: here, evaluator: localEvaluator(here) })).by(voice);
    await cache.roll(shots, worlds.length);
    return cache;
  };
}

/** Mean score of each layout over the worlds in which all reach the pins. */
function meansIn(cache: ScoredCache): number[] {
  const scores = LAYOUTS.map((layout) => cache.get(layout)!.scores);
  const worlds = scores[0].map((_, world) => world).filter((w) => scores.every((row) => row[w] !== null));
  return scores.map((row) => mean(worlds.map((world) => row[world]!)));
}

test('what knowing is worth agrees with nested simulation, of the PAP and of axis rotation that scatters besides', async () => {
  const options = {
    seed: 1,
    workers: 1,
    pinSide: 'above',
    models: null,
    budget: { ...USUAL_BUDGET, cores: 8, worlds: MANY },
  } as const;
  await withSetting(inputs, options, async (setting) => {
    const { radius } = setting.problem.ball.published;
    const worlds = setting.problem.worlds.slice(1);
    const rolledIn = await roller(setting);
    const cache = await rolledIn(worlds);
    const means = meansIn(cache);
    const first = LAYOUTS[means.indexOf(Math.max(...means))];
    const { worlds: kept, ahead } = alternativesTo(first, cache, () => true);
    const drawn = kept.map((world) => ({ deviations: worlds[world], beliefs: [] }));
    const unknowns = variedUnknowns(inputs, drawn, []);

    const some = worlds.slice(0, WORLDS);
    const scatter = scatterOf(inputs.bowler).axisRotationDeg;
    const repeated = scatter / Math.hypot(scatter, uncertainty.axisRotationDeg);
    const putIn = {
      pap: (world: Deviations, [over, up]: readonly number[]): Deviations => ({
        ...world,
        papOver: (from(uncertainty.papOverIn, INCH) / radius) * over,
        papUp: (from(uncertainty.papUpIn, INCH) / radius) * up,
      }),
      axisRotationDeg: (world: Deviations, [off]: readonly number[]): Deviations => ({
        ...world,
        axisRotation: repeated * world.axisRotation + from(uncertainty.axisRotationDeg, DEGREE) * off,
      }),
    };
    for (const field of ['pap', 'axisRotationDeg'] as const) {
      const unknown = unknowns.find((each) => each.field === field)!;
      const { gain, chance, chosen } = valueOfKnowing(smoothColumns(unknown.numbers), ahead, 0.5);
      const rows: number[][] = [];
      for (let k = 0; k < VALUES; k++) {
        const value = [0, 1].map((coordinate) => probit(scrambledSobol(k, coordinate, 9)));
        rows.push(meansIn(await rolledIn(some.map((world) => putIn[field](world, value)))));
      }
      const overall = LAYOUTS.map((_, l) => mean(rows.map((row) => row[l])));
      const best = overall.indexOf(Math.max(...overall));
      const gains = rows.map((row) => Math.max(...row) - row[best]);
      const changes = rows.filter((row) => Math.max(...row) - row[best] > 0.5).length / VALUES;
      // the nested mean's standard error, and the fit's: of the difference that was fitted, over the worlds where it was chosen
      const fitted = ahead
        .filter((_, c) => chosen.includes(c))
        .map((row) => sampleStandardDeviation([...row]));
      const error = Math.hypot(
        sampleStandardDeviation(gains) / Math.sqrt(VALUES),
        (Math.max(...fitted, 0) / Math.sqrt(kept.length)) * Math.sqrt(Math.max(chance, 1 / VALUES)),
      );
      console.log(
        `${field}: gain ${gain.toFixed(2)} by the fit, ${mean(gains).toFixed(2)} nested (error ${error.toFixed(2)}); ` +
          `chance ${chance.toFixed(2)} and ${changes.toFixed(2)}`,
      );
      expect(Math.abs(gain - mean(gains))).toBeLessThan(2 * error);
      expect(Math.abs(chance - changes)).toBeLessThan(2 * Math.sqrt(0.25 / VALUES));
      expect(mean(gains)).toBeGreaterThan(0.1);
    }
  });
});
