import type { Readable, Writable } from 'node:stream';
import { createPromptModule } from 'inquirer';
import { Cancelled, type Fault, formatFault, InputError } from '../base/errors.js';
import { visible } from '../base/visible.js';
import type { Shelf } from '../records/read/shelf.js';
import { Refusal } from '../records/refusals/refusal.js';
import type { Ball } from '../records/schemas/ball.js';
import { UNITS, type Units } from '../report/text/display-units.js';
import { wrap } from '../report/text/wrap.js';
import { formatRefusal } from '../report/wording/refusals/word-refusal.js';
import { UNKNOWN } from './answers.js';
import {
  answer,
  back,
  backTo,
  ballJustDescribed,
  describedBall,
  draftOf,
  type Interview,
  type InterviewDraft,
  type Interviewed,
  interviewed,
  isFault,
  justDescribed,
  nextQuestion,
  progress,
  resumed,
  startInterview,
  toldOf,
} from './interview.js';
import { promptTheme } from './prompt-theme.js';
import { BACK_KEY, type Question } from './question.js';
import { questionsFor } from './questions.js';

/* The only file that prompts. Everything it asks, and in which order, is data and a pure state machine. */

export interface AskStreams {
  readonly input: Readable;
  readonly output: Writable;
  /** False for prompts without colour. */
  readonly color?: boolean;
  /** True where only ASCII signs can be shown. */
  readonly ascii?: boolean;
  /** In which numbers are asked for and told; the trade's own when left out. */
  readonly units?: Units;
  /** Throws a `Refusal` of a ball whose numbers cannot be; asked as soon as they are all given. */
  readonly checkBall?: (ball: Ball) => void;
}

/** What a person did at a prompt: answered, or wished to go back. */
type Reply = { readonly back: true } | { readonly back: false; readonly given: unknown };

/** What the interview knows of earlier times, and how it hands on what later ones should know. */
export interface Memory {
  readonly shelf: Shelf;
  /** An interview that was left before its end. */
  readonly draft: InterviewDraft | null;
  /** Called when bowler and ball are described, while other questions are still to come. */
  readonly onDescribed?: (records: Pick<Interviewed, 'bowler' | 'ball'>) => void;
  /** Called after every answer with the interview so far. When to forget it is the caller's business. */
  readonly remember: (draft: InterviewDraft) => void;
}

/**
 * Puts all questions and returns the records they amount to.
 *
 * @throws {Cancelled} when the person leaves (ctrl-C, or the input ends); what was answered was remembered
 */
export async function runInterview(streams: AskStreams, memory: Memory): Promise<Interviewed> {
  const { shelf, remember, onDescribed } = memory;
  const keys = `Enter takes the value shown; ${UNKNOWN} if you don't know. Escape or ${BACK_KEY}: back. Ctrl-C: leave.`;
  streams.output.write(`${wrap(keys, widthOf(streams.output)).join('\n')}\n`);
  let state = await begun(streams, memory);
  for (let question = nextQuestion(state); question; question = nextQuestion(state)) {
    const reply = await put(question, state, streams);
    if (reply.back) {
      state = back(state);
      continue;
    }
    const next = answer(state, reply.given);
    if (isFault(next)) streams.output.write(`${formatFault(next)}\n`);
    else {
      for (const told of toldOf(next))
        streams.output.write(`${wrap(visible(told), widthOf(streams.output), '  ').join('\n')}\n`);
      state = ballChecked(next, shelf, streams);
      remember(draftOf(state));
      const described = justDescribed(state, shelf);
      if (described) onDescribed?.(described);
    }
  }
  return interviewed(state, shelf);
}

/**
 * A new interview, or the one that was left, if the person wants to go on with it.
 *
 * Where every question was answered the last one is put again: from there the person can go back.
 */
async function begun(streams: AskStreams, { shelf, draft }: Memory): Promise<Interview> {
  const questions = questionsFor(shelf, streams.units);
  const earlier = resumed(questions, draft ?? []);
  const count = earlier.answered.length;
  if (count === 0) return startInterview(questions);
  const isWanted = await askYesNo(
    `You stopped after ${count} answer${count === 1 ? '' : 's'}. Continue from there?`,
    streams,
    true,
  );
  if (!isWanted) return startInterview(questions);
  return nextQuestion(earlier) ? earlier : back(earlier);
}

