import { visible } from '../../base/visible.js';
import type { Units } from '../../report/text/display-units.js';
import { answersOf, type Interview } from '../interview.js';
import { askChoice } from '../prompt/ask-choice.js';
import { BACK_KEY } from '../questions/question.js';
import { taken } from '../taken.js';
import type { UnknownField } from '../unknown-fields.js';
import { type AskStreams, atDesk } from './desk.js';
import type { GoOn } from './run-interview.js';

/** Most fields that are offered; the review has all. */
const MOST = 6;

/**
 * Asks, after an answer, whether to make it more certain: by giving or measuring what was guessed, or by changing any answer.
 *
 * @param fields  what to offer, the most worthwhile first
 * @returns how to go on; `back` to the answer; null to end
 */
export const afterAnswer = (
  streams: AskStreams,
  interview: Interview,
  units: Units,
  fields: readonly UnknownField[],
): Promise<GoOn | 'back' | null> =>
  atDesk(streams, units, async ({ screen, keys }) => {
    const offered = onePerQuestion(fields).slice(0, MOST);
    const options = [
      { label: 'Nothing, I am done', goOn: null },
      ...offered.map(({ ask }) => ({ label: labelOf(interview, ask, units), goOn: { change: ask } })),
      { label: 'Look at all answers, and change any', goOn: { review: true as const } },
    ];
    streams.output.write('\n'); // apart from the answer
    const pressed = await askChoice(
      {
        question: 'What next?',
        help:
          offered.length > 0
            ? 'The answer becomes more certain when you give or measure what was guessed.'
            : '',
        options: options.map(({ label }) => ({ label: visible(label) })),
        start: 0,
        backSign: BACK_KEY,
        keysHelp: 'Arrows choose, Enter takes, Escape goes back to the answer.',
      },
      screen,
      keys,
    );
    if (pressed.did === 'leave') return null;
    return pressed.did === 'give' ? (options[pressed.given]?.goOn ?? null) : 'back';
  });

/** The PAP has two numbers, and one question how it is found. */
const onePerQuestion = (fields: readonly UnknownField[]): readonly UnknownField[] =>
  fields.filter(({ ask }, i) => fields.findIndex((other) => other.ask === ask) === i);

function labelOf(interview: Interview, ask: UnknownField['ask'], units: Units): string {
  const question = interview.questions.find(({ id }) => id === ask);
  if (!question) return ask;
  const { value, status } = taken(question, interview.questions, answersOf(interview), units);
  return `${question.name}: ${value}${status ? ` (${status})` : ''}`;
}
