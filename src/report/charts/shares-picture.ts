import { scaleLinear } from 'd3-scale';
import type { SharesAnswer } from '../../records/answers/answer.js';
import { IN_A_NIGHT } from '../../records/answers/parts/over-scatter.js';
import { bar, CHART_WIDTH, part, segment, textRoom, word } from '../scene/draw.js';
import type { Scene, SceneNode } from '../scene/scene.js';

/** How one number changes from one layout to another, and what each number of the layout has to do with it. */
export interface SharedChange {
  /** The number, in few words. */
  readonly key: string;
  readonly title: string;
  readonly shares: SharesAnswer['score'];
  /** Standard deviation from shot to shot. */
  readonly scatter: number;
  /** A difference with its sign and unit. */
  readonly change: (value: number) => string;
  /** Whether a difference is shown as 0. */
  readonly isNothing: (value: number) => boolean;
}

/** The numbers of a layout, in the order in which it is written. */
const SHARE_NAMES = [
  ['drillingAngle', 'drilling angle'],
  ['pinToPap', 'pin-to-PAP'],
  ['valAngle', 'VAL angle'],
] as const;

const PLOT = [112, 236] as const;
const TOP = 22;
const ROW = 18;
const HALF = 4.5;

/**
 * Changes as steps, each beginning where the last one ended, all on one scale: how large they are beside the scatter of shots. Steps
 * that would be shown as 0 are left out.
 */
export function sharesPicture(changes: readonly SharedChange[], title: string): Scene {
  const groups = changes.map(stepsOf);
  const reach = Math.max(
    IN_A_NIGHT,
    ...groups.flat().flatMap(({ from, to }) => [Math.abs(from), Math.abs(to)]),
  );
  const scale = scaleLinear([-reach, reach], PLOT);
  let y = TOP;
  const nodes: SceneNode[] = [];
  groups.forEach((steps, i) => {
    const change = changes[i];
    nodes.push(word(change.title, [0, y + 12], { weight: 'bold' }));
    y += ROW;
    for (const step of steps) {
      nodes.push(part(`share ${change.key} ${step.name}`, ...rowOf(step, y, scale)));
      y += ROW;
    }
    y += 6;
  });
  const zero = scale(0);
  return {
    width: CHART_WIDTH,
    height: y + 2,
    title,
    description: `${title}: ${changes.map((each) => `${each.title} ${each.change(each.shares.total)}`).join('; ')}.`,
    nodes: [
      part(
        'not noticeable',
        bar([scale(-IN_A_NIGHT), scale(IN_A_NIGHT)], [TOP, y - TOP - 6], { fill: 'shade' }),
        ...[-IN_A_NIGHT, IN_A_NIGHT].map((edge) =>
          segment([scale(edge), TOP], [scale(edge), y - 6], { ink: 'soft', width: 0.8, dash: [3, 2.5] }),
        ),
      ),
      word(BAND, [Math.min(CHART_WIDTH - textRoom(BAND) / 2, zero), TOP - 8], {
        anchor: 'middle',
        ink: 'soft',
      }),
      segment([zero, TOP], [zero, y - 6], { ink: 'ink', width: 1 }),
      ...nodes,
    ],
  };
}

const BAND = 'a night would not show it';

interface Step {
  readonly name: string;
  /** In standard deviations from shot to shot. */
  readonly from: number;
  readonly to: number;
  readonly text: string;
  readonly isTotal: boolean;
}

/** The steps of a change, and last the change as a whole. */
function stepsOf({ shares, scatter, change, isNothing }: SharedChange): Step[] {
  const sd = Math.max(scatter, Number.EPSILON);
  let at = 0;
  const steps = SHARE_NAMES.flatMap(([key, name]): Step[] => {
    const from = at;
    at += shares[key];
    return isNothing(shares[key])
      ? []
      : [{ name, from: from / sd, to: at / sd, text: change(shares[key]), isTotal: false }];
  });
  return [
    ...steps,
    { name: 'in all', from: 0, to: shares.total / sd, text: change(shares.total), isTotal: true },
  ];
}

function rowOf(
  { name, from, to, text, isTotal }: Step,
  y: number,
  scale: (value: number) => number,
): SceneNode[] {
  const middle = y + 8;
  const ends = [scale(from), scale(to)] as const;
  const wide = Math.abs(ends[1] - ends[0]) < 1.5 ? ([ends[0] - 0.75, ends[0] + 0.75] as const) : ends;
  return [
    word(name, [8, middle + 4]),
    bar(wide, [middle - HALF, 2 * HALF], {
      fill: isTotal ? 'ink' : 'paper',
      stroke: { ink: 'ink', width: 1.2 },
    }),
    word(text, [PLOT[1] + 6, middle + 4]),
  ];
}
