import type { LayoutAnswer, MarkAnswer } from '../../records/answers/answer.js';
import type { BallFace } from '../../records/answers/ball-face.js';
import { ballPicture } from '../picture/ball-picture.js';
import { gripView, papView, type View } from '../picture/view.js';
import type { Scene } from '../scene/scene.js';
import type { Units } from '../text/display-units.js';
import { arcsGrid } from '../wording/workshop.js';
import { figureHtml, smallPictures } from './figure-html.js';
import { gridHtml } from './table-html.js';

/** Wider than letters of the fonts that readers have, in text sizes. */
const LETTER = 0.57;

const VIEWS = [
  [gripView, 'From the grip side, fingers up'],
  [papView, 'From the PAP, VAL upright'],
] as const;

/** The ball with its marks and holes, seen from both sides. */
export function ballFigure(
  face: BallFace,
  layout: LayoutAnswer,
  marks: readonly MarkAnswer[],
  units: Units,
): string {
  const old = face.oldHoles.length > 0 ? ' Dashed: holes of an earlier drilling, plugged.' : '';
  return figureHtml(
    'ball',
    smallPictures(VIEWS.map(([viewOf, title]) => ballScene(face, layout, viewOf(face), title))),
    `What can be seen from each side, with the two angles of the layout in their corners.${old}`,
    [gridHtml(arcsGrid(marks, units), `Marks and holes by tape along the surface, to ${units.tapeStep}`)],
  );
}

function ballScene(face: BallFace, layout: LayoutAnswer, view: View, title: string): Scene {
  const frame = {
    width: 320,
    height: 190,
    textSize: 11,
    widthOf: (text: string, size: number) => LETTER * size * text.length,
  };
  return {
    width: frame.width,
    height: frame.height,
    title,
    description: 'Grip, holes, pin, marker, PAP and lines of the layout; their places by tape stand below.',
    nodes: [ballPicture({ face, layout, rings: [] }, view, frame)],
  };
}
