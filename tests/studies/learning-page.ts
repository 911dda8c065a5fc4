import { chanceOfMore } from '../../src/learn/chance-of-more.js';
import { ASKED, type Compared } from './blind-case.js';
import { CHOICES } from './learned-choices.js';
import { type AfterLog, LOGS, RANKED } from './learning.js';
import { MORE_READINGS } from './more-readings.js';
import { LANE_LOGS } from './other-lanes.js';
import type { ReadAim } from './read-aims.js';
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

/** Of a share of nine in ten of those that are not null. */
const standardError = (found: readonly unknown[]): number =>
  Math.sqrt((0.9 * 0.1) / found.filter((each) => each !== null).length);

/** Standard deviation between nights of one bowler, of all bowlers. */
function apart(nights: LearningStudy['nights'], i: number): string {
  const known = nights.filter((each) => each !== null);
  return Math.sqrt(known.reduce((sum, each) => sum + each[i], 0) / known.length).toFixed(1);
}

const percent = (share: number): string => `${(100 * share).toFixed(0)} %`;
const cell = (all: readonly Compared[]): string => {
  const { error, covered, halfWidth } = summary(all);
  return `${error.toFixed(2)} (${percent(covered)}, ±${halfWidth.toFixed(1)})`;
};
const HEAD = ['pins, boards', 'breakpoint, boards', 'hook start, ft'];

/** Bowlers of the whole study, of those who play a line. */
const WHOLE = 200;

/** What was worked out of many blind bowlers; null where one plays no line that most shots stay on. */
interface LearningStudy {
  readonly bowlers: readonly (readonly AfterLog[] | null)[];
  readonly twisted: readonly { readonly name: string; readonly found: LearningStudy['bowlers'] }[];
  readonly ranked: readonly (readonly number[] | null)[];
  readonly choosing: readonly (readonly (readonly number[])[] | null)[];
  readonly lanes: readonly (readonly (readonly Compared[])[] | null)[];
  readonly readers: readonly { readonly name: string; readonly found: readonly (ReadAim | null)[] }[];
  readonly more: readonly (readonly number[] | null)[];
  /** Variances between nights of one bowler, in the order of `ASKED`. */
  readonly nights: readonly (readonly number[] | null)[];
}

