import { describe, expect, test } from 'vitest';
import { scrambledSobol } from '../../src/math/scrambled-sobol.js';
import { USUAL_BUDGET } from '../../src/prepare/budget.js';
import { loadPractice } from '../../src/records/shared/shared-data.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { gridCandidates, keyOf, layoutOf } from '../../src/search/candidates/candidates.js';
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
