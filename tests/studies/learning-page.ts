import { chanceOfMore } from '../../src/learn/chance-of-more.js';
import { ENGINE_OFF } from '../../src/learn/predict-night.js';
import { type AfterLog, ASKED, type Compared, LOGS, RANKED } from './learning.js';
import { tableOf } from './text.js';

/** Deviations within which so many in a hundred of a normal number lie. */
const WITHIN = { 50: 0.6745, 80: 1.2816, 90: 1.6449, 95: 1.96 } as const;

/** Root mean square error of some predictions, the share of truths inside 90 % bands, and those bands' mean half width. */
export function summary(all: readonly Compared[]): {
  readonly error: number;
  readonly covered: number;
  readonly halfWidth: number;
} {
  const meanOf = (of: (compared: Compared) => number): number =>
    all.reduce((sum, each) => sum + of(each), 0) / all.length;
  return {
    error: Math.sqrt(meanOf(({ foretold, truth }) => (foretold.mean - truth) ** 2)),
    covered: meanOf(({ foretold: { mean, deviation }, truth }) =>
      Math.abs(mean - truth) <= WITHIN[90] * deviation ? 1 : 0,
    ),
    halfWidth: meanOf(({ foretold }) => WITHIN[90] * foretold.deviation),
  };
}

const BINS = 10;

/** Fewer bowlers say nothing of coverage. */
const LEAST_BOWLERS = 10;

/** A 90 % band that holds fewer truths is too narrow. */
const LEAST_COVERED = 0.8;

/** Whether ranks are even: chance of as uneven a histogram, and the share of truths inside central bands. */
export function evenness(ranks: readonly number[]): {
  readonly chance: number;
  readonly covered: readonly number[];
} {
  const counts = Array.from({ length: BINS }, () => 0);
  for (const rank of ranks) counts[Math.min(BINS - 1, Math.floor(BINS * rank))]++;
  const expected = ranks.length / BINS;
  const chiSquare = counts.reduce((sum, count) => sum + (count - expected) ** 2 / expected, 0);
  const inside = (percent: number): number =>
    ranks.filter((rank) => Math.abs(rank - 0.5) < percent / 200).length / ranks.length;
  return { chance: chanceOfMore(chiSquare, BINS - 1), covered: Object.keys(WITHIN).map(Number).map(inside) };
}

const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;
const cell = (all: readonly Compared[]): string => {
  const { error, covered, halfWidth } = summary(all);
  return `${error.toFixed(2)} (${percent(covered)}, ±${halfWidth.toFixed(1)})`;
};
/** As they would be if so many times as much were granted to the engine's own error. */
const granting = (times: number, id: (typeof ASKED)[number], all: readonly Compared[]): readonly Compared[] =>
  all.map(({ foretold: { mean, deviation }, truth }) => {
    const more = (times ** 2 - 1) * ENGINE_OFF[id] ** 2;
    return { foretold: { mean, deviation: Math.sqrt(deviation ** 2 + more) }, truth };
  });

const HEAD = ['pins, boards', 'breakpoint, boards', 'hook start, ft'];

