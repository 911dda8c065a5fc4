import { type Fault, InputError } from '../base/errors.js';
import { shortened, visibleJson } from '../base/visible.js';
import { numberGiven } from './number-given.js';
import { UNKNOWN } from './questions/answers.js';
import type { Clash, Question } from './questions/question.js';

/** A sound answer; of a number, also how far off it may be where that was said. Null for a guess. */
export type Value = { readonly value: unknown; readonly deviation?: number | undefined } | null;

export const isFault = (result: object | null): result is Fault => result !== null && 'rule' in result;

/** What was given to a question as an answer's value, or what is wrong with it. `?` is always understood. */
export function givenValue(question: Question, given: unknown): Value | Fault {
  const wrong = (rule: string, hint?: string): Fault =>
    faultOf(question, given, { rule, ...(hint ? { hint } : {}) });
  const isUnknown = typeof given === 'string' && given.trim() === UNKNOWN;
  if (isUnknown && !needsAnswer(question)) return null;
  switch (question.kind) {
    case 'choice':
      return question.options.some((option) => option.value === given)
        ? { value: given }
        : wrong('must be one of the answers shown');
    case 'number': {
      const { value, deviation, hint } = numberGiven(question, given);
      const result = question.schema.safeParse(value ?? given);
      if (result.success) return { value, deviation };
      const ownHint = (question.schema.meta() as { hint?: string } | undefined)?.hint;
      return wrong(
        result.error.issues[0]?.message ?? 'cannot be used',
        hint ?? question.typed?.hint ?? ownHint,
      );
    }
    case 'text': {
      const text = String(given ?? '').trim();
      if (text === '' && !question.isNeeded) return null;
      if (isUnknown) return wrong('cannot be guessed');
      const result = question.schema.safeParse(text);
      return result.success ? { value: text } : wrong(result.error.issues[0]?.message ?? 'cannot be used');
    }
    case 'file':
      if (isUnknown) return wrong('cannot be guessed', 'Go back and choose another answer.');
      try {
        return { value: question.read(String(given).trim()) };
      } catch (error) {
        if (error instanceof InputError) return error.faults[0];
        throw error;
      }
  }
}

/** Whether nothing can stand in for its answer. */
export const needsAnswer = (question: Question): boolean =>
  question.kind === 'file' || (question.kind === 'text' && question.isNeeded === true);

/** A fault of a question's answer, in its own words. */
export const faultOf = (question: Question, given: unknown, clash: Clash): Fault => ({
  field: question.text,
  got: given === undefined ? 'nothing' : shortened(visibleJson(given), 60),
  ...clash,
});
