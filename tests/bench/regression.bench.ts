import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { DEMO, demoBalls, demoBowlers, demoLanes, type Shelved } from '../../src/records/read/shelf.js';
import type { RecommendInputs, Setting } from '../../src/simulate/setting.js';
import { machine } from './timing.js';

// what people run is built
const built = async <T>(name: string): Promise<T> =>
  (await import(new URL(`../../dist/${name}.js`, import.meta.url).href)) as T;
const { gridCandidates, layoutOf } = await built<typeof import('../../src/search/candidates/candidates.js')>(
  'search/candidates/candidates',
);
const { rejectByMarks } = await built<typeof import('../../src/search/candidates/constraints.js')>(
  'search/candidates/constraints',
);
const { nominalShots } = await built<typeof import('../../src/search/candidates/nominal-shots.js')>(
  'search/candidates/nominal-shots',
);
const { problemScorer } = await built<typeof import('../../src/search/surrogate/problem-scorer.js')>(
  'search/surrogate/problem-scorer',
);
const { rankInWorlds } = await built<typeof import('../../src/search/rank.js')>('search/rank');
const { shareRegression } = await built<typeof import('../../src/regression/open-regression.js')>(
  'regression/open-regression',
);
const { MODELS, readWholeModel } =
  await built<typeof import('../../src/regression/model-files.js')>('regression/model-files');
const { openModel } =
  await built<typeof import('../../src/regression/reaction-model.js')>('regression/reaction-model');
const { plainGraph } =
  await built<typeof import('../../src/regression/plain-graph.js')>('regression/plain-graph');
const { orderRules } = await built<typeof import('../../src/search/order-rules.js')>('search/order-rules');
const { physicsVoice } = await built<typeof import('../../src/search/voices/physics-voice.js')>(
  'search/voices/physics-voice',
);
const { search } = await built<typeof import('../../src/search/search.js')>('search/search');
const { withSetting } = await built<typeof import('../../src/simulate/setting.js')>('simulate/setting');
const { targetsOf } =
  await built<typeof import('../../src/search/scoring/target.js')>('search/scoring/target');
const { shotScatter } =
  await built<typeof import('../../src/simulate/shot-scatter.js')>('simulate/shot-scatter');
const { toLayout } = await built<typeof import('../../src/prepare/to-layout.js')>('prepare/to-layout');

const WANT = { hookStart: 4, totalHook: 4 };

/** Worlds in which both engines are timed, and layouts that physics rolls in each. */
const TIMED = { worlds: 10, layouts: 40 };

/**
 * Times the regression beside physics: one candidate in one world, and a whole answer beside brute force. Brute
 * force is not run: it is what its shots would take at the rate of those timed.
 */
export async function regressionBench(print: (line: string) => void = console.log): Promise<void> {
  print(`regression: ${machine()}`);
  const demo = <T>(list: readonly Shelved<T>[], id: string): T => list.find((each) => each.id === id)!.record;
  const inputs = {
    bowler: demo(demoBowlers(), DEMO.bowler),
    ball: demo(demoBalls(), DEMO.ball),
    lane: demo(demoLanes(), DEMO.lane),
    want: WANT,
  };
  await withSetting(inputs, { seed: 1, workers: 1, pinSide: 'above' }, async (setting) => {
    await answer(inputs, setting); // warm
    const start = performance.now();
    const { shots, byRegression } = await answer(inputs, setting);
    const wholeMs = performance.now() - start;
    if (!byRegression) throw new Error('the benchmark needs the regression');
    const { layouts, physicsMs, rowMs, allMs } = await engines(setting);
    const brute = layouts * setting.problem.luck.length;
    print(`  one candidate in one world: regression ${ratio(physicsMs / rowMs)} times as fast as physics`);
    print(`  the same with its share of making each world ready: ${ratio(physicsMs / allMs)} times`);
    print(
      `  ${layouts} candidates in ${setting.problem.luck.length} worlds: a whole answer (${shots} shots of physics and ` +
        `${byRegression} candidate-worlds) is ${ratio((brute * physicsMs) / wholeMs)} times as fast as brute force by ` +
        `physics, extrapolated; ${ratio((brute * physicsMs) / 10 / wholeMs)} times as fast as over a tenth of the ` +
        `candidates, ${ratio((brute * physicsMs) / 100 / wholeMs)} times as over a tenth of the worlds too`,
    );
  });
  print(
    `  the regression in the ONNX runtime against plain arithmetic: ${ratio(await plainAgainstRuntime())} times`,
  );
  print(`  greatest memory of \`flarewise recommend\`: ${greatestMemoryMB().toFixed(0)} MB`);
}

async function answer(
  { bowler }: RecommendInputs,
  setting: Setting,
): Promise<{ shots: number; byRegression: number | null }> {
  const voices = await search(WANT, setting);
  const result = voices.weighed;
  const scatter = shotScatter(setting.problem, bowler, setting.seed);
  await rankInWorlds(result, 3, setting, orderRules(WANT, scatter, voices, setting));
  const { surveyed } = result;
  return { shots: result.shots(), byRegression: 'why' in surveyed ? null : surveyed.candidateWorlds() };
}

