import type { SceneNode } from '../scene/scene.js';
import { type Point, polyline } from '../scene/shapes.js';

/** A name for a point of a picture. */
interface Callout {
  readonly text: string;
  readonly at: Point;
}

interface CalloutFrame {
  readonly middle: Point;
  /** Names stand outside this circle. */
  readonly radius: number;
  readonly textSize: number;
}

/** From the ball's edge to where names begin, in text sizes. */
const MARGIN = 1.1;

/** Room that a name of this width needs beside the circle. */
export const roomFor = (width: number, textSize: number): number => width + MARGIN * textSize;

/**
 * Names beside a round picture, each joined to its point by a thin line.
 *
 * Points left of the middle are named on the left, right of it on the right, those in the middle where there is
 * more room; in the order in which they lie, moved apart as far as they need, so that none covers another.
 */
export function callouts(items: readonly Callout[], frame: CalloutFrame): SceneNode[] {
  const [middleX] = frame.middle;
  const central = 0.05 * frame.radius;
  const left = items.filter(({ at }) => at[0] < middleX - central);
  const right = items.filter(({ at }) => at[0] > middleX + central);
  for (const item of items)
    if (!left.includes(item) && !right.includes(item))
      (left.length <= right.length ? left : right).push(item);
  return [...column(left, -1, frame), ...column(right, 1, frame)];
}

function column(items: readonly Callout[], side: -1 | 1, frame: CalloutFrame): SceneNode[] {
  const { middle, radius, textSize } = frame;
  const x = middle[0] + side * (radius + MARGIN * textSize);
  const sorted = [...items].sort((a, b) => a.at[1] - b.at[1]);
  const heights = spread(
    sorted.map(({ at }) => at[1]),
    1.25 * textSize,
    [middle[1] - radius, middle[1] + radius],
  );
  return sorted.flatMap(({ text, at }, i): SceneNode[] => [
    {
      kind: 'path',
      d: polyline([[x - side * 0.25 * textSize, heights[i]], [x - side * 0.8 * textSize, heights[i]], at]),
      stroke: { ink: 'soft', width: 0.45 },
    },
    {
      kind: 'text',
      x,
      y: heights[i] + 0.36 * textSize,
      text,
      size: textSize,
      anchor: side < 0 ? 'end' : 'start',
    },
  ]);
}

/**
 * Ascending heights moved apart to at least `gap`, by as little as it takes, within limits where there is room.
 *
 * Heights that would collide are taken together about their mean, which is the least-squares answer
 * (isotonic regression by pooling; Barlow et al., Statistical Inference under Order Restrictions, 1972, from memory).
 */
export function spread(
  heights: readonly number[],
  gap: number,
  [low, high]: readonly [number, number],
): number[] {
  const pools: { sum: number; count: number }[] = [];
  heights.forEach((height, i) => {
    pools.push({ sum: height - i * gap, count: 1 });
    while (pools.length > 1 && mean(pools.at(-2)!) > mean(pools.at(-1)!)) {
      const last = pools.pop()!;
      pools[pools.length - 1] = {
        sum: pools.at(-1)!.sum + last.sum,
        count: pools.at(-1)!.count + last.count,
      };
    }
  });
  const most = high - (heights.length - 1) * gap;
  const bases = pools.flatMap((pool) => Array.from({ length: pool.count }, () => mean(pool)));
  return bases.map((base, i) => Math.max(Math.min(low, most), Math.min(base, Math.max(low, most))) + i * gap);
}

const mean = ({ sum, count }: { sum: number; count: number }): number => sum / count;
