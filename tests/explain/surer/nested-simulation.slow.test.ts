import { mean, probit, sampleStandardDeviation } from 'simple-statistics';
import { expect, test } from 'vitest';
import { DEGREE, from, INCH } from '../../../src/base/units.js';
import { alternativesTo } from '../../../src/explain/surer/alternatives.js';
import { variedUnknowns } from '../../../src/explain/surer/unknowns.js';
import { valueOfKnowing } from '../../../src/explain/surer/value-of-knowing.js';
import { worldsAlike } from '../../../src/explain/surer/worlds-alike.js';
import { scrambledSobol } from '../../../src/math/scrambled-sobol.js';
import { USUAL_BUDGET } from '../../../src/prepare/budget.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import type { Want } from '../../../src/records/schemas/want.js';
import type { LayoutNumbers } from '../../../src/records/text/layout-text.js';
import { drilledGrid } from '../../../src/search/candidates/drilled-grid.js';
import { cacheOutcomes, type ScoredCache } from '../../../src/search/outcome-cache.js';
import { targetsOf } from '../../../src/search/scoring/target.js';
import { physicsVoice } from '../../../src/search/voices/physics-voice.js';
import { localEvaluator } from '../../../src/simulate/evaluator.js';
import { type RecommendInputs, type Setting, withSetting } from '../../../src/simulate/setting.js';
import type { Outcome } from '../../../src/simulate/simulator.js';
import { type Deviations, luckOf, NO_DEVIATIONS } from '../../../src/simulate/worlds/deviations.js';
import { scatterOf } from '../../../src/simulate/worlds/release-scatter.js';

/*
 * The same value by brute force: at many values of what could be known, all layouts are rolled in the worlds with that value put in, and
 * the best is taken: nested simulation, the yardstick of Strong, Oakley & Brennan, Med. Decis. Making 34, 311, 2014.
 */

/** Values of what could be known, and worlds that each is put into. */
const VALUES = 16;
const WORLDS = 128;

/** Worlds from which it is worked out without: so many that luck is small beside what is looked for. */
const MANY = 1024;

/** Layouts from which the wish's target is taken. */
const EVEN = { arcIn: 1, angleDeg: 30 };

/** How far off numbers may be: one standard deviation. */
interface Off {
  readonly axisRotationDeg: number;
  readonly papOverIn: number;
  readonly papUpIn: number;
}

const GUESSED: Off = { axisRotationDeg: 11, papOverIn: 0.4, papUpIn: 0.45 };

type Numbers = readonly [drillingAngleDeg: number, pinToPapIn: number, valAngleDeg: number];

interface Case {
  readonly field: 'pap' | 'axisRotationDeg';
  readonly bowler: string;
  readonly ball: string;
  readonly lane: string;
  readonly want: Want;
  readonly off: Off;
  /** Some that are good in this case. */
  readonly layouts: readonly Numbers[];
  /** Whether knowing is worth something there, points of score. */
  readonly isWorth: boolean;
}

const { bowlers, balls, lanes } = demoShelf();
const recordOf = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;

const inputsOf = ({ bowler, ball, lane, want, off }: Case): RecommendInputs => ({
  bowler: { ...recordOf(bowlers, bowler), uncertainty: off },
  ball: recordOf(balls, ball),
  lane: recordOf(lanes, lane),
  want,
});

/** Rolls all layouts in some worlds, the wishes aiming at what an even grid attains. */
async function roller(
  layouts: readonly LayoutNumbers[],
  want: Want,
  setting: Setting,
): Promise<(worlds: readonly Deviations[]) => Promise<ScoredCache>> {
  const { problem } = setting;
  const nominal = async (some: readonly LayoutNumbers[]): Promise<readonly Outcome[]> =>
    localEvaluator(problem).evaluate(
      some.map((layout) => ({ layout: toLayout(layout, problem.ball.published.radius), world: 0 })),
    );
  const voice = physicsVoice(targetsOf(want, await nominal(drilledGrid(EVEN, setting))));
  const outcomes = await nominal(layouts);
  const shots = layouts.map((layout, i) => ({ layout, outcome: outcomes[i] }));
  return async (worlds) => {
    const here = {
      ...problem,
      worlds: [NO_DEVIATIONS, ...worlds],
      luck: worlds.map((world) => luckOf(world)),
    };
    const cache = (await cacheOutcomes({ problem: here, evaluator: localEvaluator(here) })).by(voice);
    await cache.roll(shots, worlds.length);
    return cache;
  };
}

/** Mean score of each layout over the worlds in which all reach the pins. */
function meansIn(cache: ScoredCache, layouts: readonly LayoutNumbers[]): number[] {
  const scores = layouts.map((layout) => cache.get(layout)!.scores);
  const worlds = scores[0].map((_, world) => world).filter((w) => scores.every((row) => row[w] !== null));
  return scores.map((row) => mean(worlds.map((world) => row[world]!)));
}

