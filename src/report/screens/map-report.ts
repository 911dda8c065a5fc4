import type { MapAnswer } from '../../records/answers/answer.js';
import { glanceDrawing, glanceSigns } from '../drawings/glance-drawing.js';
import { mapCharts } from '../drawings/map-charts.js';
import { learnedLines } from '../tables/learned-lines.js';
import { flareStartGrid, psaGrid } from '../tables/map-tables.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { wrap } from '../text/wrap.js';
import {
  mapDoubts,
  mapFixed,
  mapOnLane,
  mapScaleNote,
  mapVerdict,
  OVER_WORDS,
} from '../wording/map-words.js';
import { sayAll } from '../wording/say.js';
import { partedCautions } from '../wording/statements/parted-cautions.js';
import { axisSections } from './axis-sections.js';
import { cautionSection } from './caution-section.js';

/**
 * Drilled numbers over one number of the layout at one glance, as a screen of text.
 *
 * @param full  with each row's numbers, what is assumed, and cautions
 */
export function mapReport(given: MapAnswer, page: Page, full = false): string {
  const answer = withPlainText(given, page.ascii);
  // with feet and boards to read, the other balls stand among the details, so that all fits one screen
  const { own, usual } = partedCautions(answer.cautions);
  const isShort = answer.onLane !== null && !full;
  return joinSections([
    [
      ...wrap(`What the ${OVER_WORDS[answer.over].name} does to this core`, page.width).map(
        page.paint.heading,
      ),
      ...paragraph(`${answer.ball}, drilled for ${answer.bowler}; ${mapFixed(answer, page)}.`, page),
      ...paragraph(mapVerdict(answer, page), page),
      ...paragraph(mapOnLane(answer, page), page),
      ...learnedLines({ learned: answer.onLane?.learned }, page),
      ...[...mapDoubts(answer, page.units), ...sayAll(own, page.units)].flatMap((text) =>
        paragraph(text, page, page.paint.caution),
      ),
    ],
    [
      ...glanceDrawing(answer, page, isShort),
      ...paragraph(glanceSigns(isShort ? { ...answer, beside: [] } : answer, page), page, page.paint.quiet),
    ],
    ...(full ? details({ ...answer, cautions: usual }, page) : [paragraph(MORE, page, page.paint.quiet)]),
  ]);
}

const MORE = 'More, with --full: row by row, the PSA, how flare starts, what is assumed, cautions.';

const details = (answer: MapAnswer, page: Page): string[][] => [
  ...mapCharts(answer, page),
  ...axisSections(psaGrid(answer, page), flareStartGrid(answer, page), page),
  section('Scales', paragraph(mapScaleNote(answer, page.units), page), page),
  section('Assumed', bullets(sayAll(answer.assumptions, page.units), page), page),
  cautionSection(answer.cautions, page),
];
