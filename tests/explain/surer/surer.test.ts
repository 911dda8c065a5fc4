import { cumulativeStdNormalProbability } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { FOOT, INCH } from '../../../src/base/units.js';
import { surer } from '../../../src/explain/surer/surer.js';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import type { Bowler } from '../../../src/records/schemas/bowler.js';
import { BELIEFS } from '../../../src/records/shared/beliefs.js';
import type { LayoutNumbers } from '../../../src/records/text/layout-text.js';
import { keyOf } from '../../../src/search/candidates/candidates.js';
import type { ScoredCache } from '../../../src/search/outcome-cache.js';
import type { Target } from '../../../src/search/scoring/target.js';
import type { ScoredOutcomes } from '../../../src/search/scoring/world-statistics.js';
import type { VoicesResult } from '../../../src/search/search.js';
import type { Setting } from '../../../src/simulate/setting.js';
import type { Outcome } from '../../../src/simulate/simulator.js';
import { type Deviations, drawDeviations, NO_DEVIATIONS } from '../../../src/simulate/worlds/deviations.js';
import { RADIUS, USUAL_BALLS } from '../../support/balls.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';

const WORLDS = 128;
const FIRST: LayoutNumbers = { drillingAngleDeg: 70, pinToPapIn: 4.5, valAngleDeg: 30 };
const OTHER: LayoutNumbers = { drillingAngleDeg: 40, pinToPapIn: 3.5, valAngleDeg: 50 };
const unsure: Bowler = {
  ...averageBowler,
  uncertainty: { papOverIn: 0.4, papUpIn: 0.4, revRateRpm: 50 },
};

/** A wish for a hook start at 40 ft, of which layouts attain 30 to 50; an early or late start misses it alike. */
const target: Target = { wish: 'hookStart', step: 3, value: 40 * FOOT, low: 30 * FOOT, high: 50 * FOOT };

/** How many feet the hook of each layout starts from where it is wished. */
type OffFt = (world: Deviations) => number;

const row = (worlds: readonly Deviations[], offFt: OffFt, reaches = true): ScoredOutcomes => {
  const off = worlds.map(offFt);
  const scores = off.map((each) => (reaches ? 80 - 10 * each : null));
  const outcomes = off.map(
    (each) => ({ shot: 'pins', reaction: { hookStart: (40 + each) * FOOT } }) as unknown as Outcome,
  );
  return { outcomes, scores, meanScore: 0, arrives: reaches ? 1 : 0.5 };
};

/** What would make a made-up answer surer: the first layout, beside others by how far they miss the wish. */
function surerOf(
  bowler: Bowler,
  others: readonly { readonly layout: LayoutNumbers; readonly offFt: OffFt; readonly reaches?: boolean }[],
  allowed: readonly LayoutNumbers[] = others.map(({ layout }) => layout),
) {
  const worlds = drawDeviations({ seed: 1, count: WORLDS, bowler, published: USUAL_BALLS[0]!, bodyCount: 1 });
  const rows = [
    { layout: FIRST, worlds: row(worlds, () => 2) },
    ...others.map(({ layout, offFt, reaches }) => ({ layout, worlds: row(worlds, offFt, reaches) })),
  ];
  const cache = {
    targets: worlds.map(() => [target]),
    known: () => rows,
    get: (layout: LayoutNumbers) => rows.find((each) => keyOf(each.layout) === keyOf(layout))?.worlds,
  } as unknown as ScoredCache;
  const voices = {
    weighed: { cache, found: allowed.map((layout) => ({ layout })) },
    byBoth: cache,
    practice: null,
    beliefs: { sizes: worlds.map(() => BELIEFS.map(() => 0)) },
  } as unknown as VoicesResult;
  const setting = {
    ball: { bodies: [{}] },
    problem: { worlds: [NO_DEVIATIONS, ...worlds] },
  } as unknown as Setting;
  return surer(
    [FIRST],
    voices,
    { bowler, ball: plainBall, lane: houseLane, want: { hookStart: 3 } },
    setting,
  );
}

/** Misses by as much as the first on the mean, and by less the farther the PAP lies over. */
const byPap: OffFt = ({ papOver }) => 2.4 - (papOver * RADIUS) / INCH;

describe('surer', () => {
  test('names what would change the layout, how often, and how much nearer the other comes', () => {
    const [pap, ...rest] = surerOf(unsure, [{ layout: OTHER, offFt: byPap }]);
    expect(rest).toEqual([]);
    expect(pap.field).toBe('pap');
    expect(pap.unknown).toEqual({ code: 'pap-place', params: { overOffByIn: 0.4, upOffByIn: 0.4 } });
    // the other gains 10 points a foot: −4 ± 4, and counts from half a point on
    expect(Math.abs(pap.chance - cumulativeStdNormalProbability(-4.5 / 4))).toBeLessThan(1.5 / WORLDS);
    // 4·(φ(1) − Φ(−1)), the unit normal loss at 1 being 0.0833 (tables of it); local means over 128 worlds err by a seventh
    expect(Math.abs(pap.gain - 4 * 0.0833)).toBeLessThan(0.05);
    // where chosen: E[z − 1 | z > 1.125]·0.4 ft, the mean beyond 1.125 being φ/(1 − Φ) = 1.625
    expect(Math.abs(pap.size.hookStartFt - 0.4 * (1.625 - 1))).toBeLessThan(0.03);
    expect(pap.size.sharpnessDegPerFt).toBe(0);
  });

  test('what a bowler knows for sure is left out', () => {
    expect(surerOf(averageBowler, [{ layout: OTHER, offFt: byPap }])).toEqual([]);
  });

  test('what differs only from shot to shot is not offered, however much the layouts differ by it', () => {
    const byShots: OffFt = ({ launchAngle, spinPhase }) => 2 - 200 * launchAngle - Math.sin(spinPhase ?? 0);
    expect(surerOf(unsure, [{ layout: OTHER, offFt: byShots }])).toEqual([]);
  });

  test('a layout that may not be drilled, or that seldom reaches the pins, takes no place', () => {
    expect(surerOf(unsure, [{ layout: OTHER, offFt: byPap }], [])).toEqual([]);
    const usual = { layout: MIDDLE_LAYOUT, offFt: () => 9 };
    expect(surerOf(unsure, [{ layout: OTHER, offFt: byPap, reaches: false }, usual])).toEqual([]);
    expect(surerOf(unsure, [{ layout: OTHER, offFt: byPap }, usual])).toHaveLength(1);
  });

  test('most chance comes first', () => {
    const byRevs: OffFt = ({ spin }) => 2.1 - spin / 5;
    const found = surerOf(unsure, [
      { layout: OTHER, offFt: byPap },
      { layout: { ...OTHER, valAngleDeg: 60 }, offFt: byRevs },
    ]);
    expect(found.map(({ field }) => field)).toEqual(['revRateRpm', 'pap']);
    expect(found[0].chance).toBeGreaterThan(found[1].chance);
  });
});
