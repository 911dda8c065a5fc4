import type { LayoutAnswer } from '../../records/answers/answer.js';
import { withUnit } from '../text/display-units.js';
import { angle } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { paragraph } from '../text/section.js';

/** A layout alone on a line, then the same in words. */
export const layoutHeadline = (layout: LayoutAnswer, page: Page): string[] => [
  `  ${page.paint.title(layout.text)}`,
  ...paragraph(layoutWords(layout, page), page),
];

export const layoutWords = (layout: LayoutAnswer, page: Page): string =>
  `${layout.drillingAngleDeg === null ? 'No drilling angle' : `Drilling angle ${angle(layout.drillingAngleDeg, page)}`}, pin ${withUnit(layout.pinToPapIn, page.units.tape)} from the PAP, ` +
  `VAL angle ${angle(layout.valAngleDeg, page)}. Pin buffer ${withUnit(layout.pinBufferIn, page.units.tape)}.`;
