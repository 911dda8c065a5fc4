/** What a person did at a prompt: gave an answer, did not know one, went back, or left. */
export type Pressed<T> =
  | { readonly did: 'give'; readonly given: T }
  | { readonly did: 'not-know' | 'go-back' | 'leave' };
