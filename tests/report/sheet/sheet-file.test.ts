import { describe, expect, test } from 'vitest';
import { PAPERS, type Paper } from '../../../src/base/paper.js';
import { loadTypeface } from '../../../src/report/font/typeface.js';
import { type GroupNode, type SceneNode, textsOf } from '../../../src/report/scene/scene.js';
import { isFilled, stepRows } from '../../../src/report/sheet/blocks.js';
import { sheetText } from '../../../src/report/sheet/sheet-blocks.js';
import { SHEET_KINDS, sheetFile } from '../../../src/report/sheet/sheet-file.js';
import { sheetPages } from '../../../src/report/sheet/sheet-pages.js';
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
  const pages = sheetPages(answer, paper, typeface);
  const texts = pages.flatMap(({ nodes }) => textsOf(nodes));

  test('all of its words are on the page, names in full', () => {
    const said = sheetText(answer);
    const wanted = [
      ...[said.title, said.layout, said.bowler, said.ball, said.date, said.foot],
      ...said.notations,
      ...said.stop,
      ...said.first,
      ...[...said.check, ...said.work.flat(), ...said.facts, ...said.notes].flatMap(({ heading, parts }) => [
        heading,
        ...parts
          .filter(isFilled)
          .flatMap((part) =>
            part.kind === 'text'
              ? [part.text]
              : part.kind === 'bullets'
                ? part.texts
                : part.kind === 'steps'
                  ? stepRows(part.steps).flat(2)
                  : [...part.heads, ...part.rows.flat()],
          ),
      ]),
    ];
    const printed = words(texts.map(({ text }) => text))
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
    for (const { nodes, width, height } of pages) {
      const all = boxes(nodes);
      for (const box of all) {
        expect(box.left, box.text).toBeGreaterThanOrEqual(26);
        expect(box.right, box.text).toBeLessThanOrEqual(width - 26);
        expect(box.bottom, box.text).toBeLessThanOrEqual(height - 18);
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
    }
  });

  test('the PDF has pages of that paper, and its text is that of the pages, selectable in reading order', async () => {
    const pdf = await sheetFile(answer, 'pdf', paper);
    const { count, size } = pdfPages(pdf);
    expect(count).toBe(pages.length);
    expect(size).toEqual([PAPERS[paper].width, PAPERS[paper].height].map((side) => expect.closeTo(side, 2)));
    expect(pdfText(pdf)).toEqual(texts.map(({ text }) => text));
  });

  test('the SVG says the same, and holds nothing to fetch or run', async () => {
    const svg = (await sheetFile(answer, 'svg', paper)).toString();
    expect(readSvg(svg).flatMap(({ text }) => text ?? [])).toEqual(texts.map(({ text }) => text));
    const drawn = svg.replace(/base64,[^)]*/g, ''); // letters of a font may spell anything
    expect(/<script|<image|<use|<a |href|url\((?!data:)|NaN|undefined/.exec(drawn)).toBeNull();
  });
});

describe.each(cases)('what is worked from, $name on $paper', ({ answer, paper }) => {
  const [first, ...more] = sheetPages(answer, paper, typeface);
  const work = sheetText(answer).work.flat();

  test('is set in 10 pt or more, heads of tables in 8.8, what explains it in 7, heads there in 6.1', () => {
    const texts = [first!, ...more].flatMap(({ nodes }) => textsOf(nodes));
    const explained = texts.findIndex(({ text, size }) => size < 8.8 && !/^(Page|Text:)/.test(text));
    const worked = texts.slice(0, explained < 0 ? texts.length : explained);
    for (const { heading } of work) expect(worked.map(({ text }) => text)).toContain(heading);
    const sizes = texts.filter(({ text }) => !/^Page \d|licence/.test(text)).map(({ size }) => size);
    expect(Math.min(...sizes)).toBeGreaterThanOrEqual(6.1);
  });

  test('has its drawings on the first page, each ball 2 3/4 in or more across, every line full black', () => {
    const balls = partsOf(first!.nodes, /^ball, /);
    expect(balls.length).toBe(2);
    for (const ball of balls) {
      const [outline] = ball.nodes as [{ kind: 'path'; d: string }];
      const [, left, right] = /^M([\d.]+),[\s\S]*?,1,1,([\d.]+),/.exec(outline.d)!;
      expect(Number(right) - Number(left)).toBeGreaterThanOrEqual(2.75 * 72);
      for (const node of leavesOf(ball.nodes))
        if (node.kind === 'path' && node.stroke) expect(['ink', 'pap']).toContain(node.stroke.ink);
    }
  });

  test('takes two pages, where a box stops it and on a ball that was drilled before too', () => {
    expect(more.length).toBe(1);
  });
});

/** Groups of a scene by name. */
const partsOf = (nodes: readonly SceneNode[], name: RegExp): GroupNode[] =>
  nodes.flatMap((node) =>
    node.kind !== 'group' ? [] : node.name && name.test(node.name) ? [node] : partsOf(node.nodes, name),
  );

const leavesOf = (nodes: readonly SceneNode[]): Exclude<SceneNode, GroupNode>[] =>
  nodes.flatMap((node) => (node.kind === 'group' ? leavesOf(node.nodes) : [node]));

describe('the sheet of a layout that is forbidden', () => {
  const stopped = sheets['the pin below the PAP, in the thumb']!;

  test('says so in a box on top, in every kind of file', async () => {
    expect(stopped.stop.map(({ code }) => code)).toEqual(['pin-near-hole']);
    for (const kind of ['svg', 'html'] as const) {
      const text = (await sheetFile(stopped, kind, 'letter')).toString();
      expect(text.indexOf('DO NOT DRILL AS IT STANDS')).toBeGreaterThan(0);
      expect(text.indexOf('DO NOT DRILL AS IT STANDS')).toBeLessThan(text.indexOf('Check the ball'));
    }
    expect(pdfText(await sheetFile(stopped, 'pdf', 'letter')).join(' ')).toContain(
      'DO NOT DRILL AS IT STANDS',
    );
  });

  test('and no other says it', () => {
    expect(sheets['a right-hander']!.stop).toEqual([]);
    expect(sheetText(sheets['a right-hander']!).stop).toEqual([]);
  });
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
