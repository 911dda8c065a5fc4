import type { ReleaseKey } from '../records/shared/release-guesses.js';
import { given, givenWithUnit, type Units } from '../report/text/display-units.js';
import { type Answers, isGuessed, type QuestionId } from './questions/answers.js';
import type { NumberQuestion, Question } from './questions/question.js';
import { HOW_OF, releaseNumber } from './questions/release-numbers.js';

/** What stands for an answer now, in words: `14 degrees`, and how it was come by: `guess, ± 5 degrees`; empty for plainly answered. */
interface Taken {
  readonly value: string;
  readonly status: string;
}

/** What is taken for one question. A question how a number was found stands for that number. */
export function taken(
  question: Question,
  questions: readonly Question[],
  answers: Answers,
  units: Units,
): Taken {
  const keys = releaseKeysOf(question.id);
  if (keys.length > 0) return releaseTaken(keys, questions, answers, units);
  const status = isGuessed(answers, question.id) ? 'guess' : '';
  const answer = answers[question.id];
  switch (question.kind) {
    case 'choice': {
      const label = question.options.find(({ value }) => value === answer)?.label;
      return label === undefined || (answer === undefined && question.guessIsOpen !== undefined)
        ? { value: question.guessIsOpen ?? '', status }
        : { value: label, status: answer === undefined ? '' : status };
    }
    case 'number':
      return numberTaken(question, answers, status, units);
    case 'text':
      return { value: String(answer ?? question.none ?? ''), status: question.isNeeded ? '' : status };
    case 'file':
      return { value: (answer as { name?: string } | undefined)?.name ?? '', status: '' };
  }
}

function numberTaken(question: NumberQuestion, answers: Answers, status: string, units: Units): Taken {
  const value = answers[question.id];
  const deviation = (answers.deviations as Readonly<Record<string, number | undefined>>)?.[question.id];
  return {
    value: value === undefined ? '' : shownValue(value, question, units),
    status: joined(status, deviation, question, units),
  };
}

/** A number as it was given: tape lengths as fractions, others without digits that they do not have. */
const shownValue = (value: number, { quantity, typed }: NumberQuestion, units: Units): string =>
  quantity && quantity !== 'tape'
    ? givenWithUnit(value, units[quantity])
    : (typed?.show(value) ?? String(value));

/** The numbers of the release that a question asks for, or asks how they were found. */
const releaseKeysOf = (id: QuestionId): readonly ReleaseKey[] =>
  (Object.keys(HOW_OF) as ReleaseKey[]).filter((key) => key === id || HOW_OF[key] === id);

function releaseTaken(
  keys: readonly ReleaseKey[],
  questions: readonly Question[],
  answers: Answers,
  units: Units,
): Taken {
  const [first] = keys;
  const how = answers[HOW_OF[first]] ?? 'typed';
  const isTyped = how === 'typed' && !isGuessed(answers, first);
  const word = isTyped ? '' : how === 'typed' || how === 'guess' ? 'guess' : 'measured';
  const parts = keys.flatMap((key) => {
    const question = questions.find((each): each is NumberQuestion => each.id === key);
    return question ? [{ key, question, ...releaseNumber(key, answers) }] : [];
  });
  const [main] = parts;
  if (!main) return { value: '', status: word };
  const values = parts.map(({ key, question, value }) =>
    key === 'papUpIn'
      ? `${question.typed?.show(Math.abs(value))} ${value < 0 ? 'down' : 'up'}`
      : `${shownValue(value, question, units)}${key === 'papOverIn' ? ' over' : ''}`,
  );
  const deviation = Math.max(...parts.map((part) => part.deviation)); // of a place by two lengths, as its record is read
  return { value: values.join(', '), status: joined(word, deviation, main.question, units) };
}

function joined(
  word: string,
  deviation: number | undefined,
  { quantity, typed }: NumberQuestion,
  units: Units,
): string {
  if (!deviation) return word;
  const off = quantity
    ? givenWithUnit(deviation, units[quantity])
    : `${given(deviation, { per: 1 })} ${typed?.kind.wanted ?? ''}`;
  return [word, `± ${off}`].filter(Boolean).join(', ');
}
