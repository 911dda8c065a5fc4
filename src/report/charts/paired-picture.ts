import { scaleLinear } from 'd3-scale';
import { IN_A_NIGHT } from '../../records/answers/parts/over-scatter.js';
import { type Compared, partOf } from '../picture/compared.js';
import { DISC_RADIUS, signDisc } from '../picture/sign-disc.js';
import { bar, CHART_WIDTH, part, segment, textRoom, word } from '../scene/draw.js';
import type { Scene, SceneNode } from '../scene/scene.js';
import { circle } from '../scene/shapes.js';
import { levelsOf } from './levels.js';

/** How far layouts differ from another in one number, world by world. */
export interface PairedNumber {
  readonly title: string;
  /** Standard deviation from shot to shot. */
  readonly scatter: number;
  readonly rows: readonly {
    readonly compared: Pick<Compared, 'sign' | 'ink'>;
    /** One in twenty worlds each, ascending. */
    readonly twentieths: readonly number[];
  }[];
  /** A difference with its sign. */
  readonly change: (value: number) => string;
  /** What less and more of it is. */
  readonly words: readonly [less: string, more: string];
}

/** Room to the right for half a number of the scale. */
const PLOT = [2 * DISC_RADIUS + 12, CHART_WIDTH - 22] as const;
const TOP = 20;
const ROW = 30;
const DOT = 2.8;
/** Room for dots above a row's line. */
const STACK = 20;

/**
 * Differences from another layout in the same world: for each layout twenty dots, each one world in twenty. The zero line is that other
 * layout; in the grey band lies what a night of shots with each would not show.
 */
export function pairedPicture({ title, scatter, rows, change, words }: PairedNumber): Scene {
  const unseen = IN_A_NIGHT * scatter;
  const most = Math.max(1.4 * unseen, ...rows.flatMap(({ twentieths }) => twentieths.map(Math.abs)));
  const scale = scaleLinear([-most, most], PLOT).nice(4);
  const bottom = TOP + ROW * rows.length;
  const zero = scale(0);
  const bandText = 'a night would not show it';
  return {
    width: CHART_WIDTH,
    height: bottom + 36,
    title,
    description: `${title}: for each layout twenty dots, each for one simulated try in twenty; zero is the layout compared with.`,
    nodes: [
      part(
        'not noticeable',
        bar([scale(-unseen), scale(unseen)], [TOP - 4, bottom - TOP + 4], { fill: 'shade' }),
        ...[-unseen, unseen].map((edge) =>
          segment([scale(edge), TOP - 4], [scale(edge), bottom], { ink: 'soft', width: 0.8, dash: [3, 2.5] }),
        ),
      ),
      word(bandText, [Math.max(zero, textRoom(bandText) / 2), TOP - 9], { anchor: 'middle', ink: 'soft' }),
      segment([zero, TOP - 4], [zero, bottom + 3], { ink: 'ink', width: 1.2 }),
      segment([PLOT[0], bottom], [PLOT[1], bottom], { ink: 'soft', width: 0.8 }),
      ...scale.ticks(4).map((at) =>
        word(Math.abs(at) < 1e-12 ? '0' : change(at), [scale(at), bottom + 15], {
          anchor: 'middle',
          ink: 'soft',
        }),
      ),
      word(words[0], [PLOT[0], bottom + 31]),
      word(words[1], [PLOT[1], bottom + 31], { anchor: 'end' }),
      ...rows.map(({ compared, twentieths }, i): SceneNode => {
        const y = TOP + ROW * (i + 1) - 6;
        const dots = lifted(twentieths.map(scale));
        return part(
          partOf(compared.sign),
          ...signDisc(compared, [DISC_RADIUS + 2, y - 7]),
          part(`worlds ${compared.sign}`, {
            kind: 'path',
            d: dots.map(([x, height]) => circle([x, y - DOT - height], DOT)).join(''),
            fill: compared.ink,
            stroke: { ink: 'paper', width: 0.5 },
          }),
        );
      }),
    ],
  };
}

/** Dots with the height each is lifted by, so that none covers another; pressed together where room runs out. */
function lifted(xs: readonly number[]): (readonly [x: number, height: number])[] {
  const levels = levelsOf(xs, 2 * DOT);
  const lift = Math.min(2 * DOT, (STACK - DOT) / Math.max(1, ...levels));
  return xs.map((x, i) => [x, levels[i] * lift]);
}
