import { describe, expect, test } from 'vitest';
import { scrambledSobol } from '../../src/math/scrambled-sobol.js';
import { type RaceSize, USUAL_BUDGET } from '../../src/prepare/budget.js';
import { loadPractice } from '../../src/records/shared/shared-data.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { gridCandidates, keyOf, layoutOf } from '../../src/search/candidates/candidates.js';
import { pickDiffering } from '../../src/search/candidates/pick-differing.js';
import { bestFirst, halveByPhysics, halvingShots } from '../../src/search/physics-halving.js';
import type { Survey } from '../../src/search/surrogate/survey.js';
import type { Outcome } from '../../src/simulate/simulator.js';

/*
 * A made-up engine of known scores, cheap enough for brute force over every layout at marking resolution: two hills over layouts, and
 * luck that moves all, moves the hills, and strikes single layouts.
 */

const RADIUS = 0.1085;
const WORLDS = USUAL_BUDGET.worlds;
const practice = loadPractice();
const grid = (arcIn: number, angleDeg: number): LayoutNumbers[] =>
  gridCandidates(practice, RADIUS, { arcIn, angleDeg }, ['above'])
    .map((candidate) => layoutOf(candidate, practice, RADIUS))
    .filter((layout) => layout !== null);
const layouts = grid(0.125, 5);
const coarse = grid(0.5, 10);

const hill = (l: LayoutNumbers, angle: number, pin: number, val: number, high: number): number =>
  high *
  Math.exp(
    -(
      ((l.drillingAngleDeg - angle) / 30) ** 2 +
      ((l.pinToPapIn - pin) / 1.2) ** 2 +
      ((l.valAngleDeg - val) / 20) ** 2
    ),
  );
const noise = (a: number, b: number): number => {
  const x = Math.sin(12.9898 * a + 78.233 * b) * 43758.5453;
  return 2 * (x - Math.floor(x)) - 1;
};
/** Evenly spread, as the worlds of an answer are; three numbers from −1 to 1 a world. */
const LUCK = Array.from({ length: WORLDS }, (_, world) =>
  [0, 1, 2].map((coordinate) => 2 * scrambledSobol(world, coordinate, 1) - 1),
);
const scoreIn = (l: LayoutNumbers, world: number): number => {
  const [move, lift, tilt] = LUCK[world];
  const place = l.drillingAngleDeg + 100 * l.pinToPapIn + 7 * l.valAngleDeg;
  return (
    20 +
    10 * lift +
    hill(l, 57 + 12 * move, 4.3 + 0.4 * tilt, 37, 60) +
    hill(l, 22 + 12 * tilt, 2.9, 58 + 6 * move, 56) +
    6 * noise(place, world)
  );
};
const meanOf = (l: LayoutNumbers, worlds = WORLDS): number => {
  let sum = 0;
  for (let world = 0; world < worlds; world++) sum += scoreIn(l, world);
  return sum / worlds;
};

const truth = layouts.map((layout) => meanOf(layout));
const best = Math.max(...truth);
const range = best - Math.min(...truth);

/** Rolls by the made-up engine; a layout with a VAL angle of 33° or less may not be drilled. */
function engine() {
  const met = new Map<string, { layout: LayoutNumbers; scores: number[] }>();
  let shots = 0;
  const outcome = {} as Outcome;
  const isAllowed = (layout: LayoutNumbers): boolean => layout.valAngleDeg > 33;
  const scoredRow = (row: { scores: number[] }) => ({
    outcomes: [],
    scores: row.scores,
    meanScore: row.scores.reduce((sum, score) => sum + score, 0) / row.scores.length,
    arrives: 1,
  });
  return {
    shots: () => shots,
    starter: (layout: LayoutNumbers) => ({ layout, outcome }),
    isAllowed,
    rolled: {
      roll: async () => {},
      get: (layout: LayoutNumbers) => (isAllowed(layout) ? { layout, outcome } : undefined),
      isRejected: (layout: LayoutNumbers) => !isAllowed(layout),
      allowed: () => [],
      rejected: () => [],
      shots: () => 0,
    },
    cache: {
      roll: async (rows: readonly { layout: LayoutNumbers }[], worlds: number) => {
        for (const { layout } of rows) {
          const row = met.get(keyOf(layout)) ?? { layout, scores: [] };
          met.set(keyOf(layout), row);
          for (let world = row.scores.length; world < worlds; world++) {
            row.scores.push(scoreIn(layout, world));
            shots += 1;
          }
        }
      },
      get: (layout: LayoutNumbers) => {
        const row = met.get(keyOf(layout));
        return row && scoredRow(row);
      },
      known: () => [...met.values()].map((row) => ({ layout: row.layout, worlds: scoredRow(row) })),
      middle: { layout: layouts[0], outcome },
      middleArrives: [],
      targets: [],
      shots: () => shots,
    },
  };
}