/** The page of the study. */
export function learningPage({
  bowlers: all,
  twisted,
  ranked: allRanks,
  choosing: allChoices,
  lanes,
  readers,
  more,
  nights,
}: LearningStudy): string {
  const bowlers = all.filter((each) => each !== null);
  const ranks = allRanks.filter((each) => each !== null);
  const rows = (['logged', 'other'] as const).flatMap((which) =>
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
  const twists = otherwise.map(({ name, logs }) => [
    name,
    ...HEAD.map((_, i) => cell(logs.map(({ logged }) => logged[i]))),
    `${logs.filter(({ doubt }) => doubt?.isDoubtful).length} of ${logs.length}`,
  ]);
  const narrow = otherwise.flatMap(({ name, logs }) =>
    HEAD.flatMap((head, i) =>
      summary(logs.map(({ logged }) => logged[i])).covered < LEAST_COVERED ? [`${name}: ${head}`] : [],
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
aim of the new night is known exactly. Without a log the friction law counts as known, as in all answers without one, so those bands are
narrower than they should be.

${tableOf(['predicted', 'shots', ...HEAD], rows)}

The program doubts a sound log in ${doubted.map(percent).join(', ')} of the cases after 3, 10 and 30 shots.

Nights of one bowler with one ball and one aim lie ${apart(nights, 0)} boards apart at the pins (root mean square), ${apart(nights, 1)} boards at the breakpoint
and ${apart(nights, 2)} ft in hook start, since the oil differs from night to night (${nights.filter((each) => each !== null).length} bowlers): nothing learned from other nights can foretell that.
Bands of the breakpoint and of hook start hold more than nine truths in ten, because they allow for another friction law on thick oil (see below).

## Nights on other lanes

Two lanes with other patterns, whose oil and boards differ as well: half of the variance of friction on oil, friction on dry boards and film
scale belongs to the lane, half is the same on both. ${lanes.filter((each) => each !== null).length} more bowlers (a share of 90 % is uncertain by ${percent(standardError(lanes))}, one standard error); a
night is ten shots. The table predicts a night on the first lane.

${tableOf(['nights logged there', 'on the other lane', ...HEAD], laneRows(lanes))}

## The aim as a bowler reads it

The first table knows exactly where the ball is sent. A bowler knows it only from boards as read, and one who reads them too high does so every
night. The log was read in the same way, so what it says about the lane depends on how the bowler reads, and the two are drawn jointly. Board at the pins
of a night to come with the logged ball, after 30 shots over three nights (with so few bowlers a share of 90 % is uncertain by ${percent(standardError(readers[0].found))}, one standard error):

${tableOf(['how the aim is read', 'without a log', 'the aim taken for exact', 'the aim as read', 'doubted'], readerRows(readers))}

## Readings that are kept and not learned from

The speed on a display over the lane and a ring over a hole are kept with a shot, but nothing is learned from them, since they would teach hardly
anything. For ${more.filter((each) => each !== null).length} bowlers with ten logged shots, the table gives by how much the prediction of the board at the pins narrows with one more night of
ten shots. Displays are assumed to show the mean speed over the last 15 ft (common practice, no source). The boards already say how fast the ball
must have been; a display that its house has set 0.7 mph off (assumed) says little more. Whether a ring runs over a hole says less than how far it
runs from the hole, and even that, measured to 1/8 in, adds next to nothing.

${tableOf(['read besides laydown, arrows, breakpoint and pins', 'narrower by, mean', 'most'], moreRows(more))}

## What choices cost

Each bowler chooses what should bring the ball nearest to the pocket: one of three lines 0.3° apart, one of two balls, one of three finishes
(500, 2000, 4000 grit), or all three at once. The cost of a choice is how many boards farther from the pocket the shots then end than they
would by the best choice.

${tableOf(['choice', 'without a log', 'after 30 shots'], choiceRows(allChoices))}

## Where the model is wrong

After 30 shots over three nights, with the logged ball, the aim known exactly. Each row should have 80 % coverage, or a doubt; rows of fewer than ${LEAST_BOWLERS} bowlers are left out. ${narrow.length === 0 ? 'Every row does.' : `Too narrow are: ${narrow.join('; ')}.`}

${tableOf(['what is different', ...HEAD, 'doubted'], twists)}

Two rows replace the friction law of thick oil: by a hyperbola, which the model can take on, and by a stretched exponential, which it
cannot. In thick oil both grip more than the usual law does. The log shows that by where the ball goes, but no reading shows where a hook starts.
The band of hook start therefore counts a third of a standard deviation of the law's shape as unknown, whatever was logged: on thick oil
hook start stays uncertain by several feet, and boards alone cannot change that. A log made under another law is therefore never doubted: its
readings agree with one another, and the wider bands cover it.

## Calibration

${ranks.length} bowlers were drawn exactly as the model assumes, with ten shots each. The table gives the share of truths inside the central bands of each
number learned, and the chance of ranks as uneven as these or more so if the bands are right (simulation-based calibration: Talts et al., arXiv:1804.06788,
2018). A share of 90 % is uncertain by ${percent(standardError(ranks))} with ${ranks.length} draws (one standard error). ${tooSure.length === 0 ? 'No band is too narrow.' : `Too narrow so far: ${tooSure.join(', ')}.`}

${tableOf(['number', '50 % band', '80 % band', '90 % band', '95 % band', 'chance'], calibrated)}

Written by \`npm run study:learning -- FOLDER\`; nothing here is timed.
`;
}

/** What is predicted, and where. */
const ROWS = {
  logged: 'the logged ball',
  other: 'another ball and layout',
} as const;

function choiceRows(all: readonly (readonly (readonly number[])[] | null)[]): string[][] {
  const bowlers = all.filter((each) => each !== null);
  const meanOf = (log: number, choice: number): string =>
    `${(bowlers.reduce((sum, each) => sum + each[log][choice], 0) / bowlers.length).toFixed(2)} boards`;
  return Object.keys(CHOICES).map((name, i) => [name, meanOf(0, i), meanOf(1, i)]);
}

function laneRows(all: LearningStudy['lanes']): string[][] {
  const bowlers = all.filter((each) => each !== null);
  return LANE_LOGS.map(({ here, there }, log) => [
    String(here),
    String(there),
    ...HEAD.map((_, i) => cell(bowlers.map((each) => each[log][i]))),
  ]);
}

const readerRows = (readers: LearningStudy['readers']): string[][] =>
  readers.map(({ name, found }) => {
    const bowlers = found.filter((each) => each !== null);
    return [
      name,
      ...(['withoutLog', 'takenForExact', 'asRead'] as const).map((which) =>
        cell(bowlers.map((each) => each[which])),
      ),
      `${bowlers.filter(({ isDoubtful }) => isDoubtful).length} of ${bowlers.length}`,
    ];
  });

function moreRows(all: LearningStudy['more']): string[][] {
  const bowlers = all.filter((each) => each !== null);
  return ['nothing else', ...Object.keys(MORE_READINGS)].map((name, i) => {
    const shares = bowlers.map((each) => each[i]);
    const meanShare = shares.reduce((sum, each) => sum + each, 0) / shares.length;
    return [name, `${(100 * meanShare).toFixed(1)} %`, `${(100 * Math.max(...shares)).toFixed(1)} %`];
  });
}
