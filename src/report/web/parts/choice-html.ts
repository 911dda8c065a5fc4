import { widestGap } from '../../drawings/apart-drawing.js';
import type { Compared } from '../../picture/compared.js';
import { USUAL } from '../../picture/compared.js';
import { SCREEN } from '../../scene/screen-inks.js';
import { htmlText } from './table-html.js';

/** Name of the box that says whether a layout's path is drawn. */
export const choiceId = (sign: string): string => `show-${sign === USUAL ? 'usual' : sign}`;

/** Paths that nowhere part farther than this from the first, boards, are drawn only when they are asked for: they would lie on it. */
const APART_BOARDS = 1;

/** Boxes to tick for the paths that are to be drawn. The page's style reads them: no script is needed. */
export const choiceHtml = (compared: readonly Compared[]): string =>
  `<fieldset class="choice">
<legend>Paths drawn</legend>
${compared
  .map(({ sign, ink, name, layout: { path } }, i) => {
    const first = compared[0]?.layout.path ?? [];
    const pair = [first, path].map((each) => ({ sign, path: each }));
    const checked = i === 0 || widestGap(pair) > APART_BOARDS ? ' checked' : '';
    return (
      `<label><input type="checkbox" id="${choiceId(sign)}"${checked}>` +
      `<span class="sign" style="border-color: ${SCREEN[ink]}">${sign}</span>${htmlText(name)}</label>`
    );
  })
  .join('\n')}
</fieldset>`;
