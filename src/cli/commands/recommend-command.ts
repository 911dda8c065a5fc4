import type { RankedLayout, RecommendAnswer } from '../../records/answers/answer.js';
import type { RecommendInputs } from '../../simulate/setting.js';
import { coreFitter } from '../files/core-fitter.js';
import { loadBall, loadBowler, loadLane } from '../files/load-record.js';
import { reportFlag } from '../files/report-flag.js';
import { keptBalls } from '../files/whole-shelf.js';
import { WANTED_PIN_SIDES } from '../flags/flag-table.js';
import { oneOf, wholeNumber } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { RecommendCommandOptions } from '../flags/options.js';
import { rulesFlag } from '../flags/rules-flag.js';
import { wantFlags } from '../flags/want-flags.js';
import { nextCommands, SAVED } from '../print/next-commands.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

export const USUAL_TOP = 4;
export const USUAL_SEED = 1;
const MOST_TOP = 10;
const GREATEST_SEED = 2 ** 31 - 1;

/** `flarewise recommend`: everything by flags. */
export async function recommendCommand(options: RecommendCommandOptions, terminal: Terminal): Promise<void> {
  const { bowler, ball, lane, want, report, ...search } = collectFaults({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    lane: () => loadLane(options.lane, terminal),
    want: () => wantFlags(options),
    report: () => reportFlag(options.report),
    ...searchFlags(options, terminal),
  });
  await answerRecommendation({ bowler, ball, lane, want }, search, options, terminal, report);
}

/** Readers of the flags that say how to search. */
export const searchFlags = (options: RecommendCommandOptions, terminal: Terminal) => ({
  top: () =>
    options.top === undefined
      ? USUAL_TOP
      : wholeNumber('--top', options.top, [1, MOST_TOP], 'How many layouts to list.'),
  seed: () =>
    options.seed === undefined
      ? USUAL_SEED
      : wholeNumber('--seed', options.seed, [0, GREATEST_SEED], 'The same seed gives the same answer.'),
  pinSide: () =>
    oneOf(
      '--pin-side',
      options.pinSide ?? 'above',
      WANTED_PIN_SIDES,
      'Where the pin may lie, seen from the midline.',
    ),
  ruleSet: () => rulesFlag(options.rules),
  budget: () => terminal.budget,
  ...globalFlags(options, terminal),
});

type Search = { [K in keyof ReturnType<typeof searchFlags>]: ReturnType<ReturnType<typeof searchFlags>[K]> };

/** Searches, with progress on stderr, prints the answer and, where a file is named for it, writes its web page. */
export async function answerRecommendation(
  inputs: RecommendInputs,
  search: Search,
  options: RecommendCommandOptions,
  terminal: Terminal,
  report: string | null = null,
): Promise<void> {
  const { recommend } = await import('../../answer/recommend.js');
  const fitter = coreFitter(terminal);
  const answer = await withProgress(terminal, (onProgress) =>
    recommend(inputs, {
      ...search,
      fitter,
      otherBalls: keptBalls(terminal).filter(({ name }) => name !== inputs.ball.name),
      onProgress,
    }),
  );
  const { recommendationReport } = await import('../../report/screens/recommendation-report.js');
  const next = commandsAfter(answer, options);
  printAnswer(answer, (page) => recommendationReport(answer, page), options, terminal, next);
  if (report === null) return;
  const [{ writeReport }, { recommendHtml }] = await Promise.all([
    import('../files/report-file.js'),
    import('../../report/web/recommend-html.js'),
  ]);
  const [best] = answer.layouts as [RankedLayout];
  writeReport(report, recommendHtml, { answer, layout: best, inputs, fitter }, options, terminal);
}

/** The sheet of the first layout, a second opinion on the next or the usual one, and where to keep what was drilled. */
function commandsAfter({ layouts, middle }: RecommendAnswer, options: RecommendCommandOptions) {
  if (options.bowler === undefined || options.ball === undefined) return [SAVED];
  const [best, other = middle] = layouts;
  const first = { ...options, layout: best?.text };
  return [
    ...nextCommands(first, ['sheet']),
    ...nextCommands({ ...options, layout: other.text }, ['judge']),
    ...nextCommands(first, ['keep']),
  ];
}
