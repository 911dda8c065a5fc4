import type { LayoutAnswer, MarkAnswer } from '../../../records/answers/answer.js';
import type { BallFace } from '../../../records/answers/parts/ball-face.js';
import { ballPicture } from '../../picture/ball-picture.js';
import { gripView, papView, type View } from '../../picture/view.js';
import type { Scene } from '../../scene/scene.js';
import type { Units } from '../../text/display-units.js';
import { arcsGrid } from '../../wording/workshop.js';
import { figureHtml, svgHtml } from './figure-html.js';
import { gridHtml } from './table-html.js';

/** Wider than letters of the fonts that readers have, in text sizes. */
const LETTER = 0.57;

const GRIP_SIDE = 'From the grip side, fingers up';
const PAP_SIDE = 'From the PAP, VAL upright';

/** The ball from the grip side: what a person at the drill has before the eyes. */
export const gripFigure = (face: BallFace, layout: LayoutAnswer, units: Units): string =>
  `<figure id="grip-figure">
${svgHtml(ballScene(face, layout, gripView(face), GRIP_SIDE, units))}
<figcaption><p>${GRIP_SIDE}. Lengths on the lines: along the surface, ${units.tape.name}.${face.oldHoles.length > 0 ? ' Dashed: holes of an earlier drilling, plugged.' : ''}</p></figcaption>
</figure>`;

/** The ball from the other side of its marks, and where they lie by tape. */
export const ballFigure = (
  face: BallFace,
  layout: LayoutAnswer,
  marks: readonly MarkAnswer[],
  units: Units,
): string =>
  figureHtml(
    'ball',
    `<div class="lane">
<div>
${svgHtml(ballScene(face, layout, papView(face), PAP_SIDE, units))}
</div>
<div>
${gridHtml(arcsGrid(marks, units), `Marks and holes by tape along the surface, to ${units.tapeStep}`)}
</div>
</div>`,
    `${PAP_SIDE}. Lengths along the surface, ${units.tape.name}. Two arcs from known marks find the next.`,
    [],
  );

function ballScene(face: BallFace, layout: LayoutAnswer, view: View, title: string, units: Units): Scene {
  const frame = {
    width: 350,
    height: 212,
    textSize: 11.5,
    widthOf: (text: string, size: number) => LETTER * size * text.length,
  };
  return {
    width: frame.width,
    height: frame.height,
    title,
    description:
      'Grip, holes, pin, marker, PAP and lines of the layout; their places by tape stand in a table.',
    nodes: [ballPicture({ face, layout, lengthText: units.tape.show }, view, frame)],
  };
}
