import type { z } from 'zod';
import type { NumberKind } from '../records/text/read-number.js';
import type { Quantity } from '../report/text/display-units.js';
import type { Answers, AnswerTypes, IdOf, QuestionId, UNKNOWN } from './answers.js';

/** Goes back: pressed at a choice, typed as the last sign of an answer elsewhere, whatever stands before it. */
export const BACK_KEY = '<';

/** Stands for "not one of the shelf's": it comes from a file. */
export const FROM_FILE = 'from-file';

interface Asked<Id extends QuestionId> {
  readonly id: Id;
  /** The question in plain words. */
  readonly text: string;
  /**
   * One line of help: the trade's term, how it is measured, the range; quantities marked as `withQuantities` has it, as in all
   * texts. `{range}` stands for the range that a number's schema allows.
   */
  readonly help: string;
  /** Whether the question is put at all, given the answers so far. */
  readonly when?: (answers: Answers) => boolean;
  /** What to tell once it is answered, such as the number that readings amount to; null for nothing. */
  readonly tell?: (answers: Answers) => string | null;
  /** What is wrong with what the answer makes, alone or with earlier ones; `answers` hold it already. */
  readonly check?: (answers: Answers) => Clash | null;
}

/** Why an answer cannot stand although it is a sound one by itself, and what to do about it. */
export interface Clash {
  readonly rule: string;
  readonly hint?: string;
}

/** One of a few answers. */
export interface ChoiceQuestion<Id extends QuestionId = QuestionId> extends Asked<Id> {
  readonly kind: 'choice';
  readonly options: readonly Option<AnswerTypes[Id]>[];
  readonly usual?: AnswerTypes[Id];
}

/** One answer to a choice; undefined stands for "I do not know", or for none. */
interface Option<T> {
  readonly value: T | undefined;
  readonly label: string;
  readonly note?: string;
}

/** How a number is typed and told. */
export interface TypedAs {
  /** The unit of a bare one, and the record's own, which it is read into. */
  readonly kind: NumberKind;
  /** A number of the record with the unit the person uses. */
  readonly show: (value: number) => string;
  /** In place of the record's own hint. */
  readonly hint?: string;
}

/** A number, typed with or without a fraction. */
export interface NumberQuestion extends Asked<IdOf<number | typeof UNKNOWN>> {
  readonly kind: 'number';
  readonly schema: z.ZodType;
  /** What is asked for, where it has a unit that depends on the person; `{unit}` stands for it in the text. */
  readonly quantity?: Quantity;
  /** How it is typed, once the unit is settled. */
  readonly typed?: TypedAs;
  /** What Enter alone answers. */
  readonly usual: (answers: Answers) => string;
  /** Whether `?` is an answer: further questions measure it, or it is left out. */
  readonly mayBeUnknown?: boolean;
}

/** The name of a file, read when it is typed. */
export interface FileQuestion<Id extends QuestionId = QuestionId> extends Asked<Id> {
  readonly kind: 'file';
  readonly read: (path: string) => AnswerTypes[Id];
}

/** A few words; none is an answer too. */
export interface TextQuestion extends Asked<IdOf<string>> {
  readonly kind: 'text';
  readonly schema: z.ZodType;
}

export type Question = ChoiceQuestion | NumberQuestion | FileQuestion | TextQuestion;

/** A question as it is written down: what a choice offers and a file is read into is what that very question is answered with. */
export type QuestionEntry =
  | { readonly [Id in QuestionId]: ChoiceQuestion<Id> | FileQuestion<Id> }[QuestionId]
  | NumberQuestion
  | TextQuestion;
