import { visible } from '../../src/base/visible.js';
import type { ModelCard } from '../../src/regression/card.js';
import { decimals } from '../../src/report/text/figures.js';
import type { Page } from '../../src/report/text/page.js';
import { joinSections, paragraph } from '../../src/report/text/section.js';
import { table } from '../../src/report/text/table.js';

/** What a fit came to, as a screen of text; the model's own page says more. */
export const fitReport = (card: ModelCard, folder: string, page: Page): string =>
  joinSections([
    [
      page.paint.heading('The regression, fitted anew'),
      ...paragraph(
        `Fitted on ${card.data.fittedOn} shots of ${card.data.lanes} lanes; ${card.data.heldOut} shots were held out: ${card.data.split}.`,
        page,
      ),
    ],
    table(
      [{ head: 'held-out shots' }, { head: 'R2' }, { head: 'RMSE' }, { head: '95 %' }, { head: 'worst' }],
      card.outputs.map(({ name, unit, heldOut }) => [
        `${name}, ${unit}`,
        decimals(heldOut.r2, 4),
        ...[heldOut.rmse, heldOut.p95, heldOut.worst].map((value) => decimals(value, 3)),
      ]),
      page,
    ),
    paragraph(
      `${card.file.name} (${Math.round(card.file.bytes / 1024)} kB) and its card are in ${visible(folder)}.`,
      page,
    ),
  ]);
