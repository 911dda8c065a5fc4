import { PAPERS, type Paper } from '../../base/paper.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import type { Typeface } from '../font/typeface.js';
import { ballPicture } from '../picture/ball-picture.js';
import { gripView, papView, type View } from '../picture/view.js';
import { PAPER, type Scene } from '../scene/scene.js';
import { SCREEN } from '../scene/screen-inks.js';
import { embeddedFont } from '../scene/svg-file.js';
import { toSvg } from '../scene/to-svg.js';
import { UNITS } from '../text/display-units.js';
import { withPlainText } from '../text/plain-text.js';
import { htmlText } from '../web/table-html.js';
import { blockHtml } from './block-html.js';
import { drawnBall, PICTURE_NAMES } from './drawn-ball.js';
import { screenStyle } from './screen-style.js';
import { sheetText } from './sheet-blocks.js';
import { sheetScene } from './sheet-scene.js';

/** What the letters of the pictures go by on the page. */
const FAMILY = 'flarewise text';

/**
 * The marking sheet as one web page that fetches nothing: set anew for a screen of any width, light or dark; printed, it is
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
  const sheet = sheetScene(answer, paper, typeface, units);
  const fontFamily = `'${FAMILY}', sans-serif`;
  const figure = (view: View): string => {
    const scene = pictureScene(answer, view, typeface);
    return `<figure>\n${toSvg(scene, { palette: SCREEN, fontFamily })}<figcaption>${htmlText(PICTURE_NAMES[view.name])}</figcaption>\n</figure>`;
  };
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${htmlText(sheet.title)}</title>
<link rel="icon" href="data:,">
<style>${await embeddedFont(sheet, typeface, FAMILY)}${screenStyle(PAPERS[paper].css)}</style>
</head>
<body>
<main>
<header>
<p class="over">${htmlText(`${words.title}, ${words.date}`)}</p>
<h1>${htmlText(words.layout)}</h1>
<p><strong>${htmlText(words.bowler)}</strong>, ${htmlText(words.ball)}</p>
${words.first.map((text) => `<p><strong>${htmlText(text)}</strong></p>`).join('\n')}
${words.notations.map((text) => `<p>${htmlText(text)}</p>`).join('\n')}
</header>
<div class="pictures">
${[gripView(answer.face), papView(answer.face)].map(figure).join('\n')}
</div>
${blockHtml(words.tape)}
<div class="facts">
${words.facts.map(blockHtml).join('\n')}
</div>
${words.notes.map(blockHtml).join('\n')}
<footer><p>${htmlText(`${words.foot} ${typeface.credit}.`)}</p></footer>
</main>
<div class="sheet" aria-hidden="true">
${toSvg(sheet, { palette: PAPER, fontFamily })}</div>
</body>
</html>
`;
}

/** One ball on its own, its names large enough for a telephone. */
function pictureScene(answer: SheetAnswer, view: View, typeface: Typeface): Scene {
  const frame = {
    width: 320,
    height: 210,
    textSize: 11,
    widthOf: (text: string, size: number) => typeface.width(text, size),
  };
  return {
    width: frame.width,
    height: frame.height,
    title: `The ball ${PICTURE_NAMES[view.name]}`,
    description:
      'Grip, holes, pin, marker, PAP, lines and oil rings on the near side; their places by tape stand below.',
    nodes: [ballPicture(drawnBall(answer), view, frame)],
  };
}
