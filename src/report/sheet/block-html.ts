import { escapeXml } from '../scene/escape-xml.js';
import { joined } from '../wrap.js';
import type { Block, BlockPart } from './blocks.js';

/** A text for a web page, with numbers kept beside their units. */
export const htmlText = (text: string): string => escapeXml(joined(text));

/** A block as a section of a web page. */
export const blockHtml = ({ heading, parts }: Block): string =>
  `<section>\n<h2>${htmlText(heading)}</h2>\n${parts.map(partHtml).join('\n')}\n</section>`;

function partHtml(part: BlockPart): string {
  switch (part.kind) {
    case 'text':
      return `<p>${htmlText(part.text)}</p>`;
    case 'bullets':
      return `<ul>\n${part.texts.map((text) => `<li>${htmlText(text)}</li>`).join('\n')}\n</ul>`;
    case 'table':
      return tableHtml(part.heads, part.rows);
  }
}

/** Letters up to which a cell is kept on one line. */
const SHORT = 16;

/** Columns from which a table is laid out row by row on a narrow screen. */
const WIDE = 6;

/**
 * A table whose first column names its rows.
 *
 * Roles are written out, since a wide one is no longer laid out as a table on a narrow screen and would lose them; each
 * cell carries its column's head to be shown there.
 */
function tableHtml(heads: readonly string[], rows: readonly (readonly string[])[]): string {
  const wide = rows.some((row) => row.length >= WIDE) ? ' class="wide"' : '';
  const head =
    heads.length === 0
      ? ''
      : `<thead role="rowgroup"><tr role="row">${heads
          .map((text) =>
            text === ''
              ? '<td role="cell"></td>'
              : `<th role="columnheader" scope="col">${htmlText(text)}</th>`,
          )
          .join('')}</tr></thead>\n`;
  const cell = (text: string, i: number): string =>
    i === 0
      ? `<th role="rowheader" scope="row">${htmlText(text)}</th>`
      : `<td role="cell"${text.length <= SHORT ? ' class="short"' : ''}${heads[i] ? ` data-head="${htmlText(heads[i])}"` : ''}>${htmlText(text)}</td>`;
  const body = rows.map((row) => `<tr role="row">${row.map(cell).join('')}</tr>`).join('\n');
  return `<table role="table"${wide}>\n${head}<tbody role="rowgroup">\n${body}\n</tbody>\n</table>`;
}
