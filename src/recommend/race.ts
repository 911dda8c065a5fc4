/** In how many worlds, counted from the first, the layouts still in the race have met after a round, and how many stay. */
interface Round {
  readonly worlds: number;
  readonly keep: number;
}

/** Few worlds for the hopeless, all for the close. */
const ROUNDS: readonly Round[] = [
  { worlds: 16, keep: 2500 },
  { worlds: 64, keep: 400 },
  { worlds: Number.POSITIVE_INFINITY, keep: 0 },
];

/** How a layout did in the race. */
export interface Raced {
  /** Its place in the list that was raced. */
  readonly index: number;
  readonly meanScore: number;
  /** Worlds it was scored in. */
  readonly worlds: number;
}

/**
 * Scores all of a list over worlds, the better the longer: after each round those with the lowest means so far drop out.
 * All meet the same worlds in the same order.
 *
 * @param scoreIn  scores some of the list in the world of an index, one after the other
 * @returns best first: those of later rounds come before all that dropped out
 */
export async function race(
  count: number,
  worlds: number,
  scoreIn: (world: number, which: Int32Array, tell: (index: number, score: number) => void) => Promise<void>,
): Promise<readonly Raced[]> {
  const sums = new Float64Array(count);
  const met = new Int32Array(count);
  let running = Int32Array.from({ length: count }, (_, i) => i);
  const out: number[][] = [];
  const byMean = (a: number, b: number): number => sums[b] / met[b] - sums[a] / met[a] || a - b;
  let world = 0;
  for (const round of ROUNDS) {
    for (; world < Math.min(worlds, round.worlds); world++)
      await scoreIn(world, running, (index, score) => {
        sums[index] += score;
        met[index] += 1;
      });
    const order = [...running].sort(byMean);
    out.unshift(order.slice(round.keep));
    running = Int32Array.from(order.slice(0, round.keep));
  }
  return out.flat().map((index) => ({ index, meanScore: sums[index] / met[index], worlds: met[index] }));
}
