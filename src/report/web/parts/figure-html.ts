import type { Scene } from '../../scene/scene.js';
import { SCREEN } from '../../scene/screen-inks.js';
import { toSvg } from '../../scene/to-svg.js';
import { htmlText, proseHtml } from './table-html.js';

/** A picture inside a page, in the page's inks and the reader's own letters. */
export const svgHtml = (scene: Scene): string =>
  toSvg(scene, { palette: SCREEN, fontFamily: 'system-ui, sans-serif' }).trimEnd();

/** Pictures with a word on how they are read, where one is needed, and behind them the same as tables. */
export const figureHtml = (
  id: string,
  pictures: string,
  caption: string,
  tables: readonly string[],
): string => `<figure id="${id}-figure">
${pictures}
${caption === '' ? '' : `<figcaption><p>${proseHtml(caption)}</p></figcaption>\n`}${
  tables.length === 0
    ? ''
    : `<details>\n<summary>The same in numbers</summary>\n${tables.join('\n')}\n</details>\n`
}</figure>`;

/** Small pictures side by side, each below its title. */
export const smallPictures = (scenes: readonly Scene[]): string =>
  `<div class="small">\n${scenes
    .map((scene) => `<div>\n<p class="chart">${htmlText(scene.title)}</p>\n${svgHtml(scene)}\n</div>`)
    .join('\n')}\n</div>`;
