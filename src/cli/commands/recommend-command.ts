import type { RankedLayout } from '../../records/answers/answer.js';
import { USUAL_PRACTICE_WEIGHT } from '../../records/shared/beliefs.js';
import type { SectionId } from '../../report/screens/section-ids.js';
import type { Page } from '../../report/text/page.js';
import type { RecommendInputs } from '../../simulate/setting.js';
import { coreFitter } from '../files/core-fitter.js';
import { loadBall, loadBowler, loadLane } from '../files/load-record.js';
import { type Called, nextCommands } from '../files/next-commands.js';
import { reportFlag } from '../files/report-flag.js';
import { keptBalls } from '../files/whole-shelf.js';
import { WANTED_PIN_SIDES } from '../flags/flag-table.js';
import { oneOf, wholeNumber } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { GlobalOptions, RecommendCommandOptions } from '../flags/options.js';
import { rulesFlag } from '../flags/rules-flag.js';
import { showFlag } from '../flags/show-flag.js';
import { wantFlags } from '../flags/want-flags.js';
import { pageFor } from '../print/page-for.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import type { MadeReady } from './make-ready.js';
import { openSections } from './open-sections.js';

export const USUAL_TOP = 4;
export const USUAL_SEED = 1;
const MOST_TOP = 10;
const GREATEST_SEED = 2 ** 31 - 1;

/** `flarewise recommend`: everything by flags. */
export async function recommendCommand(options: RecommendCommandOptions, terminal: Terminal): Promise<void> {
  const { bowler, ball, lane, want, report, sections, ...search } = collectFaults({
    bowler: () => loadBowler(options.bowler, terminal),
    ball: () => loadBall(options.ball, terminal),
    lane: () => loadLane(options.lane, terminal),
    want: () => wantFlags(options),
    report: () => reportFlag(options.report),
    sections: () => showFlag(options),
    ...searchFlags(options, terminal),
  });
  // all three flags were given, or there would be no records
  const called = { bowler: options.bowler!, ball: options.ball!, lane: options.lane! };
  const inputs = { bowler, ball, lane, want };
  await answerRecommendation(inputs, search, options, terminal, { report, sections, called });
}

/** Readers of the flags that say how to search. */
export const searchFlags = (options: Omit<RecommendCommandOptions, 'ball'>, terminal: Terminal) => ({
  top: () =>
    options.top === undefined
      ? USUAL_TOP
      : wholeNumber('--top', options.top, [1, MOST_TOP], 'How many layouts to list.'),
  seed: () =>
    options.seed === undefined
      ? USUAL_SEED
      : wholeNumber('--seed', options.seed, [0, GREATEST_SEED], 'The same seed gives the same answer.'),
  practiceWeight: () =>
    options.practice === undefined
      ? USUAL_PRACTICE_WEIGHT
      : wholeNumber(
          '--practice',
          options.practice,
          [0, 100],
          '0 is physics alone, 100 counts every belief.',
        ) / 100,
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

/** A person who waits for an answer on the screen is shown what can be said at once; a program is not. */
const showsFirstLook = ({ json }: GlobalOptions, { stdout, stderr }: Terminal): boolean =>
  !json && Boolean(stdout.isTTY && stderr.isTTY);

/** What goes with an answer. */
export interface AnswerOptions {
  /** A file for its web page. */
  readonly report?: string | null;
  /** What is printed behind the first screen. */
  readonly sections?: readonly SectionId[];
  /** What the records are called on a command line. */
  readonly called?: Called | null;
  readonly ready?: MadeReady | undefined;
}

/** Searches, with progress on stderr, prints the answer and, where a file is named for it, writes its web page. */
export async function answerRecommendation(
  inputs: RecommendInputs,
  search: Search,
  options: RecommendCommandOptions,
  terminal: Terminal,
  { report = null, sections = [], called = null, ready }: AnswerOptions = {},
): Promise<void> {
  const { fitter = coreFitter(terminal) } = ready ?? {};
  const isShown = showsFirstLook(options, terminal);
  const { shareRegression } = await import('../../regression/open-regression.js');
  const regression = ready?.regression ?? shareRegression();
  if (isShown) regression.glance(); // while the rest is loaded
  const { recommend } = await import('../../answer/recommend.js');
  const answer = await withProgress(terminal, (onProgress, line) =>
    recommend(inputs, {
      ...search,
      fitter,
      regression,
      otherBalls: keptBalls(terminal).filter(({ name }) => name !== inputs.ball.name),
      onProgress,
      onFirstLook: isShown ? (look) => line.look(look, pageFor(options, terminal)) : undefined,
    }),
  ).finally(regression.close);
  const { recommendationReport } = await import('../../report/screens/recommendation-report.js');
  const [best] = answer.layouts as [RankedLayout];
  const next = (page: Page): string[] => nextCommands(called, best.text, page.width);
  printAnswer(
    answer,
    (page) => recommendationReport(answer, page, { sections, next: next(page) }),
    options,
    terminal,
  );
  await openSections(answer, options, terminal);
  if (report === null) return;
  const [{ writeReport }, { recommendHtml }] = await Promise.all([
    import('../files/report-file.js'),
    import('../../report/web/recommend-html.js'),
  ]);
  writeReport(report, recommendHtml, { answer, layout: best, inputs, fitter }, options, terminal);
}