/** A plain yes or no. @throws {Cancelled} */
export async function askYesNo(message: string, streams: AskStreams, usual = false): Promise<boolean> {
  try {
    const theme = promptTheme(streams.color ?? true, streams.ascii);
    const { given } = await createPromptModule(streams)<{ given: boolean }>([
      { type: 'confirm', name: 'given', message, default: usual, theme },
    ]);
    return given;
  } catch (error) {
    if ((error as Error).name === 'ExitPromptError') throw new Cancelled();
    throw error;
  }
}

/** The interview as it is, or back where the ball began to be described when there can be no such ball. */
function ballChecked(
  state: Interview,
  shelf: Shelf,
  { checkBall, output, units = UNITS.trade }: AskStreams,
): Interview {
  const from = ballJustDescribed(state);
  if (from === null) return state;
  try {
    checkBall?.(describedBall(state, shelf));
    return state;
  } catch (error) {
    output.write(`${wrap(formatWrongBall(error, units), widthOf(output), '  ').join('\n')}\n`);
    return backTo(state, from);
  }
}

/** Why there can be no such ball. @throws what is no fault of the ball */
function formatWrongBall(error: unknown, units: Units): string {
  if (error instanceof Refusal) return formatRefusal(error, units).message;
  if (error instanceof InputError) return error.message;
  throw error;
}

async function put(question: Question, state: Interview, streams: AskStreams): Promise<Reply> {
  const { place, of } = progress(state);
  const width = widthOf(streams.output);
  const message = `${place}/${of}  ${visible(question.text)}\n${wrap(visible(question.help), width, '  ').join('\n')}`;
  const earlier = state.answers[question.id];
  const goBack = new AbortController();
  const onKey = (text: string | undefined, key?: { name?: string }): void => {
    if (key?.name === 'escape' || (question.kind === 'choice' && text === BACK_KEY)) goBack.abort();
  };
  streams.input.on('keypress', onKey);
  const context = { input: streams.input, output: streams.output, signal: goBack.signal };
  const theme = promptTheme(streams.color ?? true, streams.ascii);
  try {
    if (question.kind === 'choice') return await putChoice(question, { message, theme }, earlier, context);
    const usual = usualText(question, state);
    const { given } = await createPromptModule(context)<{ given: string }>([
      {
        type: 'input',
        name: 'given',
        message,
        theme,
        ...(usual === undefined ? {} : { default: usual }),
        validate: (text: string) => endsInBack(text) || faultOf(state, text, width) || true,
      },
    ]);
    return endsInBack(given) ? { back: true } : { back: false, given };
  } catch (error) {
    const name = (error as Error).name;
    if (name === 'AbortPromptError') return { back: true };
    if (name === 'ExitPromptError') throw new Cancelled();
    throw error;
  } finally {
    streams.input.off('keypress', onKey);
  }
}

/** What Enter alone types: the answer given before, else the usual one. */
function usualText(question: Question, { given, answers }: Interview): string | undefined {
  const before = given[question.id];
  if (before !== undefined && question.kind !== 'file') return visible(String(before));
  return question.kind === 'number' ? question.usual(answers) : undefined;
}

async function putChoice(
  question: Extract<Question, { kind: 'choice' }>,
  look: { message: string; theme: ReturnType<typeof promptTheme> },
  earlier: unknown,
  context: AskStreams & { signal: AbortSignal },
): Promise<Reply> {
  const choices = question.options.map((option, i) => ({
    value: i,
    name: visible(option.label),
    ...(option.note ? { description: visible(option.note) } : {}),
  }));
  const start = question.options.findIndex((option) => option.value === (earlier ?? question.usual));
  const { picked } = await createPromptModule(context)<{ picked: number }>([
    {
      ...look,
      type: 'select',
      name: 'picked',
      choices,
      default: Math.max(0, start),
      loop: false,
      pageSize: 12,
    },
  ]);
  return { back: false, given: question.options[picked]?.value };
}

const endsInBack = (text: string): boolean => text.trim().endsWith(BACK_KEY);

const faultOf = (state: Interview, given: string, width: number): string | null => {
  const next = answer(state, given);
  return isFault(next) ? wrap(formatShort(next), width, '  ').join('\n').trimStart() : null;
};

/** Columns to write in; one is left free, where some terminals break. */
const widthOf = (output: Writable): number =>
  Math.min(100, ((output as { columns?: number }).columns ?? 80) - 2);

/** Beneath its own question a fault needs no field: `Must be 30 to 700 rpm. …` */
const formatShort = ({ rule, got, hint }: Fault): string =>
  `${rule.charAt(0).toUpperCase()}${rule.slice(1)}; got ${got}.${hint ? ` ${hint}` : ''}`;
