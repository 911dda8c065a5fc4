import { filmStep, formatFilm } from '../lane/lane-marks.js';
import type { Page } from '../text/page.js';

/** Signs of the steps of a film, thinnest first; no other sign on a lane is among them. */
const SIGNS = { unicode: ['·', '░', '▒', '▓', '█'], ascii: ['.', ':', '-', '=', '%'] } as const;

const signsOn = ({ ascii }: Page) => SIGNS[ascii ? 'ascii' : 'unicode'];

/** How thick a film is, as one sign, the same wherever oil is drawn; a blank where there is none. */
export function oilSign(units: number, page: Page): string {
  const step = filmStep(units);
  return step < 0 ? ' ' : signsOn(page)[step];
}

/** What the signs mean. */
export const oilLegend = (page: Page): string[] => [
  'film in units:',
  ...signsOn(page).map((sign, i) => `${sign} ${formatFilm(i)}`),
];
