import { htmlText, listHtml, proseHtml, tableHtml } from '../web/parts/table-html.js';
import type { Block, BlockPart, WorkStep } from './blocks.js';

/** A block as a section of a web page. */
export const blockHtml = ({ heading, parts }: Block): string =>
  `<section>\n<h2>${htmlText(heading)}</h2>\n${parts.map(partHtml).join('\n')}\n</section>`;

function partHtml(part: BlockPart): string {
  switch (part.kind) {
    case 'text':
      return `<p>${proseHtml(part.text)}</p>`;
    case 'bullets':
      return listHtml(part.texts);
    case 'table':
      return tableHtml(
        part.heads,
        part.rows.map((row) => row.map(shortBlank)),
      );
    case 'steps':
      return `<ol>\n${part.steps.map(stepHtml).join('\n')}\n</ol>`;
  }
}

/** A screen is not written on: a short line shows where a sheet has a blank. */
const shortBlank = (text: string): string => text.replace(/_{4,}/g, '____');

function stepHtml({ mark, ways, measured }: WorkStep): string {
  const beside = measured === '' ? '' : `; ${htmlText(shortBlank(measured))}`;
  const hows = ways.map((way) => `<p>${htmlText(way)}</p>`).join('\n');
  return `<li><p><strong>${htmlText(mark)}</strong>${beside}</p>\n${hows}</li>`;
}
