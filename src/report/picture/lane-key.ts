import { FILM_STEPS, formatFilm } from '../lane/lane-marks.js';
import { segment, word } from '../scene/draw.js';
import type { Scene, SceneNode } from '../scene/scene.js';
import { rectangle } from '../scene/shapes.js';
import { PHASES } from '../wording/phases.js';
import { HATCH_WIDTH, oilHatch } from './oil-hatch.js';
import { PHASE_STROKES } from './paths.js';

const ROW = 19;
const SAMPLE = 34;

/** What the lines and shades of the lane's picture mean. */
export function laneKey(): Scene {
  const left = 0;
  const right = 150;
  return {
    width: 320,
    height: ROW * 6,
    title: 'Key to the lane',
    description: 'Line textures of skid, hook and roll, and how closely the oil film is hatched.',
    nodes: [
      heading(left, 'phase'),
      ...PHASES.flatMap((phase, i): SceneNode[] => [
        segment([left, ROW * (i + 1.5)], [left + SAMPLE, ROW * (i + 1.5)], {
          ink: 'ink',
          ...PHASE_STROKES[phase],
        }),
        label(left + SAMPLE + 8, i, phase),
      ]),
      heading(right, 'oil film, units'),
      ...FILM_STEPS.flatMap((_, i): SceneNode[] => [
        {
          kind: 'path',
          d: rectangle(right, ROW * (i + 1) + 2, SAMPLE, ROW - 4),
          stroke: { ink: 'faint', width: 0.6 },
        },
        ...FILM_STEPS.slice(0, i + 1).map(
          (__, step): SceneNode => ({
            kind: 'path',
            d: oilHatch(step, {
              left: right,
              right: right + SAMPLE,
              top: ROW * (i + 1) + 2,
              bottom: ROW * (i + 2) - 2,
            }),
            stroke: { ink: 'oil', width: HATCH_WIDTH },
          }),
        ),
        label(right + SAMPLE + 8, i, formatFilm(i)),
      ]),
    ],
  };
}

const heading = (x: number, text: string): SceneNode => word(text, [x, ROW * 0.5 + 4], { weight: 'bold' });

const label = (x: number, row: number, text: string): SceneNode => word(text, [x, ROW * (row + 1.5) + 4]);
