/** A point of a plane. */
export type PlanePoint = readonly [u: number, v: number];

/** A closed polygon, its last point joined to its first: counterclockwise around what it encloses, clockwise around a hole. */
export type Loop = readonly PlanePoint[];

/** Whether a point lies inside loops: a ray from it along u crosses them an odd number of times. */
export const isInside = (loops: readonly Loop[], [u, v]: PlanePoint): boolean =>
  crossingsAt(loops, v).filter((at) => at > u).length % 2 === 1;

/** Where the line of constant v crosses loops: values of u, ascending, two for each stretch inside. */
export const crossingsAt = (loops: readonly Loop[], v: number): number[] =>
  loops
    .flatMap((loop) =>
      pairsOf(loop).flatMap(([a, b]) =>
        a[1] > v === b[1] > v ? [] : [a[0] + ((v - a[1]) / (b[1] - a[1])) * (b[0] - a[0])],
      ),
    )
    .sort((a, b) => a - b);

/** Convex hull of points (monotone chain: Andrew, Inf. Process. Lett. 9(5), 1979; from memory). */
export function hullOf(places: readonly PlanePoint[]): Loop {
  const sorted = [...places].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (row: readonly PlanePoint[]): PlanePoint[] => {
    const kept: PlanePoint[] = [];
    for (const place of row) {
      while (kept.length > 1 && turnAt(kept[kept.length - 2], kept[kept.length - 1], place) <= 0) kept.pop();
      kept.push(place);
    }
    return kept.slice(0, -1);
  };
  return [...half(sorted), ...half([...sorted].reverse())];
}

const pairsOf = (loop: Loop): (readonly [PlanePoint, PlanePoint])[] =>
  loop.map((place, i) => [place, loop[(i + 1) % loop.length]]);

/** Positive where the way from a over b to c turns left. */
const turnAt = (a: PlanePoint, b: PlanePoint, c: PlanePoint): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
