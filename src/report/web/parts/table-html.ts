import { escapeXml } from '../../scene/escape-xml.js';
import type { Grid } from '../../text/table.js';
import { joined } from '../../text/wrap.js';

/** A text for a web page, with numbers kept beside their units. */
export const htmlText = (text: string): string => escapeXml(joined(text));

/** A word that is not broken at its hyphens. */
const wordHtml = (word: string): string => `<span class="word">${word}</span>`;

/** The same for text that flags may stand in, such as `--lane`, which are not broken at their hyphens. */
export const proseHtml = (text: string): string =>
  htmlText(text).replace(/(?<![\w-])--[a-z][a-z-]*/g, wordHtml);

/** Longer words of a command are broken where there is no room: paths of files. */
const LONGEST_WORD = 30;

/** A command to copy, broken between its words only. */
export const codeHtml = (command: string): string =>
  `<code>${command
    .split(' ')
    .map((word) => (word.length > LONGEST_WORD ? escapeXml(word) : wordHtml(escapeXml(word))))
    .join(' ')}</code>`;

/** A list of texts; nothing for none. */
export const listHtml = (texts: readonly string[]): string =>
  texts.length === 0 ? '' : `<ul>\n${texts.map((text) => `<li>${proseHtml(text)}</li>`).join('\n')}\n</ul>`;

/** A grid as a table; nothing for one without rows. */
export const gridHtml = ({ columns, rows }: Grid, caption = ''): string =>
  rows.length === 0
    ? ''
    : tableHtml(
        columns.map(({ head }) => head.replaceAll('-\n', '-').replaceAll('\n', ' ')),
        rows,
        caption,
      );

/** Letters up to which a cell is kept on one line. */
const SHORT = 16;

/** Columns from which a table is laid out row by row on a narrow screen, and letters of a cell that make fewer enough. */
const WIDE = 6;
const LONG = 80;
const WIDE_WITH_LONG = 4;

/**
 * A table whose first column names its rows.
 *
 * Roles are written out, since a wide one is no longer laid out as a table on a narrow screen and would lose them; each
 * cell carries its column's head to be shown there.
 */
export function tableHtml(
  heads: readonly string[],
  rows: readonly (readonly string[])[],
  caption = '',
): string {
  const isWide = (row: readonly string[]): boolean =>
    row.length >= WIDE || (row.length >= WIDE_WITH_LONG && row.some((cell) => cell.length > LONG));
  const wide = rows.some(isWide) ? ' class="wide"' : '';
  const said = caption === '' ? '' : `<caption>${htmlText(caption)}</caption>\n`;
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
    i === 0 && text !== ''
      ? `<th role="rowheader" scope="row">${htmlText(text)}</th>`
      : `<td role="cell"${text.length <= SHORT ? ' class="short"' : ''}${heads[i] ? ` data-head="${htmlText(heads[i])}"` : ''}>${proseHtml(text)}</td>`;
  const body = rows.map((row) => `<tr role="row">${row.map(cell).join('')}</tr>`).join('\n');
  return `<table role="table"${wide}>\n${said}${head}<tbody role="rowgroup">\n${body}\n</tbody>\n</table>`;
}
