import type { LayoutAnswer } from '../../records/answers/answer.js';
import { formatSixteenths } from '../../records/text/layout-text.js';
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
  { drillingAngleDeg, valAngleDeg, pinToPapIn, pinBufferIn }: Omit<LayoutAnswer, 'text'>,
  { tape }: Pick<Units, 'tape'>,
): string[] =>
  valAngleDeg > 0 && valAngleDeg <= pinToPapIn
    ? [
        `The VAL angle is only ${decimals(valAngleDeg, 0)}°, which puts the pin ${withUnit(pinBufferIn, tape)} from the VAL. ` +
          `If the last number was meant as a pin buffer, write its unit: ${inBuffer({ drillingAngleDeg, pinToPapIn, valAngleDeg })}.`,
      ]
    : [];

/** Where a ball has no drilling angle any is accepted, and where all are mapped none was given. */
const ANY_ANGLE_DEG = 50;

/** As it would be written with its last number as a pin buffer. */
const inBuffer = ({
  drillingAngleDeg,
  pinToPapIn,
  valAngleDeg,
}: Pick<LayoutAnswer, 'drillingAngleDeg' | 'pinToPapIn' | 'valAngleDeg'>): string =>
  `${decimals(drillingAngleDeg ?? ANY_ANGLE_DEG, 0)} x ${formatSixteenths(pinToPapIn)} x ${formatSixteenths(valAngleDeg)} in`;
