import { scaleLinear } from 'd3-scale';
import type { Band } from '../../records/answers/answer.js';
import { type Compared, partOf } from '../picture/compared.js';
import { DISC_RADIUS, signDisc } from '../picture/sign-disc.js';
import { bar, CHART_WIDTH, part, segment, textRoom, word } from '../scene/draw.js';
import type { Scene, SceneNode } from '../scene/scene.js';
import { polygon } from '../scene/shapes.js';
import { levelsOf } from './levels.js';

/** A number that was asked for: what layouts of this ball attain, what is aimed at, and what some of them do. */
interface ReachedNumber {
  readonly title: string;
  readonly attainable: Band;
  readonly target: number;
  /** What stands at the target: `wish`, or `nearest` where no layout reaches what was asked for. */
  readonly label: string;
  readonly numberOf: (compared: Compared) => number;
  readonly show: (value: number) => string;
}

const PLOT = [DISC_RADIUS + 3, CHART_WIDTH - DISC_RADIUS - 3] as const;
const DISC = 2 * DISC_RADIUS + 2;
const BAR = 8;

/** One bar: as far as layouts reach; on it the wish, above it the layouts, stacked where they do the same. */
export function reachPicture(
  compared: readonly Compared[],
  { title, attainable, target, label, numberOf, show }: ReachedNumber,
): Scene {
  const values = compared.map(numberOf);
  const all = [...values, target, attainable.low, attainable.high];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const scale = scaleLinear(high > low ? [low, high] : [low - 1, high + 1], PLOT);
  const xs = values.map(scale);
  const levels = levelsOf(xs, DISC);
  const top = DISC * (Math.max(0, ...levels) + 1) + 4;
  const wish = scale(target);
  const ends = [attainable.low, attainable.high] as const;
  return {
    width: CHART_WIDTH,
    height: top + BAR + 40,
    title,
    description: `${title}: layouts of this ball reach ${show(ends[0])} to ${show(ends[1])}; aimed at ${show(target)}; ${compared
      .map(({ sign }, i) => `layout ${sign} ${show(values[i])}`)
      .join(', ')}.`,
    nodes: [
      part(
        'reach',
        bar([scale(ends[0]), scale(ends[1])], [top, BAR], {
          fill: 'shade',
          stroke: { ink: 'soft', width: 1 },
        }),
      ),
      ...ends.flatMap((end, i) => {
        const x = scale(end) + (i === 0 ? -6 : 6);
        const isFree = Math.abs(x - wish) > textRoom(show(end)) + 10;
        return isFree
          ? [word(show(end), [x, top + BAR + 15], { anchor: i === 0 ? 'start' : 'end', ink: 'soft' })]
          : [];
      }),
      part('wish', pointer(wish, top + BAR)),
      wishText(wish, `${label} ${show(target)}`, top + BAR + 32),
      ...compared
        .map((each, i): SceneNode => {
          const [x, y] = [xs[i], top - 3 - DISC_RADIUS - DISC * levels[i]];
          return part(
            partOf(each.sign),
            segment([x, y], [x, top], { ink: each.ink, width: 1 }),
            ...signDisc(each, [x, y]),
          );
        })
        .reverse(),
    ],
  };
}

/** A triangle below the bar that points up to a place on it. */
const pointer = (x: number, y: number): SceneNode => ({
  kind: 'path',
  d: polygon([
    [x, y - BAR],
    [x + 6, y + 9],
    [x - 6, y + 9],
  ]),
  fill: 'ink',
});

const wishText = (x: number, text: string, y: number): SceneNode => {
  const half = textRoom(text) / 2;
  return word(text, [Math.max(half, Math.min(CHART_WIDTH - half, x)), y], {
    anchor: 'middle',
    weight: 'bold',
  });
};
