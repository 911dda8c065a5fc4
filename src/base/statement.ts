/** What may be said about one topic: the code of each statement, and what it is about. */
export type Topic = Readonly<Record<string, object>>;

/**
 * A statement as data: which one, and the numbers, choices and names it is about. Units are in the names of numbers; the
 * sentence is made where it is shown.
 */
export type StatementOf<T> = {
  readonly [C in keyof T & string]: { readonly code: C; readonly params: T[C] };
}[keyof T & string];
