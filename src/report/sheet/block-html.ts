import { htmlText, listHtml, tableHtml } from '../web/table-html.js';
import type { Block, BlockPart } from './blocks.js';

/** A block as a section of a web page. */
export const blockHtml = ({ heading, parts }: Block): string =>
  `<section>\n<h2>${htmlText(heading)}</h2>\n${parts.map(partHtml).join('\n')}\n</section>`;

function partHtml(part: BlockPart): string {
  switch (part.kind) {
    case 'text':
      return `<p>${htmlText(part.text)}</p>`;
    case 'bullets':
      return listHtml(part.texts);
    case 'table':
      return tableHtml(part.heads, part.rows);
  }
}
