/** Disjoint sets of the numbers 0 … count − 1, each number alone at first. Every number points toward the least of its set. */
export const disjointSets = (count: number): Uint32Array => {
  const parent = new Uint32Array(count);
  for (let i = 0; i < count; i++) parent[i] = i;
  return parent;
};

/** The number that stands for the set of `i`: its least. Halves the way there for the next time. */
export function setOf(parent: Uint32Array, i: number): number {
  let at = i;
  while (parent[at] !== at) {
    parent[at] = parent[parent[at]];
    at = parent[at];
  }
  return at;
}

/** Makes the sets of `i` and `j` one. */
export function joinSets(parent: Uint32Array, i: number, j: number): void {
  const a = setOf(parent, i);
  const b = setOf(parent, j);
  if (a < b) parent[b] = a;
  else parent[a] = b;
}
