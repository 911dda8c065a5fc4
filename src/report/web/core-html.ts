import type { CoreAnswer } from '../../records/answers/answer.js';
import { corePictures } from '../picture/core-picture.js';
import { coreNumbersGrid, partsGrid } from '../tables/core-tables.js';
import type { Units } from '../text/display-units.js';
import { withPlainText } from '../text/plain-text.js';
import { sentences } from '../text/sentences.js';
import { coreVerdict } from '../wording/core-verdict.js';
import { sayAll } from '../wording/say.js';
import { figureHtml, smallPictures } from './parts/figure-html.js';
import { pageHtml } from './parts/page-html.js';
import { gridHtml, listHtml } from './parts/table-html.js';

/** How the picture of a core is read. */
const CAPTION =
  'Both sections to one scale, pin up or toward you, marker to the right. Where parts share space the later one is there; the denser ' +
  'a part, the closer its hatch. Dash-dotted lines: principal axes through the CG. Dashed outlines: holes, before or behind the plane.';

/**
 * A check of a core as one web page that fetches nothing.
 *
 * @param faults  what keeps it from being a ball, in words
 */
export function coreHtml(given: CoreAnswer, faults: readonly string[], units: Units): string {
  const answer = withPlainText(given, false);
  const [verdict = '', ...more] = sentences(coreVerdict(answer, units));
  return pageHtml({
    over: `A core, checked and weighed: ${answer.core}`,
    title: verdict,
    opening: [more.join(' '), ...(answer.note === null ? [] : [answer.note])],
    invented: null,
    facts: [{ label: 'Look at', texts: sayAll(answer.doubts, units) }],
    below: `<h2>Two sections</h2>\n${figureHtml('core', smallPictures(corePictures(answer, units)), CAPTION, [
      gridHtml(partsGrid(answer, units), 'Parts; where they overlap, the later one counts'),
    ])}`,
    cautions: sayAll(answer.cautions, units),
    sections: [
      { id: 'faults', about: 'Wrong', heading: 'What is wrong', parts: [listHtml(faults)] },
      {
        id: 'numbers',
        about: 'As made',
        heading: 'As made',
        parts: [gridHtml(coreNumbersGrid(answer, units))],
      },
      { id: 'known', about: 'Known', heading: 'Known', parts: [listHtml(sayAll(answer.known, units))] },
    ],
    compared: [],
    foot: `flarewise ${answer.version}: the same core file gives the same page. It is one file that fetches nothing.`,
  });
}
