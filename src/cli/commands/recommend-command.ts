import type { RankedLayout, RecommendAnswer } from '../../records/answers/answer.js';
import type { SectionId } from '../../records/schemas/recommend-sections.js';
import type { NextStep } from '../../report/screens/next-steps.js';
import type { RecommendInputs } from '../../simulate/setting.js';
import type { Answered, Answerer, Finding } from '../answering/answered.js';
import { type Searched, searched } from '../answering/searched.js';
import { recordReaders, withLane, withRecords } from '../answering/with-records.js';
import { knownIds } from '../files/known-ids.js';
import { reportFlag } from '../files/report-flag.js';
import { askedFlags, isAnyAsked } from '../flags/asked-flags.js';
import type { GlobalOptions, RecommendCommandOptions } from '../flags/options.js';
import { type Search, searchFlags } from '../flags/search-flags.js';
import { showFlag } from '../flags/show-flag.js';
import { heedKeys, menuLines } from '../keys/heed-keys.js';
import { nextCommands, SAVED } from '../print/next-commands.js';
import { pageFor } from '../print/page-for.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/** `flarewise recommend`: everything by flags; in a terminal, what they leave out is asked for. */
export async function recommendCommand(options: RecommendCommandOptions, terminal: Terminal): Promise<void> {
  const needs = askedFlags(options, ['bowler', 'ball', 'lane', 'want'], terminal);
  const { report, sections, records, ...search } = collectFaults({
    records: () => collectFaults(recordReaders(options, needs, terminal)),
    report: () => reportFlag(options.report),
    sections: () => showFlag(options),
    ...searchFlags(options, terminal),
  });
  await withRecords(
    { needs, given: records, isSimulated: true },
    options,
    terminal,
    recommendationAnswerer(search, options, terminal, { report, sections, isAsked: isAnyAsked(needs) }),
  );
}

/** A person who waits for an answer on the screen is shown what can be said at once; a program is not. */
const showsFirstLook = ({ json }: GlobalOptions, { stdout, stderr }: Terminal): boolean =>
  !json && Boolean(stdout.isTTY && stderr.isTTY);

/** What goes with an answer. */
interface AnswerOptions {
  /** A file for its web page. */
  readonly report?: string | null;
  /** What is printed behind the first screen. */
  readonly sections?: readonly SectionId[];
  /** Whether the inputs were asked for, and so can still be changed. */
  readonly isAsked?: boolean;
}

/** Searches; prints the answer and, where a file is named for it, writes its web page. */
export const recommendationAnswerer = (
  search: Search,
  options: RecommendCommandOptions,
  terminal: Terminal,
  how: AnswerOptions = {},
): Answerer<Searched<RecommendAnswer>> => ({
  find: (records, finding) => findRecommendation(withLane(records), finding, search, options, terminal),
  show: (recommended) => showRecommendation(recommended, search, options, terminal, how),
});

async function findRecommendation(
  given: RecommendInputs,
  finding: Finding,
  search: Search,
  options: RecommendCommandOptions,
  terminal: Terminal,
): Promise<Searched<RecommendAnswer>> {
  const { line, ready } = finding;
  const isShown = showsFirstLook(options, terminal);
  return searched(given, finding, search, options, terminal, async (inputs, how) => {
    const { shareRegression } = await import('../../regression/open-regression.js');
    const regression = ready?.regression ?? shareRegression();
    if (isShown) regression.glance(); // while the rest is loaded
    const { recommend } = await import('../../answer/recommend.js');
    return recommend(inputs, {
      ...how,
      regression,
      onFirstLook: isShown ? (look) => line.look(look, pageFor(options, terminal)) : undefined,
    }).finally(() => (ready ? undefined : regression.close()));
  });
}

async function showRecommendation(
  { answer, inputs, fitter }: Searched<RecommendAnswer>,
  search: Search,
  options: RecommendCommandOptions,
  terminal: Terminal,
  { report = null, sections = [], isAsked = false }: AnswerOptions,
): Promise<Answered> {
  const [best] = answer.layouts;
  // behind the first screen alone: one that is shown beside sections ends with them
  const beneath = menuLines({ options, terminal }, isAsked);
  const next = commandsAfter(best, inputs, options, terminal, beneath > 0);
  await printAnswer(
    answer,
    async (page) => {
      const { recommendationReport } = await import('../../report/screens/recommendation-report.js');
      return recommendationReport(answer, page, { sections, next, beneath });
    },
    options,
    terminal,
  );
  const standing = { answer, inputs, search, fitter, next, options, terminal };
  if (report !== null) {
    const { writePage } = await import('../keys/write-page.js');
    await writePage(report, standing);
  }
  const heed = (): Promise<boolean> => heedKeys(standing, isAsked);
  return {
    goesOn: await heed(),
    surer: answer.surer.flatMap(({ field }) => (field === null ? [] : [field])),
    heedKeys: heed,
  };
}

/** What may follow: the sheet, where all records have ids. Else a key below the answer saves them, or the shelf shows what is saved. */
function commandsAfter(
  { text: layout }: RankedLayout,
  inputs: RecommendInputs,
  options: RecommendCommandOptions,
  terminal: Terminal,
  hasKeys: boolean,
): NextStep[] {
  const isNamed = options.bowler !== undefined && options.ball !== undefined;
  const known = isNamed ? {} : knownIds(inputs, terminal);
  const bowler = options.bowler ?? known.bowler;
  const ball = options.ball ?? known.ball;
  const lane = options.lane ?? known.lane;
  if (isNamed || (bowler && ball && lane))
    return nextCommands({ ...options, bowler, ball, lane, layout }, ['sheet']);
  return hasKeys ? [] : [SAVED];
}
