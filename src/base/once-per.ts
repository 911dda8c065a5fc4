/**
 * A function of an object that runs once for each object; its result is kept for as long as the object is.
 *
 * @param make  slow, and a function of plain data that nothing changes afterwards
 */
export function oncePer<K extends object, T>(make: (key: K) => T): (key: K) => T {
  const made = new WeakMap<K, { readonly value: T }>();
  return (key) => {
    const known = made.get(key) ?? { value: make(key) };
    made.set(key, known);
    return known.value;
  };
}
