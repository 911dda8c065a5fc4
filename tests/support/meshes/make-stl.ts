import { add, cross, sub, unit, type Vec3 } from '../../../src/math/vec3.js';

/*
 * Closed surfaces as loose triangles, and the two forms of STL file, for tests. Lengths are plain numbers
 * in whatever unit the test says the file has.
 */

/** Three corners, counterclockwise seen from outside. */
export type Facet = readonly [Vec3, Vec3, Vec3];

/** |x| ≤ half[0] and so on, as 12 triangles. */
export function box(half: Vec3): Facet[] {
  const corner = (i: number): Vec3 => [
    i & 1 ? half[0] : -half[0],
    i & 2 ? half[1] : -half[1],
    i & 4 ? half[2] : -half[2],
  ];
  const sides = [
    [0, 2, 3, 1],
    [4, 5, 7, 6],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 4, 6, 2],
    [1, 3, 7, 5],
  ];
  return sides.flatMap((side) => {
    const [a, b, c, d] = side.map(corner);
    return [facet(a, b, c), facet(a, c, d)];
  });
}

/**
 * A solid of revolution about z with `sides` flat sides.
 *
 * @param profile  radius and height, upward along the outside; starts and ends on the axis
 */
export function lathe(profile: readonly (readonly [number, number])[], sides: number): Facet[] {
  const at = ([r, z]: readonly [number, number], side: number): Vec3 => {
    const a = (2 * Math.PI * (side % sides)) / sides;
    return [r * Math.cos(a), r * Math.sin(a), z];
  };
  return profile.slice(1).flatMap((high, i) =>
    Array.from({ length: sides }, (_, side) => {
      const low = profile[i];
      const [a, b, c, d] = [at(low, side), at(low, side + 1), at(high, side + 1), at(high, side)];
      return [...(low[0] > 0 ? [facet(a, b, c)] : []), ...(high[0] > 0 ? [facet(a, c, d)] : [])];
    }).flat(),
  );
}

/** A ball of `rings` bands and twice as many sides: 4 rings (rings − 1) triangles. */
export const sphere = (radius: number, rings: number): Facet[] =>
  lathe(
    Array.from({ length: rings + 1 }, (_, i) => {
      const onAxis = i === 0 || i === rings;
      const a = (Math.PI * i) / rings;
      return [onAxis ? 0 : radius * Math.sin(a), -radius * Math.cos(a)] as const;
    }),
    2 * rings,
  );

export const moved = (facets: readonly Facet[], by: Vec3): Facet[] => mapped(facets, (p) => add(p, by));

export const mapped = (facets: readonly Facet[], map: (p: Vec3) => Vec3): Facet[] =>
  facets.map(([a, b, c]) => facet(map(a), map(b), map(c)));

/** The same surface facing the other way: a hollow. */
export const insideOut = (facets: readonly Facet[]): Facet[] => facets.map(([a, b, c]) => facet(a, c, b));

const normalOf = ([a, b, c]: Facet): Vec3 => {
  const n = cross(sub(b, a), sub(c, a));
  return n.every((x) => x === 0) ? n : unit(n);
};

/** A text STL file. */
export function asciiStl(facets: readonly Facet[], name = 'test', lineEnd = '\n'): Uint8Array {
  const lines = facets.flatMap((f) => [
    `  facet normal ${normalOf(f).join(' ')}`,
    '    outer loop',
    ...f.map((p) => `      vertex ${p.join(' ')}`),
    '    endloop',
    '  endfacet',
  ]);
  return new TextEncoder().encode([`solid ${name}`, ...lines, `endsolid ${name}`, ''].join(lineEnd));
}

/** A binary STL file; `header` is its free text, at most 80 letters. */
export function binaryStl(facets: readonly Facet[], header = 'test'): Uint8Array {
  const bytes = new Uint8Array(84 + 50 * facets.length);
  const view = new DataView(bytes.buffer);
  bytes.set(new TextEncoder().encode(header));
  view.setUint32(80, facets.length, true);
  facets.forEach((f, i) => {
    [normalOf(f), ...f].flat().forEach((x, j) => {
      view.setFloat32(84 + 50 * i + 4 * j, x, true);
    });
  });
  return bytes;
}

const facet = (a: Vec3, b: Vec3, c: Vec3): Facet => [a, b, c];