/** A world with a value of what could be known put in; values in standard deviations of how far off the numbers may be. */
function withValue(
  each: Case,
  world: Deviations,
  [a, b]: readonly [number, number],
  radius: number,
): Deviations {
  const { field, off } = each;
  if (field === 'pap')
    return {
      ...world,
      papOver: (from(off.papOverIn, INCH) / radius) * a,
      papUp: (from(off.papUpIn, INCH) / radius) * b,
    };
  const scatter = scatterOf(inputsOf(each).bowler).axisRotationDeg;
  const repeated = scatter / Math.hypot(scatter, off.axisRotationDeg); // the scatter of shots stays
  return { ...world, axisRotation: repeated * world.axisRotation + from(off.axisRotationDeg, DEGREE) * a };
}

/** Some spread over all numbers, good in the first two cases. */
const SPREAD: readonly Numbers[] = [
  [50, 4.75, 64],
  [45, 5, 60],
  [30, 4.5, 70],
  [60, 4, 50],
  [45, 4, 45],
  [80, 4.5, 30],
];

test.each<Case>([
  {
    field: 'axisRotationDeg',
    bowler: 'average-right',
    ball: 'plain-medium',
    lane: 'house-easy',
    want: { hookStart: 4, sharpness: 4 },
    off: { ...GUESSED, axisRotationDeg: 20 },
    layouts: SPREAD,
    isWorth: true,
  },
  {
    field: 'pap',
    bowler: 'average-right',
    ball: 'plain-medium',
    lane: 'house-easy',
    want: { hookStart: 4, sharpness: 4 },
    off: { ...GUESSED, papOverIn: 1, papUpIn: 1 },
    layouts: SPREAD,
    isWorth: true,
  },
  {
    field: 'pap', // scores level off here: all that are good meet the wish but where the PAP lies far over
    bowler: 'rev-dominant',
    ball: 'asymmetric-strong',
    lane: 'long',
    want: { totalHook: 5 },
    off: GUESSED,
    layouts: [
      [75, 5.375, 25],
      [85, 5.5, 21],
      [80, 5.875, 20],
      [90, 5.25, 25],
    ],
    isWorth: false,
  },
])('what knowing $field is worth to $bowler agrees with nested simulation', async (each) => {
  const options = {
    seed: 1,
    workers: 1,
    pinSide: 'above',
    models: null,
    budget: { ...USUAL_BUDGET, cores: 8, worlds: MANY },
  } as const;
  const layouts = each.layouts.map(([drillingAngleDeg, pinToPapIn, valAngleDeg]) => ({
    drillingAngleDeg,
    pinToPapIn,
    valAngleDeg,
  }));
  const inputs = inputsOf(each);
  await withSetting(inputs, options, async (setting) => {
    const { radius } = setting.problem.ball.published;
    const worlds = setting.problem.worlds.slice(1);
    const rolledIn = await roller(layouts, inputs.want, setting);
    const cache = await rolledIn(worlds);
    const means = meansIn(cache, layouts);
    const first = layouts[means.indexOf(Math.max(...means))];
    const { worlds: kept, ahead } = alternativesTo(first, cache, () => true);
    const drawn = kept.map((world) => ({ deviations: worlds[world], beliefs: [] }));
    const { numbers } = variedUnknowns(inputs, drawn, []).find(({ field }) => field === each.field)!;
    const { gain, chance } = valueOfKnowing(worldsAlike(numbers), ahead, 0.5);

    const rows: number[][] = [];
    for (let k = 0; k < VALUES; k++) {
      const value = [probit(scrambledSobol(k, 0, 9)), probit(scrambledSobol(k, 1, 9))] as const;
      const put = worlds.slice(0, WORLDS).map((world) => withValue(each, world, value, radius));
      rows.push(meansIn(await rolledIn(put), layouts));
    }
    const overall = layouts.map((_, l) => mean(rows.map((row) => row[l])));
    const best = overall.indexOf(Math.max(...overall));
    const gains = rows.map((row) => Math.max(...row) - row[best]);
    const changes = gains.filter((more) => more > 0.5).length / VALUES;
    console.log(
      `${each.field}: gain ${gain.toFixed(3)}, nested ${mean(gains).toFixed(3)} ± ` +
        `${(sampleStandardDeviation(gains) / Math.sqrt(VALUES)).toFixed(3)}; chance ${chance.toFixed(3)}, ` +
        `nested ${changes.toFixed(3)}; means ${means.map((m) => m.toFixed(2)).join(' ')}, nested ${overall.map((m) => m.toFixed(2)).join(' ')}`,
    );
    // three standard errors of the nested mean, and what a tenth of a point of luck in which layout is first on the mean makes
    const error = (3 * sampleStandardDeviation(gains)) / Math.sqrt(VALUES) + 0.1;
    expect(Math.abs(gain - mean(gains))).toBeLessThan(error);
    // three standard errors of the nested share, each at most √(¼/n)
    expect(Math.abs(chance - changes)).toBeLessThan(1.5 / Math.sqrt(VALUES));
    expect(mean(gains) > 0.05).toBe(each.isWorth);
    expect(gain > 0.05).toBe(each.isWorth);
  });
});
