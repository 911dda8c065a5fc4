import type { z } from 'zod';
import type { NumberKind } from '../../records/text/read-number.js';
import type { Quantity } from '../../report/text/display-units.js';
import type { Answers, AnswerTypes, IdOf, QuestionId } from './answers.js';

/** Goes back one question, as Escape does. */
export const BACK_KEY = '<';

/** Stands for "not one of the shelf's": it comes from a file. */
export const FROM_FILE = 'from-file';

interface Asked<Id extends QuestionId> {
  readonly id: Id;
  /** The question in plain words. */
  readonly text: string;
  /**
   * One line of help: how it is measured, the range; quantities marked as `withQuantities` has it, as in all texts. `{range}`
   * stands for the range that a number's schema allows.
   */
  readonly help: string;
  /** What the review calls it. */
  readonly name: string;
  /** The glossary's term for what is asked, which `?` looks up; without one, `?` repeats the help. */
  readonly term?: string;
  /**
   * When it is put: before the review, once its turn comes (`first`); from the review alone, a guess standing for it until then
   * (`more`); right after the question it follows (`follows`).
   */
  readonly stage?: 'first' | 'more';
  readonly follows?: QuestionId;
  /** Whether it does follow then; always, when left out. */
  readonly followsIf?: (answers: Answers) => boolean;
  /** Answered, it makes that answer void: a number that is typed is no longer measured. */
  readonly voids?: QuestionId;
  /** Whether it has a place at all, given the answers to those before it. */
  readonly when?: (answers: Answers) => boolean;
  /** Where `?` makes that question's answer a guess: a reading that is not known cannot be guessed itself. */
  readonly givesUp?: QuestionId;
  /** What to say once it is answered, such as the number that readings amount to; null for nothing. */
  readonly tell?: (answers: Answers) => string | null;
  /** What is wrong with what the answer makes, alone or with others; `answers` hold it already. */
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
  /** Marked at first, and taken as the guess; the first option when left out. */
  readonly usual?: (answers: Answers) => AnswerTypes[Id] | undefined;
  /** Name, shown to the person, of a guess that is none of the options; the record then holds nothing. */
  readonly guessIsOpen?: string;
}

/** One answer to a choice; undefined stands for none. */
interface Option<T> {
  readonly value: T | undefined;
  readonly label: string;
  readonly note?: string;
}

/** How a number is typed and shown. */
interface TypedAs {
  /** The unit of a bare one, and the record's own, which it is read into. */
  readonly kind: NumberKind;
  /** A number of the record with the unit the person uses. */
  readonly show: (value: number) => string;
  /** In place of the record's own hint. */
  readonly hint?: string;
}

/** A number, typed with or without a fraction. */
export interface NumberQuestion extends Asked<IdOf<number>> {
  readonly kind: 'number';
  readonly schema: z.ZodType;
  /** What is asked for, where it has a unit that depends on the person; `{unit}` stands for it in the text. */
  readonly quantity?: Quantity;
  /** How it is typed, once the unit is settled. */
  readonly typed?: TypedAs;
  /** What Enter alone answers. */
  readonly usual: (answers: Answers) => string;
  /** What is taken where it is not known, in the record's unit: null for nothing; the usual answer when left out. */
  readonly guess?: (answers: Answers) => Guess | null;
}

/** A guess at a number, and how far off it may be (one standard deviation), where that can be said. */
export interface Guess {
  readonly value: number;
  readonly deviation?: number;
}

/** The name of a file, read when it is typed. */
interface FileQuestion<Id extends QuestionId = QuestionId> extends Asked<Id> {
  readonly kind: 'file';
  readonly read: (path: string) => AnswerTypes[Id];
}

/** A few words; none is an answer too, unless they are needed. */
interface TextQuestion extends Asked<IdOf<string>> {
  readonly kind: 'text';
  readonly schema: z.ZodType;
  readonly isNeeded?: boolean;
  /** What the review shows when there are none. */
  readonly none?: string;
}

export type Question = ChoiceQuestion | NumberQuestion | FileQuestion | TextQuestion;

/** A question as it is written down: what a choice offers and a file is read into is what that very question is answered with. */
export type QuestionEntry =
  | { readonly [Id in QuestionId]: ChoiceQuestion<Id> | FileQuestion<Id> }[QuestionId]
  | NumberQuestion
  | TextQuestion;
