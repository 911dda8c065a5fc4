import type { Point } from '../scene/shapes.js';

/** A text that is to stand near a point. */
export interface Label {
  readonly text: string;
  readonly size: number;
  readonly weight?: 'regular' | 'bold';
  /** Where its middle may lie, the most wanted first. */
  readonly places: readonly Point[];
  /** Points of the line it belongs to, which it may cover. */
  readonly own?: readonly Point[];
}

export interface PlacedLabel extends Omit<Label, 'places' | 'own'> {
  /** The middle of the text. */
  readonly at: Point;
}

/** What labels should not cover, and how large the picture is. */
interface Ground {
  /** Signs and holes: covered only where nothing else is free. */
  readonly signs: readonly Point[];
  /** Points along lines. */
  readonly lines: readonly Point[];
  readonly width: number;
  readonly height: number;
}

const COST = { offPicture: 1000, label: 2000, sign: 60, line: 0.5, farther: 0.25 } as const;

/** Half the height of a text, in text sizes. */
const HALF = 0.55;

/**
 * Places labels one after the other, each where it covers least: another label worst, then a sign, then a line.
 *
 * Greedy, so that the same picture comes out for the same ball; the order of the labels is the order of their rights.
 */
export function placeLabels(
  labels: readonly Label[],
  ground: Ground,
  widthOf: (text: string, size: number, weight?: Label['weight']) => number,
): readonly PlacedLabel[] {
  const taken: Box[] = [];
  return labels.map(({ places, own = [], ...label }) => {
    const half: Point = [widthOf(label.text, label.size, label.weight) / 2 + 1, HALF * label.size + 0.5];
    const costs = places.map((at, i) => {
      const box = boxAt(at, half);
      return (
        cost(box, taken, ground) -
        COST.line * own.filter((point) => holds(box, point)).length +
        COST.farther * i
      );
    });
    const at = places[costs.indexOf(Math.min(...costs))];
    taken.push(boxAt(at, half));
    return { ...label, at };
  });
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

const boxAt = ([x, y]: Point, [dx, dy]: Point): Box => ({
  left: x - dx,
  right: x + dx,
  top: y - dy,
  bottom: y + dy,
});

function cost(box: Box, taken: readonly Box[], { signs, lines, width, height }: Ground): number {
  const off =
    Math.max(0, -box.left) +
    Math.max(0, box.right - width) +
    Math.max(0, -box.top) +
    Math.max(0, box.bottom - height);
  return (
    (off > 0 ? COST.offPicture + off : 0) +
    COST.label * taken.filter((other) => meet(box, other)).length +
    COST.sign * signs.filter((point) => holds(box, point)).length +
    COST.line * lines.filter((point) => holds(box, point)).length
  );
}

const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

const holds = (box: Box, [x, y]: Point): boolean =>
  x > box.left && x < box.right && y > box.top && y < box.bottom;

/** Places around a point for a text of this size, nearest first. */
export function placesAround(
  [x, y]: Point,
  [halfWidth, halfHeight]: Point,
  gaps: readonly number[] = [5, 10, 18, 28],
): Point[] {
  return gaps.flatMap((gap) =>
    DIRECTIONS.map(([dx, dy]): Point => [x + dx * (halfWidth + gap), y + dy * (halfHeight + gap)]),
  );
}

/** Right, left, and round about. */
const DIRECTIONS: readonly Point[] = [
  [1, 0],
  [-1, 0],
  [1, -0.8],
  [1, 0.8],
  [-1, -0.8],
  [-1, 0.8],
  [0, -1],
  [0, 1],
  [0.5, -1],
  [0.5, 1],
  [-0.5, -1],
  [-0.5, 1],
];
