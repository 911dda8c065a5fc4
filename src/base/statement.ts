/**
 * A statement as data: its code, and the numbers, choices and names it is about. The names of numbers carry their units; the sentence is
 * made where it is shown.
 *
 * @typeParam T  the topic: for each code the type of its parameters
 */
export type StatementOf<T> = {
  readonly [C in keyof T & string]: { readonly code: C; readonly params: T[C] };
}[keyof T & string];
