import { rectangle } from '../scene/shapes.js';
import { type SheetText, STOP } from './sheet-blocks.js';
import { stack, type TextStyle, type Typeset, typesetText } from './typeset-block.js';

/** Between the layout and the names beside it, pt. */
const NAMES_GAP = 20;

/** The layout as typed on the left, whose ball on the right, what stops the work in a box, both notations below. */
export function sheetHead(words: SheetText, width: number, style: TextStyle): Typeset {
  const { typeface } = style;
  const title: Typeset = {
    nodes: [
      { kind: 'text', x: 0, y: 9, text: words.title, size: 9 },
      { kind: 'text', x: width, y: 9, text: words.date, size: 9, anchor: 'end' },
    ],
    height: 12,
  };
  const layout = typesetText(words.layout, width, { size: 20, typeface }, { weight: 'bold' });
  const taken = Math.min(
    0.6 * width,
    typeface.width(typeface.printable(words.layout), 20, 'bold') + NAMES_GAP,
  );
  const isShort = taken < 0.6 * width;
  const who = stack(
    [
      typesetText(words.bowler, width - (isShort ? taken : 0), { size: 10.5, typeface }, { weight: 'bold' }),
      typesetText(words.ball, width - (isShort ? taken : 0), { size: 10, typeface }),
    ],
    0,
  );
  const named: Typeset = isShort
    ? {
        nodes: [...layout.nodes, { kind: 'group', dx: taken, nodes: who.nodes }],
        height: Math.max(layout.height, who.height),
      }
    : stack([layout, who], 0);
  return stack(
    [
      title,
      named,
      ...(words.stop.length > 0 ? [stopBox(words.stop, width, style)] : []),
      ...words.notations.map((text) => typesetText(text, width, style)),
      ...words.first.map((text) => typesetText(text, width, style, { weight: 'bold' })),
    ],
    1,
  );
}

/** What must not be missed. */
function stopBox(reasons: readonly string[], width: number, { size, typeface }: TextStyle): Typeset {
  const inset = 6;
  const text = stack(
    [
      typesetText(`${STOP}:`, width - 2 * inset, { size: 1.3 * size, typeface }, { weight: 'bold' }),
      ...reasons.map((reason) =>
        typesetText(reason, width - 2 * inset, { size: 1.1 * size, typeface }, { weight: 'bold' }),
      ),
    ],
    1,
  );
  const height = text.height + 2 * inset;
  return {
    nodes: [
      { kind: 'path', d: rectangle(1, 1, width - 2, height - 2), stroke: { ink: 'ink', width: 2.2 } },
      { kind: 'group', dx: inset, dy: inset, nodes: text.nodes },
    ],
    height: height + 3,
  };
}
