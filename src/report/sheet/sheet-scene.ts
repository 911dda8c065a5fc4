import { PAPERS, type Paper } from '../../base/paper.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import type { Typeface } from '../font/typeface.js';
import { ballPicture, type PictureFrame } from '../picture/ball-picture.js';
import { gripView, papView, type View } from '../picture/view.js';
import type { Scene, SceneNode } from '../scene/scene.js';
import { UNITS } from '../text/display-units.js';
import { withPlainText } from '../text/plain-text.js';
import type { Block } from './blocks.js';
import { drawnBall, PICTURE_NAMES } from './drawn-ball.js';
import { type SheetText, sheetText } from './sheet-blocks.js';
import { stack, type TextStyle, type Typeset, typesetBlock, typesetText } from './typeset-block.js';

/** Unprinted edge, pt: what office printers need. */
const EDGE = 32;
const COLUMN_GAP = 20;

/** Text sizes tried until everything fits on the page, pt; the last one always is taken. */
const SIZES = [8.5, 8.2, 7.9, 7.6, 7.3, 7.1, 6.9, 6.7, 6.4, 6.1, 5.8, 5.5, 5.2, 4.9, 4.6, 4.3, 4];

/** Small print against text. */
const SMALL = 0.86;

/**
 * The marking sheet: one page, black and white, everything the person at the drill needs.
 *
 * The text is set as large as lets all of it stay on the page.
 */
export function sheetScene(given: SheetAnswer, paper: Paper, typeface: Typeface, units = UNITS.trade): Scene {
  const answer = withPlainText(given, false);
  const words = sheetText(answer, units);
  const { width, height } = PAPERS[paper];
  const room = height - 2 * EDGE;
  const pages = SIZES.map((size) => () => sheetBody(answer, words, width - 2 * EDGE, { size, typeface }));
  let body = (pages[0] as () => Typeset)();
  for (const page of pages.slice(1)) {
    if (body.height <= room) break;
    body = page();
  }
  const foot = typesetText(`${words.foot} ${typeface.credit}.`, width - 2 * EDGE, { size: 6.2, typeface });
  return {
    width,
    height,
    title: `${words.title}: ${words.layout}`,
    description: `${words.bowler}; ${words.ball}. ${words.notations.join('. ')}.`,
    nodes: [
      { kind: 'group', dx: EDGE, dy: EDGE, nodes: body.nodes },
      { kind: 'group', dx: EDGE, dy: height - EDGE + 4, nodes: foot.nodes },
    ],
  };
}

function sheetBody(answer: SheetAnswer, words: SheetText, width: number, style: TextStyle): Typeset {
  const { size } = style;
  const small = { ...style, size: SMALL * size };
  const gap = 0.8 * size;
  return stack(
    [
      heading(words, width, style),
      pictures(answer, width, style),
      typesetBlock(words.tape, width, style),
      inTwoColumns(words.facts, width, style, gap),
      inTwoColumns(words.notes, width, small, gap),
    ],
    gap,
  );
}

/** Layout on the left, whose ball on the right, both notations below. */
function heading(words: SheetText, width: number, style: TextStyle): Typeset {
  const { typeface } = style;
  const title: Typeset = {
    nodes: [
      { kind: 'text', x: 0, y: 9, text: words.title, size: 9, ink: 'soft' },
      { kind: 'text', x: width, y: 9, text: words.date, size: 9, ink: 'soft', anchor: 'end' },
    ],
    height: 12,
  };
  const layoutSize = 20;
  const layout = typeface.printable(words.layout);
  const taken = typeface.width(layout, layoutSize, 'bold') + COLUMN_GAP;
  const who = stack(
    [
      typesetText(words.bowler, width - taken, { size: 10, typeface }, { weight: 'bold' }),
      typesetText(words.ball, width - taken, { size: 9, typeface }),
    ],
    0,
  );
  const named: Typeset = {
    nodes: [
      { kind: 'text', x: 0, y: 19, text: layout, size: layoutSize, weight: 'bold' },
      { kind: 'group', dx: taken, nodes: who.nodes },
    ],
    height: Math.max(24, who.height),
  };
  return stack(
    [
      title,
      named,
      ...words.first.map((text) => typesetText(text, width, style, { weight: 'bold' })),
      ...words.notations.map((text) => typesetText(text, width, style)),
    ],
    1,
  );
}

/** The ball from both sides, each with a line below that says which. */
function pictures(answer: SheetAnswer, width: number, { size, typeface }: TextStyle): Typeset {
  const column = (width - COLUMN_GAP) / 2;
  const textSize = Math.min(7, 0.85 * size);
  const frame: PictureFrame = {
    width: column,
    height: 22 * size,
    textSize,
    widthOf: (text, at) => typeface.width(text, at),
  };
  const one = (view: View, i: number): SceneNode => ({
    kind: 'group',
    dx: i * (column + COLUMN_GAP),
    nodes: [
      ballPicture(drawnBall(answer), view, frame),
      {
        kind: 'text',
        x: column / 2,
        y: frame.height + 1.2 * textSize,
        text: PICTURE_NAMES[view.name],
        size: textSize,
        anchor: 'middle',
        ink: 'soft',
      },
    ],
  });
  return {
    nodes: [gripView(answer.face), papView(answer.face)].map(one),
    height: frame.height + 1.6 * textSize,
  };
}

/** Blocks in reading order, parted between two columns where that makes them least high. */
function inTwoColumns(blocks: readonly Block[], width: number, style: TextStyle, gap: number): Typeset {
  const column = (width - COLUMN_GAP) / 2;
  const set = blocks.map((block) => typesetBlock(block, column, style));
  const partings = set.map(
    (_, i) => [stack(set.slice(0, i + 1), gap), stack(set.slice(i + 1), gap)] as const,
  );
  const heightOf = ([left, right]: readonly [Typeset, Typeset]): number =>
    Math.max(left.height, right.height);
  const [left, right] = partings.reduce((best, each) => (heightOf(each) < heightOf(best) ? each : best));
  return {
    nodes: [
      { kind: 'group', nodes: left.nodes },
      { kind: 'group', dx: column + COLUMN_GAP, nodes: right.nodes },
    ],
    height: heightOf([left, right]),
  };
}
