import { scaleLinear } from 'd3-scale';
import { IN_A_NIGHT } from '../../records/answers/parts/over-scatter.js';
import { bar, CHART_WIDTH, part, segment, textRoom, word } from '../scene/draw.js';
import type { Scene, SceneNode } from '../scene/scene.js';

/** One thing that moves a reaction number, and how far, in the units of answers. */
export interface Mover {
  readonly kind: 'shots' | 'reach' | 'lever' | 'layout';
  readonly name: string;
  /** The layout's sign; empty for anything else. */
  readonly sign: string;
  /** A change has its sign; what spreads a number to both sides is positive. */
  readonly size: number;
}

/** A reaction number and what moves it. */
export interface NumberMoved {
  readonly title: string;
  readonly movers: readonly Mover[];
  /** Standard deviation from shot to shot. */
  readonly scatter: number;
  readonly sizeText: (mover: Mover) => string;
}

const TOP = 2;
const ROW = 29;
const NAME = 12;
const BAR = [16, 9] as const;

/**
 * What moves a number as bars on one scale: the scatter of shots first, then all else from much to little. What lies left of the dashed
 * line a night of shots would not show.
 */
export function moversPicture({ title, movers, scatter, sizeText }: NumberMoved): Scene {
  const most = Math.max(...movers.map(({ size }) => Math.abs(size)), Number.MIN_VALUE);
  const widest = Math.max(
    ...movers.map((mover) => textRoom(sizeText(mover)) * (Math.abs(mover.size) / most)),
  );
  const scale = scaleLinear([0, most], [1, CHART_WIDTH - widest - 8]);
  const bottom = TOP + ROW * movers.length;
  const unseen = scale(IN_A_NIGHT * scatter);
  return {
    width: CHART_WIDTH,
    height: bottom + 20,
    title,
    description: `${title}: ${movers.map((mover) => `${mover.name} ${sizeText(mover)}`).join('; ')}.`,
    nodes: [
      segment([unseen, bottom - 2], [unseen, bottom + 4], UNSEEN),
      word('from here on a night shows it', [unseen - 1, bottom + 15], { ink: 'soft' }),
      ...movers.map((mover, i): SceneNode => {
        const y = TOP + ROW * i;
        const { kind, sign, name } = mover;
        const end = scale(Math.abs(mover.size));
        return part(
          `mover ${i}`,
          word(sign === '' ? name : `${sign} ${name}`, [1, y + NAME], {
            weight: kind === 'layout' ? 'bold' : 'regular',
          }),
          bar([1, Math.max(end, 1.6)], [y + BAR[0], BAR[1]], LOOKS[kind]),
          ...(kind === 'shots' ? hatch(end, y + BAR[0]) : []),
          segment([unseen, y + BAR[0] - 1], [unseen, y + BAR[0] + BAR[1] + 1], UNSEEN),
          word(sizeText(mover), [Math.max(end, unseen) + 6, y + BAR[0] + 9]),
        );
      }),
    ],
  };
}

const UNSEEN = { ink: 'ink', width: 1.2, dash: [2, 1.5] } as const;

const LOOKS = {
  shots: { fill: 'shade', stroke: { ink: 'soft', width: 1 } },
  reach: { fill: 'paper', stroke: { ink: 'ink', width: 1.2 } },
  lever: { fill: 'soft', stroke: { ink: 'soft', width: 1 } },
  layout: { fill: 'series1', stroke: { ink: 'series1', width: 1 } },
} as const;

/** Slanted lines over the bar of the shots, so that it differs from the others even without its tone. */
const hatch = (end: number, top: number): SceneNode[] =>
  Array.from({ length: Math.max(0, Math.floor((end - 9) / 6)) }, (_, i) =>
    segment([1 + 6 * i, top + BAR[1]], [1 + 6 * i + BAR[1], top], { ink: 'soft', width: 0.6 }),
  );