/** The page of the study. */
export function learningPage(
  all: readonly (readonly AfterLog[] | null)[],
  twisted: readonly { readonly name: string; readonly found: readonly (readonly AfterLog[] | null)[] }[],
  allRanks: readonly (readonly number[] | null)[],
): string {
  const bowlers = all.filter((each) => each !== null);
  const ranks = allRanks.filter((each) => each !== null);
  const rows = (['logged', 'other'] as const).flatMap((which) =>
    LOGS.map((nights, k) => [
      which === 'logged' ? 'the logged ball' : 'another ball and layout',
      nights.length === 0
        ? '0'
        : `${nights.reduce((a, b) => a + b)} (${nights.length === 1 ? 'a night' : `${nights.length} nights`})`,
      ...ASKED.map((_, i) => cell(bowlers.map((found) => found[k][which][i]))),
    ]),
  );
  const doubted = LOGS.slice(1).map(
    (_, k) => bowlers.filter((found) => found[k + 1].doubt?.isDoubtful).length / bowlers.length,
  );
  const otherwise = [{ name: 'nothing', found: all }, ...twisted].flatMap(({ name, found }) => {
    const logs = found.flatMap((each) => each?.slice(-1) ?? []);
    return logs.length < LEAST_BOWLERS ? [] : [{ name, logs }];
  });
  const twists = otherwise.map(({ name, logs }) => [
    name,
    ...ASKED.map((_, i) => cell(logs.map(({ logged }) => logged[i]))),
    cell(logs.map(({ asRead }) => asRead[0])),
    `${logs.filter(({ doubt }) => doubt?.isDoubtful).length} of ${logs.length}`,
  ]);
  const granted = otherwise.flatMap(({ name, logs }) =>
    [1, 2, 3].map((times) => [
      name,
      `${times}`,
      ...ASKED.map((id, i) => {
        const all = granting(
          times,
          id,
          logs.map(({ logged }) => logged[i]),
        );
        const { covered, halfWidth } = summary(all);
        return `${percent(covered)}, ±${halfWidth.toFixed(1)}`;
      }),
    ]),
  );
  const calibrated = RANKED.map((what, i) => {
    const { chance, covered } = evenness(ranks.map((each) => each[i]));
    return [what, ...covered.map(percent), chance.toFixed(2)];
  });
  const tooSure = RANKED.filter((_, i) => evenness(ranks.map((each) => each[i])).covered[2] < LEAST_COVERED);
  return `# What logged shots teach, on blind bowlers

${bowlers.length} hidden bowlers and lanes near those of \`data\`, drawn by another generator than that of answers; further ${all.length - bowlers.length} who
would send more than one shot in ten into the gutter are left out. Their release, lane and ball are otherwise than their records say; nights differ in
oil, and on each the bowler aims anew. Shots scatter and are read with errors (arrows ±0.5 board, breakpoint ±1 board and ±3 ft, pins
±0.5, 50 ft ±1, flare ±1/4 in). Truth is by physics: the mean of a hundred shots on a night that is still to come.

Root mean square error; in brackets the share of truths inside 90 % bands and the mean half width of those.

${tableOf(['foretold of', 'shots', ...HEAD], rows)}

The log is doubted, though nothing is wrong with it, in ${doubted.map(percent).join(', ')} of these bowlers after 3, 10 and 30 shots.

## Where something is otherwise than any fit takes it to be

After 30 shots over three nights, the logged ball on a new night whose aim is known exactly; or told as this bowler reads boards. The last
column says how many of the logs are doubted. Coverage of 80 % is wanted, or a doubt; where a row has neither, the answer is too sure.

${tableOf(['what is otherwise', ...HEAD, 'pins, aim as read', 'doubted'], twists)}

The other friction law falls more slowly in thick oil: at a dozen units it grips as a film scale three of its deviations off would. No reading
shows that, so no log is doubted, and hook start is foretold too far down the lane. What it would take to cover it, and what that
would cost where nothing is otherwise: the share of truths inside 90 % bands and their mean half width, if so many times as much
were granted to the engine's own error.

${tableOf(['what is otherwise', 'times', ...HEAD], granted)}

## Calibration

${ranks.length} bowlers hidden exactly as the fit takes them to be, ten shots each: the share of truths inside central bands of what is learned of
each number, and the chance of ranks as uneven if all were as it should be (simulation-based calibration: Talts et al., arXiv:1804.06788, 2018).

${tooSure.length === 0 ? 'None is told too surely.' : `Told too surely so far: ${tooSure.join(', ')}.`}

${tableOf(['number', '50 % band', '80 % band', '90 % band', '95 % band', 'chance'], calibrated)}

Written by \`npm run study:learning -- FOLDER\`; nothing here is timed.
`;
}
