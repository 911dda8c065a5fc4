import type { LayoutAnswer } from '../../records/answers/answer.js';
import { type Units, withUnit } from '../text/display-units.js';
import { angle, decimals } from '../text/figures.js';
import type { Page, Spelling } from '../text/page.js';
import { paragraph } from '../text/section.js';

/** A layout alone on a line, then the same in words. */
export const layoutHeadline = (layout: LayoutAnswer, page: Page): string[] => [
  `  ${page.paint.title(layout.text)}`,
  ...paragraph(layoutWords(layout, page), page),
  ...bufferDoubts(layout, page.units).flatMap((text) => paragraph(text, page, page.paint.caution)),
];

export const layoutWords = (layout: LayoutAnswer, page: Spelling): string =>
  `${layout.drillingAngleDeg === null ? 'No drilling angle' : `Drilling angle ${angle(layout.drillingAngleDeg, page)}`}, pin ${withUnit(layout.pinToPapIn, page.units.tape)} from the PAP, ` +
  `VAL angle ${angle(layout.valAngleDeg, page)}. Pin buffer ${withUnit(layout.pinBufferIn, page.units.tape)}.`;

/** That a pin buffer may stand where a VAL angle was read: one is at most the pin-to-PAP, and angles that small are seldom drilled. */
export const bufferDoubts = (
  { valAngleDeg, pinToPapIn, pinBufferIn }: LayoutAnswer,
  { tape }: Pick<Units, 'tape'>,
): string[] =>
  valAngleDeg > 0 && valAngleDeg <= pinToPapIn
    ? [
        `The VAL angle is only ${decimals(valAngleDeg, 0)}°, which puts the pin ${withUnit(pinBufferIn, tape)} from the VAL. ` +
          'If the last number was meant as a pin buffer, give three distances, such as 4 1/2 x 3 3/8 x 2.',
      ]
    : [];