/** A survey by an engine that is off, in single worlds and on the mean alike. */
const surveyBy = (cheap: (layout: LayoutNumbers, world: number) => number): Survey => ({
  ranked: layouts,
  expected: (layout) =>
    Array.from({ length: WORLDS }, (_, world) => cheap(layout, world)).reduce((a, b) => a + b) / WORLDS,
  arrives: () => 1,
  look: async () => {},
  scores: (layout) => Array.from({ length: WORLDS }, (_, world) => cheap(layout, world)),
  candidateWorlds: () => 0,
  arithmetic: 'runtime',
  tunedTo: 0,
  shots: 0,
});

/** Halves, and says what the layout that is then expected most of lacks to the best of all, as a share of the range. */
async function regretOf(survey: Survey | null): Promise<{ regret: number; shots: number }> {
  const size = USUAL_BUDGET.race[survey ? 'surveyed' : 'alone'];
  const { starter, isAllowed, rolled, cache, shots } = engine();
  const starters = coarse
    .filter(isAllowed)
    .sort((a, b) => scoreIn(b, 0) - scoreIn(a, 0))
    .slice(0, size.starters)
    .map(starter);
  const expects = await halveByPhysics(starters, layouts, { rolled, cache }, survey, size, () => {});
  const scored = cache.known().map(({ layout }) => layout);
  const [first] = bestFirst(scored, expects);
  expect(isAllowed(first.layout)).toBe(true);
  return { regret: (best - meanOf(first.layout)) / range, shots: shots() };
}

describe('halveByPhysics, beside brute force over every layout in all worlds of a made-up engine', () => {
  test('by physics alone it comes within 2 % with a thousandth of the shots', async () => {
    const { regret, shots } = await regretOf(null);
    expect(regret).toBeLessThan(0.02);
    expect(shots).toBeLessThanOrEqual(halvingShots(USUAL_BUDGET.race.alone));
    expect(shots).toBeLessThan(0.001 * layouts.length * WORLDS);
  });

  test('a cheaper engine that is off by a tilt is put right: within 1 %', async () => {
    const tilted = surveyBy(
      (l, world) => scoreIn(l, world) + 0.2 * l.drillingAngleDeg - 3 * noise(world, l.pinToPapIn),
    );
    expect((await regretOf(tilted)).regret).toBeLessThan(0.01);
  });

  test('a cheaper engine that is plainly wrong does no harm', async () => {
    const wrong = surveyBy((l, world) => 100 - scoreIn(l, world));
    expect((await regretOf(wrong)).regret).toBeLessThan(0.02);
  });
});

test('each round keeps those that did best so far, and the best that differ; the others meet no more worlds', async () => {
  const { starter, rolled, cache } = engine();
  const size: RaceSize = {
    ...{ starters: 30, leastOfGrid: 0, differing: 0, batches: 0 },
    ...{ batch: { layouts: 0, apart: 0, worlds: 0 }, best: { layouts: 0, worlds: 0 } },
    rounds: [
      { worlds: 4, keep: 8 },
      { worlds: 16, keep: 3 },
      { worlds: 32, keep: 1 },
    ],
  };
  const starters = coarse.slice(40, 70);
  const told: number[] = [];
  await halveByPhysics(starters.map(starter), layouts, { rolled, cache }, null, size, (count) =>
    told.push(count),
  );
  const worldsMet = (layout: LayoutNumbers): number => cache.get(layout)!.scores.length;
  const bestOf = (list: readonly LayoutNumbers[], worlds: number, count: number) =>
    [...list].sort((a, b) => meanOf(b, worlds) - meanOf(a, worlds)).slice(0, count);
  const eight = bestOf(starters, 4, 8);
  const three = bestOf(eight, 16, 3);
  expect(starters.map(worldsMet)).toEqual(
    starters.map((layout) => (three.includes(layout) ? 32 : eight.includes(layout) ? 16 : 4)),
  );
  expect(halvingShots(size)).toBe(30 * 4 + 8 * 12 + 3 * 16);

  const differing = engine();
  await halveByPhysics(
    starters.map(differing.starter),
    layouts,
    differing,
    null,
    {
      ...size,
      differing: 4,
      rounds: [
        { worlds: 4, keep: 1 },
        { worlds: 8, keep: 1 },
      ],
    },
    () => {},
  );
  const order = bestOf(starters, 4, 30).map((layout) => ({ layout }));
  const kept = pickDiffering(order, 4).map(({ layout }) => layout);
  expect(starters.filter((layout) => differing.cache.get(layout)!.scores.length === 8)).toEqual(
    starters.filter((layout) => kept.includes(layout)),
  );
});

test('bestFirst: most expected first; of equals by their keys, whatever their order', () => {
  const expects = ({ drillingAngleDeg }: LayoutNumbers): number => -Math.abs(drillingAngleDeg - 50);
  const some = [30, 70, 50, 40].map((drillingAngleDeg) => ({
    drillingAngleDeg,
    pinToPapIn: 4,
    valAngleDeg: 40,
  }));
  const angles = (list: readonly LayoutNumbers[]) =>
    bestFirst(list, expects).map(({ layout, expected }) => [layout.drillingAngleDeg, expected]);
  const want = [
    [50, 0],
    [40, -10],
    [30, -20],
    [70, -20],
  ].map(([angle, expected]) => [angle, expect.closeTo(expected, 12)]);
  expect(angles(some)).toEqual(want);
  expect(angles([...some].reverse())).toEqual(want);
});
