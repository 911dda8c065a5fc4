import type { MapAnswer } from '../../records/answers/answer.js';
import { numberPicture } from '../picture/glance-picture.js';
import { FLARE_START_NOTE } from '../tables/axis-tables.js';
import { flareStartGrid, glanceGrid, mapRowsGrid, psaGrid } from '../tables/map-tables.js';
import type { Units } from '../text/display-units.js';
import { inUnicode } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { sentences } from '../text/sentences.js';
import { learnedTexts } from '../wording/learned-line.js';
import {
  MAP_ORDER,
  mapDoubts,
  mapFixed,
  mapOnLane,
  mapScaleNote,
  mapVerdict,
  OVER_WORDS,
} from '../wording/map-words.js';
import { sayAll } from '../wording/say.js';
import { partedCautions } from '../wording/statements/parted-cautions.js';
import { figureHtml, smallPictures } from './parts/figure-html.js';
import { inventedText } from './parts/foot-text.js';
import { pageHtml } from './parts/page-html.js';
import { gridHtml, listHtml } from './parts/table-html.js';

/** How the bars are read. */
const BARS =
  'Filled bars: this ball over the layouts. Lines: 9 of 10 cores that have its published numbers. Crosses: the ball before drilling. ' +
  'Open bars: other balls.';

/** What the title of a map says. */
export const mapTitle = ({ over }: MapAnswer): string =>
  `What the ${OVER_WORDS[over].name} does to this core`;

/**
 * A map as one web page that fetches nothing.
 *
 * @param invented  which of bowler, ball and lane are demo records
 */
export function mapHtml(given: MapAnswer, invented: readonly string[], units: Units): string {
  const answer = withPlainText(given, false);
  const { own, usual } = partedCautions(answer.cautions);
  const [verdict = '', ...more] = sentences(mapVerdict(answer, inUnicode(units)));
  return pageHtml({
    over: `${mapTitle(answer)}: ${answer.ball}, drilled for ${answer.bowler}; ${mapFixed(answer, inUnicode(units))}`,
    title: verdict,
    opening: [
      more.join(' '),
      mapOnLane(answer, inUnicode(units)),
      ...learnedTexts(answer.onLane?.learned, [], units),
    ],
    invented: inventedText(invented),
    facts: [{ label: 'Look at', texts: [...mapDoubts(answer, units), ...sayAll(own, units)] }],
    below: `<h2>How far the numbers move</h2>\n${figureHtml(
      'glance',
      smallPictures(MAP_ORDER.map((key) => numberPicture(answer, key, units))),
      `${BARS} ${mapScaleNote(answer, units)}`,
      [
        gridHtml(glanceGrid(answer, inUnicode(units))),
        gridHtml(mapRowsGrid(answer, inUnicode(units)), 'Row by row'),
      ],
    )}`,
    cautions: sayAll(usual, units),
    sections: [
      {
        id: 'psa',
        about: 'High-RG axis',
        heading: 'Where the high-RG axis (PSA) comes out',
        parts: [gridHtml(psaGrid(answer, inUnicode(units)))],
      },
      {
        id: 'flare',
        about: 'Flare',
        heading: 'How flare starts',
        parts: [gridHtml(flareStartGrid(answer, inUnicode(units))), `<p>${FLARE_START_NOTE}</p>`],
      },
      {
        id: 'assumed',
        about: 'Assumed',
        heading: 'Assumed',
        parts: [listHtml(sayAll(answer.assumptions, units))],
      },
    ],
    compared: [],
    foot: `flarewise ${answer.version}: the same inputs give the same page. It is one file that fetches nothing.`,
  });
}
