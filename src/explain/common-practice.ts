import { meanSimple } from 'simple-statistics';
import { toLayout } from '../prepare/to-layout.js';
import type { PracticeFinding } from '../records/answers/statements/practice.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { bandOf } from '../search/scoring/world-statistics.js';
import { reader } from '../simulate/readings.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';

/** What common practice says one number of a layout does: with it moved so, a reaction number grows; no source. */
interface Belief extends Pick<PracticeFinding['params'], 'number' | 'from' | 'to' | 'reading'> {
  readonly code: PracticeFinding['code'];
}

const BELIEFS: readonly Belief[] = [
  {
    code: 'drilling-angle-hooks-later',
    reading: 'hookStartFt',
    number: 'drillingAngleDeg',
    from: 20,
    to: 80,
  },
  { code: 'val-angle-turns-sharper', reading: 'sharpnessDegPerFt', number: 'valAngleDeg', from: 70, to: 20 },
  { code: 'pin-to-pap-flares-most', reading: 'flareIn', number: 'pinToPapIn', from: 5.5, to: 3.375 },
  { code: 'flare-hooks-more', reading: 'totalHookBoards', number: 'pinToPapIn', from: 5.5, to: 3.375 },
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
): Promise<PracticeFinding[]> {
  const { radius } = problem.ball.published;
  const beliefs = BELIEFS.filter(
    ({ number }) => problem.ball.marker !== null || number !== 'drillingAngleDeg',
  );
  const ends = beliefs.flatMap(({ number, from, to }) =>
    [from, to].map((end) => toLayout({ ...layout, [number]: end }, radius)),
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
  return beliefs.flatMap(({ code, ...belief }, i): PracticeFinding[] => {
    const [from, to] = [2 * i, 2 * i + 1];
    const read = reader(belief.reading);
    const of = (end: number): readonly Outcome[] => inWorlds.slice(end * worlds, (end + 1) * worlds);
    const pairs = of(from).map((a, k) => [a, of(to)[k]] as const);
    const played = pairs.filter((pair) => pair.every(({ shot }) => shot === 'pins'));
    if (played.length === 0) return [];
    const changes = played.map(([a, b]) => read(b) - read(a));
    const { low, high } = bandOf(played.map(([a]) => read(a)));
    const found = foundIn(read(nominal[to]) - read(nominal[from]), changes, high - low);
    return [{ code, params: { ...belief, ...found } }];
  });
}

function foundIn(
  change: number,
  changes: readonly number[],
  spread: number,
): Pick<PracticeFinding['params'], 'change' | 'holdsIn' | 'worlds' | 'verdict'> {
  const mean = meanSimple([...changes]);
  const holdsIn = changes.filter((each) => each > 0).length / changes.length;
  const shows = Math.abs(mean) >= SHOWS * spread;
  const verdict = !shows
    ? 'hardly-shows'
    : holdsIn >= MOSTLY
      ? 'agrees'
      : holdsIn <= 1 - MOSTLY
        ? 'disagrees'
        : 'depends';
  return { change, holdsIn, worlds: changes.length, verdict };
}
