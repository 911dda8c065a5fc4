import { signed } from '../base/decimals.js';
import { toLayout } from '../prepare/to-layout.js';
import type { PracticeAnswer } from '../records/answers/answer.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { bandOf } from '../search/scoring/in-worlds.js';
import { READINGS } from '../simulate/readings.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';

/** What common practice says one number of a layout does; no source. */
interface Belief {
  readonly belief: string;
  readonly moved: string;
  readonly from: Partial<LayoutNumbers>;
  readonly to: Partial<LayoutNumbers>;
  readonly reading: keyof typeof READINGS;
  /** The number grows by the belief: in a word, and the other way. */
  readonly more: string;
  readonly less: string;
  readonly unit: string;
  readonly digits: number;
}

const HOOK_START = {
  reading: 'hookStartFt',
  more: 'later',
  less: 'earlier',
  unit: 'ft',
  digits: 1,
} as const;
const FLARE = { reading: 'flareIn', more: 'more', less: 'less', unit: 'in', digits: 1 } as const;
const HOOK = { reading: 'totalHookBoards', more: 'more', less: 'less', unit: 'boards', digits: 1 } as const;
const SHAPE = {
  reading: 'sharpnessDegPerFt',
  more: 'sharper',
  less: 'smoother',
  unit: 'deg/ft',
  digits: 3,
} as const;

const BELIEFS: readonly Belief[] = [
  {
    belief: 'A larger drilling angle hooks later',
    moved: 'drilling angle 20° to 80°',
    from: { drillingAngleDeg: 20 },
    to: { drillingAngleDeg: 80 },
    ...HOOK_START,
  },
  {
    belief: 'A smaller VAL angle, and with it a smaller pin buffer, turns the corner more sharply',
    moved: 'VAL angle 70° to 20°',
    from: { valAngleDeg: 70 },
    to: { valAngleDeg: 20 },
    ...SHAPE,
  },
  {
    belief: 'Flare is greatest with the pin near 3 3/8 in from the PAP',
    moved: 'pin-to-PAP 5 1/2 in to 3 3/8 in',
    from: { pinToPapIn: 5.5 },
    to: { pinToPapIn: 3.375 },
    ...FLARE,
  },
  {
    belief: 'More flare hooks more',
    moved: 'pin-to-PAP 5 1/2 in to 3 3/8 in',
    from: { pinToPapIn: 5.5 },
    to: { pinToPapIn: 3.375 },
    ...HOOK,
  },
];

/** Share of the worlds that makes a verdict. */
const MOSTLY = 0.75;

/** Least mean change that shows, over the band from world to world: a fifth of a standard deviation. */
const SHOWS = 0.06;

/**
 * Sets what common practice expects beside what the engine finds for this bowler, ball and lane: one number of a layout is
 * moved over most of its usual range, the others stay, each end on its own line, in the nominal world and in others. A
 * belief is left out where the ball reaches the pins in none, or has no drilling angle to move.
 */
export async function commonPractice(
  layout: LayoutNumbers,
  { problem, evaluator, budget }: Setting,
): Promise<PracticeAnswer[]> {
  const { radius } = problem.ball.published;
  const beliefs = BELIEFS.filter(
    ({ to }) => problem.ball.marker !== null || to.drillingAngleDeg === undefined,
  );
  const ends = beliefs.flatMap(({ from, to }) =>
    [from, to].map((end) => toLayout({ ...layout, ...end }, radius)),
  );
  const nominal = await evaluator.evaluate(ends.map((each) => ({ layout: each, world: 0 })));
  const worlds = Math.min(budget.practiceWorlds, problem.luck.length);
  const inWorlds = await evaluator.evaluate(
    ends.flatMap((each, i) =>
      Array.from({ length: worlds }, (_, k) => ({
        layout: each,
        world: 1 + k,
        launch: nominal[i].launch,
      })),
    ),
  );
  return beliefs.flatMap((belief, i) => {
    const [from, to] = [2 * i, 2 * i + 1];
    const read = READINGS[belief.reading];
    const of = (end: number): readonly Outcome[] => inWorlds.slice(end * worlds, (end + 1) * worlds);
    const pairs = of(from).map((a, k) => [a, of(to)[k]] as const);
    const played = pairs.filter((pair) => pair.every(({ shot }) => shot === 'pins'));
    if (played.length === 0) return [];
    const changes = played.map(([a, b]) => read(b) - read(a));
    const { low, high } = bandOf(played.map(([a]) => read(a)));
    return [answerTo(belief, read(nominal[to]) - read(nominal[from]), changes, high - low)];
  });
}

function answerTo(
  { belief, moved, more, less, unit, digits, reading }: Belief,
  change: number,
  changes: readonly number[],
  spread: number,
): PracticeAnswer {
  const mean = changes.reduce((sum, each) => sum + each, 0) / changes.length;
  const holdsIn = changes.filter((each) => each > 0).length / changes.length;
  const shows = Math.abs(mean) >= SHOWS * spread;
  const verdict = !shows
    ? 'hardly-shows'
    : holdsIn >= MOSTLY
      ? 'agrees'
      : holdsIn <= 1 - MOSTLY
        ? 'disagrees'
        : 'depends';
  const share = Math.round(100 * holdsIn);
  const found = {
    agrees: `the engine agrees: ${more} in ${share} % of ${changes.length} worlds`,
    disagrees: `the engine disagrees: ${less} in ${100 - share} % of ${changes.length} worlds`,
    depends: `it depends on the world: ${more} in ${share} % of ${changes.length}`,
    'hardly-shows': `in the engine that hardly shows beside what shots and lane vary`,
  }[verdict];
  return {
    belief,
    reading,
    change,
    holdsIn,
    worlds: changes.length,
    verdict,
    says: `${belief}. Here, ${moved}: ${signed(change, digits)} ${unit}; ${found}.`,
  };
}
