import type { InputError } from '../base/errors.js';
import { Refusal } from '../records/refusals/refusal.js';
import type { Units } from '../report/text/display-units.js';
import { formatRefusal } from '../report/wording/refusals/word-refusal.js';
import { faultPlace } from './fault-place.js';
import { answersOf, type Interview } from './interview.js';
import type { QuestionId } from './questions/answers.js';
import { isPut } from './settled.js';

/** What is wrong with an answer, found when all are there, and whose it is. */
export interface WrongAnswer {
  readonly at: QuestionId;
  readonly message: string;
}

/** Which answer made the records impossible; null where it is not one that was asked for. */
export function wrongAnswer(
  error: InputError | Refusal,
  interview: Interview,
  units: Units,
): WrongAnswer | null {
  const { faults, message } = error instanceof Refusal ? formatRefusal(error, units) : error;
  const answers = answersOf(interview);
  const placed = interview.questions.filter((question) => isPut(question, answers));
  const [first] = faults;
  const at = first ? faultPlace(first, placed) : null;
  return at && { at, message };
}