/** Milliseconds of one candidate in one world by physics, by the regression, and by it with each world's preparation. */
async function engines(
  setting: Setting,
): Promise<{ layouts: number; physicsMs: number; rowMs: number; allMs: number }> {
  const { ball, practice, sides, evaluator } = setting;
  const { radius } = ball.published;
  const grid = (arcIn: number, angleDeg: number) =>
    gridCandidates(practice, radius, { arcIn, angleDeg }, sides)
      .map((candidate) => layoutOf(candidate, practice, radius))
      .filter((layout) => layout !== null);
  const layouts = grid(0.125, 5).filter((layout) => rejectByMarks(layout, ball, practice) === null);
  const rolled = nominalShots(setting);
  await rolled.roll(grid(0.5, 10));
  const nominal = rolled.allowed();
  const regression = await shareRegression().open();
  if (regression.kind === 'unusable') throw new Error(regression.why.code);
  const targets = targetsOf(
    WANT,
    nominal.map(({ outcome }) => outcome),
  );
  const scorer = await problemScorer(layouts, nominal, setting, regression);
  if ('why' in scorer) throw new Error(scorer.why.code);
  const scoreIn = scorer.by(physicsVoice(targets));
  const all = Int32Array.from(layouts.keys());
  const timed = async (run: (world: number) => Promise<unknown>): Promise<number> => {
    const start = performance.now();
    for (let world = 0; world < TIMED.worlds; world++) await run(world);
    return (performance.now() - start) / TIMED.worlds;
  };
  const firstMs = await timed((world) => scoreIn(world, all.subarray(0, 1), () => {}));
  const secondMs = await timed((world) => scoreIn(world, all, () => {}));
  const physicsMs = await timed((world) =>
    evaluator.evaluate(
      nominal.slice(0, TIMED.layouts).map(({ layout, outcome }) => ({
        layout: toLayout(layout, radius),
        world: 1 + world,
        launch: outcome.launch,
      })),
    ),
  );
  await regression.model.close();
  const rowMs = secondMs / layouts.length;
  const answered = 16 + (2500 * 48 + 400 * 136) / layouts.length; // worlds a candidate meets in a survey, on the average
  return {
    layouts: layouts.length,
    physicsMs: physicsMs / TIMED.layouts,
    rowMs,
    allMs: rowMs + (200 * firstMs) / (answered * layouts.length),
  };
}

/** Rows that both kinds of arithmetic are timed on, and how often; the fastest of each counts. */
const ROWS = 20_000;
const TIMES = 5;

/** How much longer plain arithmetic takes than the runtime for the same rows, which it must answer alike. */
async function plainAgainstRuntime(): Promise<number> {
  const stored = await readWholeModel(MODELS);
  if (stored.kind === 'unusable') throw new Error(stored.why.code);
  const { file, card } = stored;
  const { inputs, outputs, fit } = card;
  const model = await openModel(file, fit.basis, outputs.length);
  if (model.arithmetic !== 'runtime') throw new Error('the benchmark needs the ONNX runtime');
  const plain = plainGraph(file);
  const zeros = (...dims: readonly number[]) => ({
    dims,
    values: new Float32Array(dims.reduce((a, b) => a * b, 1)),
  });
  const features = zeros(ROWS, inputs.length);
  features.values.forEach((_, i) => {
    const { least, most } = inputs[i % inputs.length];
    features.values[i] = (least + most) / 2 + ((most - least) / 8) * Math.sin(i);
  });
  const given = { features, tuning: zeros(fit.basis, outputs.length), 'tuning-bias': zeros(outputs.length) };
  const fastest = { runtime: Number.POSITIVE_INFINITY, plain: Number.POSITIVE_INFINITY };
  for (let time = 0; time < TIMES; time++) {
    const start = performance.now();
    const wanted = await model.answer(features);
    const between = performance.now();
    const { reaction } = await plain.run(given);
    fastest.runtime = Math.min(fastest.runtime, between - start);
    fastest.plain = Math.min(fastest.plain, performance.now() - between);
    const isAlike = wanted.every(
      (value, i) => Math.abs(value - reaction[i]) < 1e-3 * outputs[i % outputs.length].scale,
    );
    if (!isAlike) throw new Error('the two kinds of arithmetic differ');
  }
  await model.close();
  return fastest.plain / fastest.runtime;
}

const TOLD = 'greatest memory, kB: ';

/** Of a process of its own, MB. */
function greatestMemoryMB(): number {
  const onExit = `process.on('exit', () => process.stderr.write('${TOLD}' + process.resourceUsage().maxRSS + '\\n'))`;
  const path = (name: string) => fileURLToPath(new URL(`../../${name}`, import.meta.url));
  const record = (folder: string, id: string) => path(`data/${folder}/${id}.json`);
  const { stderr, status } = spawnSync(
    process.execPath,
    [
      '--import',
      `data:text/javascript,${encodeURIComponent(onExit)}`,
      path('dist/cli/main.js'),
      'recommend',
      ...['--bowler', record('bowlers', DEMO.bowler)],
      ...['--ball', record('balls', DEMO.ball)],
      ...['--lane', record('lanes', DEMO.lane)],
      ...['--total-hook', '4', '--json'],
    ],
    { encoding: 'utf8', maxBuffer: 2 ** 26 },
  );
  if (status !== 0) throw new Error(stderr);
  return Number(stderr.slice(stderr.lastIndexOf(TOLD) + TOLD.length)) / 1024;
}

const ratio = (value: number): string => Math.round(value).toString();
