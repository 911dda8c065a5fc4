import type { AskStreams } from '../../interview/ask/desk.js';
import type { Assignment, Ended, GoOn } from '../../interview/ask/run-interview.js';
import type { InterviewDraft } from '../../interview/draft.js';
import type { Given } from '../../interview/made-records.js';
import type { Needs } from '../../interview/questions/needs.js';
import { UNITS } from '../../report/text/display-units.js';
import { homeOf } from '../files/home.js';
import { readInterviewDraft, writeInterviewDraft } from '../files/interview-draft.js';
import { keepNamed } from '../files/keep-named.js';
import { wholeShelf } from '../files/whole-shelf.js';
import type { GlobalOptions } from '../flags/options.js';
import { unitsFlag } from '../flags/units-flag.js';
import { askStreams } from '../print/ask-streams.js';
import { withProgress } from '../print/progress.js';
import { isMendable } from '../terminal/collect-faults.js';
import { endOnSignals } from '../terminal/signals.js';
import type { Terminal } from '../terminal/terminal.js';
import type { Answered, Answerer } from './answered.js';
import { findAhead } from './find-ahead.js';
import { type MadeReady, makeReady } from './make-ready.js';

/** What is asked for before an answer, and what flags name already. */
export interface Wanted {
  readonly needs: Needs;
  readonly given: Given;
  /** Whether the answer simulates: what that takes is then made ready while questions are asked. */
  readonly isSimulated: boolean;
}

/**
 * Asks for what is wanted, then answers. Where the answers cannot be used the review opens again, and nothing typed is lost;
 * once the answer stands, guesses can be replaced by better values, and the question is answered again.
 */
export async function withInterview<Found>(
  wanted: Wanted,
  options: GlobalOptions,
  terminal: Terminal,
  { find, show }: Answerer<Found>,
): Promise<void> {
  const home = homeOf(terminal);
  const streams = askStreams(options, terminal);
  const [{ draftOf }, { wrongAnswer }] = await Promise.all([
    import('../../interview/draft.js'),
    import('../../interview/wrong-answer.js'),
  ]);
  const units = UNITS[unitsFlag(options.units)];
  let draft = readInterviewDraft(home);
  let goOn: GoOn | null = null;
  let answered: Answered;
  do {
    let making: Promise<MadeReady> | undefined;
    const ahead = findAhead<Found>(async (records, how) => find(records, { ...how, ready: await making }));
    try {
      const ended = await asked(wanted, { draft, goOn }, streams, options, terminal, {
        onDescribed(described) {
          if (wanted.isSimulated) making ??= makeReady(described, terminal);
        },
        onReview: ahead.begin,
      });
      draft = draftOf(ended.interview);
      endOnSignals();
      // a disk that cannot be written must not cost the answer
      const [kept] = await Promise.allSettled([keepNamed(ended.keep, ended, terminal)]);
      try {
        answered = await show(await withProgress(terminal, (line) => ahead.found(ended, line)));
      } catch (error) {
        if (!isMendable(error) || !wrongAnswer(error, ended.interview, units)) throw error;
        goOn = { misfit: error };
        continue;
      }
      if (kept.status === 'rejected') throw kept.reason;
      writeInterviewDraft(home, null); // whatever goes wrong before this line, the answers are offered again
      goOn = answered.goesOn ? await whatNext(ended, answered, streams, options, terminal) : null;
    } finally {
      ahead.stop();
      making?.then(
        ({ regression }) => regression.close(),
        () => undefined, // said with the answer
      );
    }
  } while (goOn);
}

async function asked(
  { needs, given }: Wanted,
  { draft, goOn }: { readonly draft: InterviewDraft | null; readonly goOn: GoOn | null },
  streams: AskStreams,
  options: GlobalOptions,
  terminal: Terminal,
  told: Pick<Assignment, 'onDescribed' | 'onReview'>,
): Promise<Ended> {
  const [{ runInterview }, { checkBall }] = await Promise.all([
    import('../../interview/ask/run-interview.js'),
    import('../../prepare/check-ball.js'),
  ]);
  const home = homeOf(terminal);
  return runInterview(streams, {
    shelf: wholeShelf(terminal),
    needs,
    given,
    units: UNITS[unitsFlag(options.units)],
    checkBall,
    draft,
    goOn,
    ...told,
    remember: (now) => writeInterviewDraft(home, now),
  });
}

/** What a person wants once the answer stands on the screen; null to end. */
async function whatNext(
  { interview }: Ended,
  { surer, heedKeys }: Answered,
  streams: AskStreams,
  options: GlobalOptions,
  { stdout }: Terminal,
): Promise<GoOn | null> {
  if (options.json || !stdout.isTTY) return null;
  const [{ afterAnswer }, { unknownFields, surestFirst }] = await Promise.all([
    import('../../interview/ask/after-answer.js'),
    import('../../interview/unknown-fields.js'),
  ]);
  const fields = surestFirst(unknownFields(interview), surer);
  for (;;) {
    const next = await afterAnswer(streams, interview, UNITS[unitsFlag(options.units)], fields);
    if (next !== 'back') return next;
    if (!(await heedKeys?.())) return null;
  }
}
