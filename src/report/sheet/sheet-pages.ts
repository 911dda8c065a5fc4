import { PAPERS, type Paper } from '../../base/paper.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import type { Typeface } from '../font/typeface.js';
import { gripView, papView, type View } from '../picture/view.js';
import type { Scene, SceneNode } from '../scene/scene.js';
import { UNITS, type Units } from '../text/display-units.js';
import { withPlainText } from '../text/plain-text.js';
import { flowPages, type Rows } from './flow-pages.js';
import { type SheetText, sheetText } from './sheet-blocks.js';
import { sheetHead } from './sheet-head.js';
import { besideEachOther, COLUMN_GAP, columnWidth, inTwoColumns } from './two-columns.js';
import { type TextStyle, type Typeset, typesetRows, typesetText } from './typeset-block.js';
import { workPicture } from './work-picture.js';

/** Unprinted edge, pt: what office printers need. */
const EDGE = 28;
const GAP = 6;

/** Text of the work, of what heads further pages, and of the foot, pt: what is worked from is read at arm's length. */
const WORK = 10;
const ONWARD = 9;
const FOOT = 6.5;

/** Text of what explains the work, and the largest radius of a ball, pt: from roomy to tight. */
const SETTINGS = [
  { notes: 8.5, ball: 108 },
  { notes: 8, ball: 108 },
  { notes: 7.5, ball: 108 },
  { notes: 7.5, ball: 100 },
  { notes: 7, ball: 100 },
] as const;

/** Least room between a ball and its column's edge, for names beside it, pt. */
const BESIDE_BALL = 24;

export const PICTURE_NAMES: Readonly<Record<View['name'], string>> = {
  grip: 'from the grip side, fingers up',
  pap: 'from the PAP, VAL upright',
};

/** The work sheet as pages, black and white: the work first, in the order in which it is done; what explains it at the end. */
export function sheetPages(
  given: SheetAnswer,
  paper: Paper,
  typeface: Typeface,
  units = UNITS.trade,
): readonly Scene[] {
  const answer = withPlainText(given, false);
  const words = sheetText(answer, units);
  const { width, height } = PAPERS[paper];
  const inner = width - 2 * EDGE;
  const style = (size: number): TextStyle => ({ size, typeface });
  const setWork = (item: SheetText['work'][number]): Rows =>
    'heading' in item ? typesetRows(item, inner, style(WORK)) : [besideEachOther(item, inner, style(WORK))];
  const above = [[sheetHead(words, inner, style(WORK))], setWork(words.check)] as const;
  const work = words.work.map(setWork);
  const onward = typesetText(`${words.layout}, ${words.bowler}`, inner, style(ONWARD), { weight: 'bold' });
  const room = height - 2 * EDGE - 2 * FOOT;
  const after = [...words.facts, ...words.notes];
  // what explains the work is set a little smaller, or on two pages, where that saves one
  const pages = fewestPages(
    SETTINGS.flatMap(({ notes, ball }) => {
      const drawn: Rows = [pictures(answer, inner, ball, typeface, units)];
      const explained = after.map((block) => typesetRows(block, columnWidth(inner), style(notes)));
      return after.map(
        (_, i) => () =>
          flowPages(
            [
              ...above,
              drawn,
              ...work,
              ...parted(explained, after.length - i).map(
                (blocks): Rows => [inTwoColumns(blocks, inner, GAP)],
              ),
            ],
            onward,
            room,
            GAP,
          ),
      );
    }),
  );
  return pages.map((body, i): Scene => {
    const foot = typesetText(
      `Page ${i + 1} of ${pages.length}. ${words.foot} ${typeface.credit}.`,
      inner,
      style(FOOT),
    );
    return {
      width,
      height,
      title: `${words.title}: ${words.layout}`,
      description: `${words.bowler}; ${words.ball}. ${words.notations.join('. ')}.`,
      nodes: [
        { kind: 'group', dx: EDGE, dy: EDGE, nodes: body.nodes },
        { kind: 'group', dx: EDGE, dy: height - EDGE - foot.height + FOOT, nodes: foot.nodes },
      ],
    };
  });
}

/** Front and back of one sheet: fewer pages than these are not looked for. */
const ENOUGH = 2;

/** The first way to set a sheet that takes the fewest pages. */
function fewestPages(ways: readonly (() => readonly Typeset[])[]): readonly Typeset[] {
  let fewest: readonly Typeset[] | null = null;
  for (const set of ways) {
    const pages = set();
    if (fewest === null || pages.length < fewest.length) fewest = pages;
    if (fewest.length <= ENOUGH) break;
  }
  return fewest ?? [];
}

/** Pages one below the other, for files that have no pages. */
export const asOnePicture = (pages: readonly Scene[]): Scene => ({
  ...pages[0],
  height: pages.reduce((sum, { height }) => sum + height, 0),
  nodes: pages.map(({ height, nodes }, i) => ({ kind: 'group', dy: i * height, nodes })),
});

/** The first blocks, and the rest if there are any. */
const parted = (blocks: readonly Rows[], count: number): readonly (readonly Rows[])[] =>
  [blocks.slice(0, count), blocks.slice(count)].filter(({ length }) => length > 0);

/** The ball from both sides, each with a line below that says which. */
function pictures(
  answer: SheetAnswer,
  width: number,
  largest: number,
  typeface: Typeface,
  units: Units,
): Typeset {
  const column = (width - COLUMN_GAP) / 2;
  const textSize = 9;
  const radius = Math.min(largest, column / 2 - BESIDE_BALL);
  const frame = {
    width: column,
    height: 2 * radius + 6,
    radius,
    textSize,
    widthOf: (text: string, at: number, weight?: 'regular' | 'bold') => typeface.width(text, at, weight),
  };
  const one = (view: View, i: number): SceneNode => ({
    kind: 'group',
    dx: i * (column + COLUMN_GAP),
    nodes: [
      workPicture(answer, view, frame, units),
      {
        kind: 'text',
        x: column / 2,
        y: frame.height + 1.1 * textSize,
        text: PICTURE_NAMES[view.name],
        size: textSize,
        anchor: 'middle',
      },
    ],
  });
  return {
    nodes: [gripView(answer.face), papView(answer.face)].map(one),
    height: frame.height + 1.4 * textSize,
  };
}
