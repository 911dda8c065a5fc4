import type { Paper } from '../../base/paper.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { loadTypeface } from '../font/typeface.js';
import { pdfFile } from '../scene/pdf-file.js';
import { pngFile } from '../scene/png-file.js';
import { svgFile } from '../scene/svg-file.js';
import { UNITS } from '../text/display-units.js';
import { sheetHtml } from './sheet-html.js';
import { asOnePicture, sheetPages } from './sheet-pages.js';

/** Kinds of file a sheet can be, by the ending of their names. */
export const SHEET_KINDS = ['pdf', 'svg', 'png', 'html'] as const;
type SheetKind = (typeof SHEET_KINDS)[number];

/** A work sheet as the bytes of a file; the same answer gives the same bytes. */
export async function sheetFile(
  answer: SheetAnswer,
  kind: SheetKind,
  paper: Paper,
  units = UNITS.trade,
): Promise<Buffer> {
  const typeface = loadTypeface();
  if (kind === 'html') return Buffer.from(await sheetHtml(answer, paper, typeface, units));
  const pages = sheetPages(answer, paper, typeface, units);
  switch (kind) {
    case 'pdf':
      return pdfFile(pages, typeface, answer.date);
    case 'svg':
      return Buffer.from(await svgFile(asOnePicture(pages), typeface));
    case 'png':
      return pngFile(asOnePicture(pages), typeface);
  }
}
