import { chanceOfMore } from '../../src/learn/chance-of-more.js';
import { CHOICES } from './learned-choices.js';
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
const HEAD = ['pins, boards', 'breakpoint, boards', 'hook start, ft'];

/** Bowlers of the whole study, of those who play a line. */
const WHOLE = 200;

/** The page of the study. */
export function learningPage(
  all: readonly (readonly AfterLog[] | null)[],
  twisted: readonly { readonly name: string; readonly found: readonly (readonly AfterLog[] | null)[] }[],
  allRanks: readonly (readonly number[] | null)[],
  allChoices: readonly (readonly (readonly number[])[] | null)[],
): string {
  const bowlers = all.filter((each) => each !== null);
  const ranks = allRanks.filter((each) => each !== null);
  const rows = (['logged', 'asRead', 'other'] as const).flatMap((which) =>
    LOGS.map((nights, k) => [
      ROWS[which],
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
  const readingsOf = ({ logged, asRead }: AfterLog): readonly Compared[] => [...logged, asRead[0]];
  const twists = otherwise.map(({ name, logs }) => [
    name,
    ...[...HEAD.keys(), HEAD.length].map((i) => cell(logs.map((log) => readingsOf(log)[i]))),
    `${logs.filter(({ doubt }) => doubt?.isDoubtful).length} of ${logs.length}`,
  ]);
  const narrow = otherwise.flatMap(({ name, logs }) =>
    [...HEAD, AS_READ].flatMap((head, i) =>
      summary(logs.map((log) => readingsOf(log)[i])).covered < LEAST_COVERED ? [`${name}: ${head}`] : [],
    ),
  );
  const calibrated = RANKED.map((what, i) => {
    const { chance, covered } = evenness(ranks.map((each) => each[i]));
    return [what, ...covered.map(percent), chance.toFixed(2)];
  });
  const tooSure = RANKED.filter((_, i) => evenness(ranks.map((each) => each[i])).covered[2] < LEAST_COVERED);
  const errorOf = (k: number): string => summary(bowlers.map((found) => found[k].logged[0])).error.toFixed(1);
  return `# What logged shots teach, tried on simulated bowlers

**The board at the pins of a night to come is predicted to within ${errorOf(0)} boards without a log (root mean square), ${errorOf(1)} after 3 logged
shots, ${errorOf(2)} after 10 and ${errorOf(3)} after 30 over three nights.** ${bowlers.length} bowlers were simulated. The program did not know their true release,
lane and ball, which differ from what their records say.${bowlers.length < WHOLE ? ` The study is unfinished: it is meant to have ${WHOLE} bowlers, and so few say little of coverage.` : ''}

How it was done. The bowlers and lanes lie near those of \`data\` and were drawn by another random generator than the program's own. The oil
differs from night to night, and the bowler aims anew on each. Shots scatter, and each reading has an error: arrows ±0.5 board, breakpoint
±1 board and ±3 ft, pins ±0.5, 50 ft ±1, flare ±1/4 in. The truth is the mean of a hundred simulated shots on a night that was not logged. A
further ${all.length - bowlers.length} bowlers, who would send more than one shot in ten into the gutter, were left out.

Each cell gives the root mean square error; in brackets the share of truths inside 90 % bands, and the mean half width of the bands. The
aim of the new night is known exactly in all rows but those that say "as read": there it is what the bowler reads of it, with the
error that a night's mean readings have. Without a log the friction law counts as known, as in all answers without one, so those bands are
narrower than they should be.

${tableOf(['predicted', 'shots', ...HEAD], rows)}

The program doubts a log with which nothing is wrong in ${doubted.map(percent).join(', ')} of the cases after 3, 10 and 30 shots.

## What choices cost

Each bowler chooses what should bring the ball nearest to the pocket: one of three lines 0.3° apart, one of two balls, one of three finishes
(500, 2000, 4000 grit), or all three at once. The cost of a choice is how many boards farther from the pocket the shots then end than they
would by the best choice.

${tableOf(['choice', 'without a log', 'after 30 shots'], choiceRows(allChoices))}

## Where the model is wrong

After 30 shots over three nights, with the logged ball. 80 % coverage is wanted, or a doubt; rows of fewer than ${LEAST_BOWLERS} bowlers are left out. ${narrow.length === 0 ? 'Every row has it.' : `Too narrow are: ${narrow.join('; ')}.`}

${tableOf(['what is different', ...HEAD, AS_READ, 'doubted'], twists)}

Two rows replace the friction law of thick oil: by a hyperbola, which the model can take on, and by a stretched exponential, which it
cannot. In thick oil both grip more than the usual law does. The log shows that by where the ball goes, but no reading shows where a hook starts.
The band of hook start therefore counts a third of a standard deviation of the law's shape as unknown, whatever was logged: on thick oil
hook start stays uncertain by several feet, and boards alone cannot change that.

## Calibration

${ranks.length} bowlers were drawn exactly as the model assumes, with ten shots each. The table gives the share of truths inside the central bands of each
number learned, and the chance of ranks as uneven as these or more so if the bands are right (simulation-based calibration: Talts et al., arXiv:1804.06788,
2018). A share of 90 % is uncertain by ${percent(Math.sqrt((0.9 * 0.1) / ranks.length))} with ${ranks.length} draws (one standard error). ${tooSure.length === 0 ? 'No band is too narrow.' : `Too narrow so far: ${tooSure.join(', ')}.`}

${tableOf(['number', '50 % band', '80 % band', '90 % band', '95 % band', 'chance'], calibrated)}

Written by \`npm run study:learning -- FOLDER\`; nothing here is timed.
`;
}

/** What is predicted, and where. */
const ROWS = {
  logged: 'the logged ball',
  asRead: 'the same, aim as read',
  other: 'another ball and layout',
} as const;

const AS_READ = 'pins, aim as read';

function choiceRows(all: readonly (readonly (readonly number[])[] | null)[]): string[][] {
  const bowlers = all.filter((each) => each !== null);
  const meanOf = (log: number, choice: number): string =>
    `${(bowlers.reduce((sum, each) => sum + each[log][choice], 0) / bowlers.length).toFixed(2)} boards`;
  return Object.keys(CHOICES).map((name, i) => [name, meanOf(0, i), meanOf(1, i)]);
}
