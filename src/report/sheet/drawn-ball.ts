import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import type { DrawnBall } from '../picture/ball-picture.js';
import type { View } from '../picture/view.js';

/** What a sheet's pictures show: the marks, the holes, and the rings that can be seen. */
export const drawnBall = ({ face, layout, rings }: SheetAnswer): DrawnBall => ({
  face,
  layout,
  rings: rings ? rings.rings.slice(0, rings.ringsInOil) : [],
});

export const PICTURE_NAMES: Readonly<Record<View['name'], string>> = {
  grip: 'seen from the grip side, fingers up',
  pap: 'seen from the PAP, vertical axis line (VAL) upright',
};
