import { describe, expect, test } from 'vitest';
import { PAPERS, type Paper } from '../../../src/base/paper.js';
import { loadTypeface } from '../../../src/report/font/typeface.js';
import { type SceneNode, textsOf } from '../../../src/report/scene/scene.js';
import { isFilled } from '../../../src/report/sheet/blocks.js';
import { sheetText } from '../../../src/report/sheet/sheet-blocks.js';
import { SHEET_KINDS, sheetFile } from '../../../src/report/sheet/sheet-file.js';
import { sheetScene } from '../../../src/report/sheet/sheet-scene.js';
import { pdfPages, pdfText } from '../../support/pages/pdf-text.js';
import { readSvg } from '../../support/pages/read-svg.js';
import { LONG_NAME, realSheets } from '../../support/pages/real-sheets.js';

const typeface = loadTypeface();
const sheets = await realSheets();
const papers = Object.keys(PAPERS) as Paper[];
const cases = Object.entries(sheets).flatMap(([name, answer]) =>
  papers.map((paper) => ({ name, paper, answer })),
);

const words = (texts: readonly string[]): string[] => texts.join(' ').split(/\s+/).filter(Boolean);

/** Every text of a scene with the box it takes on the page. */
function boxes(nodes: readonly SceneNode[], at: readonly [number, number] = [0, 0]): Box[] {
  return nodes.flatMap((node): Box[] => {
    if (node.kind === 'group') return boxes(node.nodes, [at[0] + (node.dx ?? 0), at[1] + (node.dy ?? 0)]);
    if (node.kind === 'path') return [];
    const width = typeface.width(node.text, node.size, node.weight);
    const left = at[0] + node.x - { start: 0, middle: width / 2, end: width }[node.anchor ?? 'start'];
    const base = at[1] + node.y;
    return [
      {
        text: node.text,
        left,
        right: left + width,
        top: base - 0.72 * node.size,
        bottom: base + 0.05 * node.size,
      },
    ];
  });
}

interface Box {
  readonly text: string;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

describe.each(cases)('sheet of $name on $paper', ({ answer, paper }) => {
  const scene = sheetScene(answer, paper, typeface);

  test('all of its words are on the page, names in full', () => {
    const said = sheetText(answer);
    const wanted = [
      ...[said.title, said.layout, said.bowler, said.ball, said.date, said.foot, ...said.notations],
      ...[said.tape, ...said.facts, ...said.notes].flatMap(({ heading, parts }) => [
        heading,
        ...parts
          .filter(isFilled)
          .flatMap((part) =>
            part.kind === 'text'
              ? [part.text]
              : part.kind === 'bullets'
                ? part.texts
                : [...part.heads, ...part.rows.flat()],
          ),
      ]),
    ];
    const printed = words(textsOf(scene.nodes).map(({ text }) => text))
      .join('')
      .replaceAll('•', '');
    // long words may be cut at a line's end, so letters are compared, in order within each text
    for (const text of wanted) {
      const letters = typeface.printable(text).replace(/\s+/g, '');
      if (letters.length <= 40) expect(printed).toContain(letters);
      else for (const word of words([typeface.printable(text)])) expect(printed).toContain(word);
    }
  });

  test('no text leaves the printable page or runs into another', () => {
    const all = boxes(scene.nodes);
    for (const box of all) {
      expect(box.left, box.text).toBeGreaterThanOrEqual(30);
      expect(box.right, box.text).toBeLessThanOrEqual(scene.width - 30);
      expect(box.bottom, box.text).toBeLessThanOrEqual(scene.height - 18);
    }
    const over = all.flatMap((a, i) =>
      all
        .slice(i + 1)
        .filter(
          (b) => a.left < b.right - 0.1 && b.left < a.right - 0.1 && a.top < b.bottom && b.top < a.bottom,
        )
        .map((b) => `${a.text} / ${b.text}`),
    );
    expect(over).toEqual([]);
  });

  test('the PDF is one page of that paper, and its text is that of the scene, selectable in reading order', async () => {
    const pdf = await sheetFile(answer, 'pdf', paper);
    const { count, size } = pdfPages(pdf);
    expect(count).toBe(1);
    expect(size).toEqual([PAPERS[paper].width, PAPERS[paper].height].map((side) => expect.closeTo(side, 2)));
    expect(pdfText(pdf)).toEqual(textsOf(scene.nodes).map(({ text }) => text));
  });

  test('the SVG says the same, and holds nothing to fetch or run', async () => {
    const svg = (await sheetFile(answer, 'svg', paper)).toString();
    expect(readSvg(svg).flatMap(({ text }) => text ?? [])).toEqual(
      textsOf(scene.nodes).map(({ text }) => text),
    );
    const drawn = svg.replace(/base64,[^)]*/g, ''); // letters of a font may spell anything
    expect(/<script|<image|<use|<a |href|url\((?!data:)|NaN|undefined/.exec(drawn)).toBeNull();
  });
});

test('text is large enough to read at arm’s length: 7 pt and more, small print 6 pt, for ordinary names', () => {
  for (const paper of papers) {
    const sizes = textsOf(sheetScene(sheets['a right-hander']!, paper, typeface).nodes).map(
      ({ size }) => size,
    );
    const sorted = [...sizes].sort((a, b) => a - b);
    expect(sorted[0]).toBeGreaterThanOrEqual(6);
    expect(sorted[Math.floor(sorted.length / 2)]).toBeGreaterThanOrEqual(7);
  }
});

test.each(SHEET_KINDS)('the same answer gives the same %s, byte for byte', async (kind) => {
  const answer = sheets['a right-hander']!;
  const [once, twice] = [await sheetFile(answer, kind, 'a4'), await sheetFile(answer, kind, 'a4')];
  expect(once.equals(twice)).toBe(true);
  expect(once.length).toBeGreaterThan(5000);
});

test('a name that looks like markup is text everywhere', async () => {
  const answer = sheets['two hands and a long name']!;
  expect(LONG_NAME).toContain('& Co <No.');
  expect(LONG_NAME.length).toBeGreaterThan(70);
  for (const kind of ['svg', 'html'] as const) {
    const text = (await sheetFile(answer, kind, 'letter')).toString();
    expect(text).toContain('&amp;');
    expect(text).not.toContain('<No.');
  }
});
