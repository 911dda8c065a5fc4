import { Cancelled, InputError } from '../../base/errors.js';
import type { Shelf } from '../../records/read/shelf.js';
import { Refusal } from '../../records/refusals/refusal.js';
import type { Ball } from '../../records/schemas/ball.js';
import { UNITS, type Units } from '../../report/text/display-units.js';
import { answerCount, draftOf, type InterviewDraft, resumed } from '../draft.js';
import { answersOf, change, clashes, type Interview, nextQuestion, startInterview } from '../interview.js';
import { type Given, type Interviewed, madeRecords } from '../made-records.js';
import { askYesNo } from '../prompt/ask-yes-no.js';
import type { QuestionId } from '../questions/answers.js';
import { isNewBall } from '../questions/ball-kinds.js';
import { ALL_NEEDS, type Needs } from '../questions/needs.js';
import { BACK_KEY } from '../questions/question.js';
import { questionsFor } from '../questions/questions.js';
import { recap } from '../recap.js';
import { type WrongAnswer, wrongAnswer } from '../wrong-answer.js';
import { type AskStreams, atDesk, type Desk } from './desk.js';
import { putQuestion } from './put-question.js';
import { putReview, REVIEW_TOP } from './put-review.js';

/** What an interview is to find out, and with what. */
export interface Assignment {
  readonly shelf: Shelf;
  /** What it asks for; all that a recommendation needs when left out. */
  readonly needs?: Needs;
  /** What flags name, and is not asked for. */
  readonly given?: Given;
  readonly units?: Units;
  /** Throws a `Refusal` or an `InputError` of a ball that cannot be. */
  readonly checkBall?: (ball: Ball) => void;
  /** An interview that was left. */
  readonly draft?: InterviewDraft | null;
  /** Where to continue with the draft without asking first: the review, opened at what is wrong, or one question. */
  readonly goOn?: GoOn | null;
  /** Called as soon as bowler and ball are known, so that the caller can prepare while the person continues. */
  readonly onDescribed?: (records: Pick<Interviewed, 'bowler' | 'ball'>) => void;
  /** Called as a review is shown with which nothing is wrong. @param ended  what is returned if the person goes on from there */
  readonly onReview?: (ended: Ended) => void;
  /** Called after every answer. @returns whether it was kept */
  readonly remember: (draft: InterviewDraft) => boolean;
}

/** The answers could not be used, which was found after the last review; or one of them is to be changed. */
export type GoOn =
  | { readonly misfit: InputError | Refusal }
  | { readonly change: QuestionId }
  | { readonly review: true };

/** How an interview ended: with its records, and as it stood, to be gone on with. */
export interface Ended extends Interviewed {
  readonly interview: Interview;
}

/**
 * Puts all questions, then the review, and returns the records they amount to.
 *
 * @throws {Cancelled} when the person leaves (ctrl-C, or the input ends); what was answered was remembered
 */
export const runInterview = (streams: AskStreams, assignment: Assignment): Promise<Ended> =>
  atDesk(streams, assignment.units ?? UNITS.trade, (desk) => interviewAt(desk, assignment));

async function interviewAt(desk: Desk, assignment: Assignment): Promise<Ended> {
  const { screen, units } = desk;
  const { shelf, given, remember } = assignment;
  const sources = { shelf, given };
  let interview = await begun(desk, assignment);
  const { goOn } = assignment;
  let misfit = goOn && 'misfit' in goOn ? wrongAnswer(goOn.misfit, interview, units) : null;
  let place = REVIEW_TOP;
  let isKept = false;
  const others = (assignment.draft ?? []).filter(
    ([id]) => !interview.questions.some((question) => question.id === id),
  );
  const keep = (): void => {
    isKept = remember([...draftOf(interview), ...others]); // what another command asks for is not lost by this one
  };
  const left = (): never => {
    const count = draftOf(interview).length;
    if (count > 0) screen.say(isKept ? keptText(count) : LOST);
    throw new Cancelled();
  };
  if (answerCount(interview) > 0) keep();
  for (;;) {
    const question = nextQuestion(interview);
    if (question) {
      const next = await putQuestion(question, interview, desk);
      if (next === null) return left();
      if (next !== interview) misfit = null;
      interview = next;
      keep();
      announce(interview, assignment);
      continue;
    }
    misfit ??= wrongWith(interview, assignment, units);
    const ended = misfit ? null : { ...madeRecords(interview, sources), interview };
    if (ended) assignment.onReview?.(ended);
    const reviewed = await putReview(interview, misfit, place, desk);
    if (reviewed.did === 'leave') return left();
    if (reviewed.did === 'change') {
      ({ interview, place } = reviewed);
      if (nextQuestion(interview) === null) misfit = null;
    } else if (ended) return ended;
  }
}

/** A new interview, the unfinished one if the person wants to continue it, or the one whose answers could not be used. */
async function begun(desk: Desk, { shelf, needs = ALL_NEEDS, draft, goOn }: Assignment): Promise<Interview> {
  const { screen, keys, units } = desk;
  const questions = questionsFor(shelf, units, needs);
  const earlier = resumed(questions, draft ?? []);
  const count = answerCount(earlier);
  if (goOn) return 'change' in goOn ? change(earlier, goOn.change) : earlier;
  if (count > 0) {
    screen.say(
      `You stopped after ${count} answer${count === 1 ? '' : 's'}. ${recap(earlier, units, 3 * screen.width - ENDS)}`,
    );
    if (await askYesNo('Continue from there?', true, screen, keys)) return earlier;
  }
  screen.say(KEYS, 'dim');
  return startInterview(questions);
}

/** Signs that a recap of three lines leaves free: for what stands before it, and where lines end early. */
const ENDS = 60;

const KEYS = `Enter takes the value shown; ? if you don’t know. Escape or ${BACK_KEY}: back. Ctrl-C: leave.`;

/** Says that bowler and ball stand, where nothing about them is open: once the lane is asked for, or the review. */
function announce(interview: Interview, { shelf, given, onDescribed }: Assignment): void {
  const at = nextQuestion(interview)?.id;
  const isOpen = isNewBall(answersOf(interview)); // its numbers may come in the review
  if (!onDescribed || !(at === undefined || (at === 'lane' && !isOpen))) return;
  try {
    onDescribed(madeRecords({ ...interview }, { shelf, given }));
  } catch {
    // the review says what is wrong
  }
}

/** What stands against going on: replies that do not go together, a ball that cannot be, records that are not sound. */
function wrongWith(
  interview: Interview,
  { shelf, given, checkBall }: Assignment,
  units: Units,
): WrongAnswer | null {
  const [clash] = clashes(interview);
  if (clash) {
    const { rule, got, hint } = clash.fault;
    return { at: clash.id, message: `This ${rule}; got ${got}.${hint ? ` ${hint}` : ''}` };
  }
  try {
    const { ball } = madeRecords(interview, { shelf, given });
    if (given?.ball === undefined) checkBall?.(ball);
    return null;
  } catch (error) {
    if (error instanceof Refusal || error instanceof InputError) return wrongAnswer(error, interview, units);
    throw error;
  }
}

const keptText = (count: number): string =>
  `Your ${count === 1 ? 'answer is' : `${count} answers are`} kept. Run the same command again to go on.`;

const LOST = 'Your answers could not be kept: the folder for them cannot be written.';
