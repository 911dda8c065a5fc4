import { visible } from '../../base/visible.js';
import { isFault } from '../given-value.js';
import { answer, answersOf, back, givenBefore, type Interview, progress, toldOf } from '../interview.js';
import { lookedUp } from '../looked-up.js';
import { askChoice } from '../prompt/ask-choice.js';
import { askText } from '../prompt/ask-text.js';
import type { Pressed } from '../prompt/pressed.js';
import { UNKNOWN } from '../questions/answers.js';
import { BACK_KEY, type ChoiceQuestion, type Question } from '../questions/question.js';
import type { Desk } from './desk.js';
import { shortFault } from './short-fault.js';

/** Puts one question and returns the interview after it: answered, gone back, or the same. Null when the person leaves. */
export async function putQuestion(
  question: Question,
  interview: Interview,
  desk: Desk,
): Promise<Interview | null> {
  const { screen, units } = desk;
  const pressed = await ask(question, interview, desk);
  const asked = visible(headOf(question, interview));
  switch (pressed.did) {
    case 'leave':
      screen.write([{ text: asked, style: 'dim' }]);
      return null;
    case 'go-back':
      return back(interview);
    case 'not-know': {
      const next = answer(interview, UNKNOWN);
      const after = isFault(next) ? interview : next;
      screen.say(`${asked} ?`);
      for (const text of lookedUp(question, after, units)) screen.say(visible(text), 'dim', '  ');
      if (isFault(next)) screen.say(shortFault(next), 'yellow', '  ');
      return after;
    }
    case 'give': {
      const next = answer(interview, pressed.given);
      if (isFault(next)) {
        screen.say(shortFault(next), 'yellow', '  ');
        return interview;
      }
      screen.say(`${asked} ${visible(shortAnswer(question, pressed.given))}`);
      for (const text of toldOf(next, question.id)) screen.say(visible(text), 'dim', '  ');
      return next;
    }
  }
}

/** `3/11 What is your rev rate, in rpm?`; without a place where it is put from the review. */
function headOf({ text }: Question, interview: Interview): string {
  const place = progress(interview);
  return place ? `${place.place}/${place.of} ${text}` : text;
}

const shortAnswer = (question: Question, given: unknown): string =>
  question.kind === 'choice'
    ? (question.options.find(({ value }) => value === given)?.label ?? '')
    : String(given).trim();

function ask(question: Question, interview: Interview, { screen, keys }: Desk): Promise<Pressed<unknown>> {
  const look = { question: visible(headOf(question, interview)), help: visible(question.help) };
  if (question.kind === 'choice') return chosen(question, interview, look, { screen, keys });
  return askText(
    {
      ...look,
      usual: usualText(question, interview),
      backSign: question.kind === 'number' ? BACK_KEY : null,
      faultOf: (text) => {
        const next = answer(interview, text);
        return isFault(next) ? shortFault(next) : null;
      },
    },
    screen,
    keys,
  );
}

async function chosen(
  question: ChoiceQuestion,
  interview: Interview,
  look: { readonly question: string; readonly help: string },
  { screen, keys }: Pick<Desk, 'screen' | 'keys'>,
): Promise<Pressed<unknown>> {
  const { options } = question;
  const before = givenBefore(interview, question.id);
  const isBefore = options.some(({ value }) => value === before) && before !== undefined;
  const start = isBefore ? before : question.usual?.(answersOf(interview));
  const pressed = await askChoice(
    {
      ...look,
      options: options.map(({ label, note }) => ({
        label: visible(label),
        ...(note ? { note: visible(note) } : {}),
      })),
      start: Math.max(
        0,
        options.findIndex(({ value }) => value === start),
      ),
      backSign: BACK_KEY,
      keysHelp: 'Arrows choose, Enter takes, ? if you don’t know, Escape goes back.',
    },
    screen,
    keys,
  );
  return pressed.did === 'give' ? { did: 'give', given: options[pressed.given]?.value } : pressed;
}

/** What Enter alone types: the answer given before, else the usual one. */
function usualText(question: Question, interview: Interview): string | undefined {
  const before = givenBefore(interview, question.id);
  if (before !== undefined && before !== UNKNOWN) return visible(String(before));
  return question.kind === 'number' ? question.usual(answersOf(interview)) : undefined;
}
