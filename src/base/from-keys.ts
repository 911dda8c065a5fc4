/** An object with one value for each key, in the order of the keys: `fromKeys(['a', 'b'], of)` is `{ a: of('a'), b: of('b') }`. */
export const fromKeys = <const K extends string, V>(
  keys: readonly K[],
  of: (key: K) => V,
): { readonly [Key in K]: V } => Object.fromEntries(keys.map((key) => [key, of(key)])) as { [Key in K]: V };
