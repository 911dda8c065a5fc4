import { scaleLinear } from 'd3-scale';
import { bar, CHART_WIDTH, part, segment, word } from '../scene/draw.js';
import type { Scene, SceneNode } from '../scene/scene.js';

/** A mean and one standard deviation. */
interface Spread {
  readonly mean: number;
  readonly deviation: number;
}

/** A number before and after something was learned of it. */
interface Narrowed {
  readonly title: string;
  readonly before: Spread;
  readonly after: Spread;
  readonly show: (value: number) => string;
}

const PLOT = [4, CHART_WIDTH - 4] as const;
const BAR = 12;
const ROW = BAR + 20;

/** Two bars on one scale, one standard deviation to either side of their means: before above, after below. */
export function narrowedPicture({ title, before, after, show }: Narrowed): Scene {
  const rows = [
    { name: 'before', ...before },
    { name: 'after', ...after },
  ];
  const scale = scaleLinear(
    [
      Math.min(...rows.map(({ mean, deviation }) => mean - deviation)),
      Math.max(...rows.map(({ mean, deviation }) => mean + deviation)),
    ],
    PLOT,
  );
  const textOf = ({ mean, deviation }: Spread): string => `${show(mean)} ± ${show(deviation)}`;
  return {
    width: CHART_WIDTH,
    height: ROW * rows.length + 4,
    title,
    description: `${title}: before ${textOf(before)}, after ${textOf(after)}.`,
    nodes: rows.map((row, i): SceneNode => {
      const { mean, deviation } = row;
      const top = ROW * i + 18;
      return part(
        row.name,
        word(
          `${row.name} ${textOf(row)}`,
          [PLOT[0], top - 5],
          i === 0 ? { ink: 'soft' } : { weight: 'bold' },
        ),
        bar([scale(mean - deviation), scale(mean + deviation)], [top, BAR], {
          fill: 'shade',
          stroke: { ink: i === 0 ? 'soft' : 'ink', width: 1 },
        }),
        segment([scale(mean), top], [scale(mean), top + BAR], { ink: 'ink', width: 2 }),
      );
    }),
  };
}
