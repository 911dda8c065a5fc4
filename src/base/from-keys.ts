/** An object with a value for each key, in the order of the keys: `fromKeys(['a', 'b'], lengthOf)` is `{ a: …, b: … }`. */
export const fromKeys = <const K extends string, V>(
  keys: readonly K[],
  of: (key: K) => V,
): { readonly [Key in K]: V } => Object.fromEntries(keys.map((key) => [key, of(key)])) as { [Key in K]: V };
