import { type Compared, USUAL } from '../picture/compared.js';
import { SCREEN } from '../scene/screen-inks.js';
import { htmlText } from './table-html.js';

/** Name of the box that says whether a layout is drawn. */
export const choiceId = (sign: string): string => `show-${sign === USUAL ? 'usual' : sign}`;

/** Boxes to tick for the layouts that are to be drawn, none on a page without pictures. The page's style reads them: no script is needed. */
export const choiceHtml = (compared: readonly Compared[]): string =>
  compared.length === 0
    ? ''
    : `<fieldset class="choice">
<legend>Layouts in the pictures</legend>
${compared
  .map(
    ({ sign, ink, name }) =>
      `<label><input type="checkbox" id="${choiceId(sign)}" checked>` +
      `<span class="sign" style="border-color: ${SCREEN[ink]}">${sign}</span>${htmlText(name)}</label>`,
  )
  .join('\n')}
</fieldset>`;
