import type { LayoutAnswer } from '../records/answer.js';
import { angle, tape } from './figures.js';
import type { Page } from './page.js';
import { paragraph } from './section.js';

/** A layout alone on a line, then the same in words. */
export const layoutHeadline = (layout: LayoutAnswer, page: Page): string[] => [
  `  ${page.paint.title(layout.text)}`,
  ...paragraph(
    `Drilling angle ${angle(layout.drillingAngleDeg, page)}, pin ${tape(layout.pinToPapIn)} in from the PAP, ` +
      `VAL angle ${angle(layout.valAngleDeg, page)}. Pin buffer ${tape(layout.pinBufferIn)} in.`,
    page,
  ),
];
