/**
 * Something to be said, as data: its code, and the numbers and names that go into the sentence. Whoever finds it out makes no
 * words; `report/wording` does, in the person's units.
 *
 * A topic is an interface with one entry for each code, the params of that code: `{ 'usual-finish': { grit: number } }`. Params carry
 * their units in their names. A code stands in one topic only.
 */
export type StatementOf<Topic> = {
  readonly [Code in keyof Topic & string]: { readonly code: Code; readonly params: Topic[Code] };
}[keyof Topic & string];
