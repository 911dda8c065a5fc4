import { PAPERS, type Paper } from '../../base/paper.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import type { Typeface } from '../font/typeface.js';
import { gripView, papView, type View } from '../picture/view.js';
import { PAPER, type Scene } from '../scene/scene.js';
import { SCREEN } from '../scene/screen-inks.js';
import { embeddedFont } from '../scene/svg-file.js';
import { toSvg } from '../scene/to-svg.js';
import { UNITS, type Units } from '../text/display-units.js';
import { withPlainText } from '../text/plain-text.js';
import { documentHtml } from '../web/parts/document-html.js';
import { htmlText } from '../web/parts/table-html.js';
import { blockHtml } from './block-html.js';
import { screenStyle } from './screen-style.js';
import { type SheetText, STOP, sheetText } from './sheet-blocks.js';
import { asOnePicture, PICTURE_NAMES, sheetPages } from './sheet-pages.js';
import { workPicture } from './work-picture.js';

/** What the letters of the pictures go by on the page. */
const FAMILY = 'flarewise text';

/**
 * The work sheet as one web page that fetches nothing: set anew for a screen of any width, light or dark; printed, it is
 * the sheet of paper.
 */
export async function sheetHtml(
  given: SheetAnswer,
  paper: Paper,
  typeface: Typeface,
  units = UNITS.trade,
): Promise<string> {
  const answer = withPlainText(given, false);
  const words = sheetText(answer, units);
  const pages = sheetPages(answer, paper, typeface, units);
  const all = asOnePicture(pages);
  const fontFamily = `'${FAMILY}', sans-serif`;
  const figure = (view: View): string => {
    const scene = pictureScene(answer, view, typeface, units);
    return `<figure>\n${toSvg(scene, { palette: SCREEN, fontFamily })}<figcaption>${htmlText(PICTURE_NAMES[view.name])}</figcaption>\n</figure>`;
  };
  return documentHtml(
    all.title,
    `${await embeddedFont(all, typeface, FAMILY)}${screenStyle(PAPERS[paper].css)}`,
    `<header>
<p class="over">${htmlText(`${words.title}, ${words.date}`)}</p>
<h1>${htmlText(words.layout)}</h1>
<p><strong>${htmlText(words.bowler)}</strong>, ${htmlText(words.ball)}</p>
${stopHtml(words.stop)}${words.notations.map((text) => `<p>${htmlText(text)}</p>`).join('\n')}
${words.first.map((text) => `<p><strong>${htmlText(text)}</strong></p>`).join('\n')}
</header>
${itemHtml(words.check)}
<div class="pictures">
${[gripView(answer.face), papView(answer.face)].map(figure).join('\n')}
</div>
${words.work.map(itemHtml).join('\n')}
<div class="facts">
${words.facts.map(blockHtml).join('\n')}
</div>
${words.notes.map(blockHtml).join('\n')}
<footer><p>${htmlText(`${words.foot} ${typeface.credit}.`)}</p></footer>`,
    `${pages.map((page) => `<div class="sheet" aria-hidden="true">\n${toSvg(page, { palette: PAPER, fontFamily })}</div>`).join('\n')}
`,
  );
}

/** A block, or two side by side where there is room. */
const itemHtml = (item: SheetText['work'][number]): string =>
  'heading' in item ? blockHtml(item) : `<div class="pair">\n${item.map(blockHtml).join('\n')}\n</div>`;

/** Why the ball must not be drilled, in a box that stands out. */
const stopHtml = (stop: readonly string[]): string =>
  stop.length === 0
    ? ''
    : `<div class="stop" role="alert"><p><strong>${STOP}:</strong></p>\n${stop.map((text) => `<p><strong>${htmlText(text)}</strong></p>`).join('\n')}</div>\n`;

/** One ball on its own, its names large enough for a telephone. */
function pictureScene(answer: SheetAnswer, view: View, typeface: Typeface, units: Units): Scene {
  const frame = {
    width: 320,
    height: 270,
    radius: 132,
    textSize: 11,
    widthOf: (text: string, size: number, weight?: 'regular' | 'bold') => typeface.width(text, size, weight),
  };
  return {
    width: frame.width,
    height: frame.height,
    title: `The ball ${PICTURE_NAMES[view.name]}`,
    description:
      'Marks with the numbers of their steps, holes, and lines with their inches on the near side; how each is marked stands below.',
    nodes: [workPicture(answer, view, frame, units)],
  };
}
