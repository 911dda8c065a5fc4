import { scaleLinear } from 'd3-scale';
import { describe, expect, test } from 'vitest';
import type { SimulatedLayout } from '../../../src/records/answers/answer.js';
import { boardAt } from '../../../src/report/lane/board-at.js';
import { ballLines } from '../../../src/report/picture/ball-lines.js';
import type { Point } from '../../../src/report/scene/shapes.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { say, sayAll } from '../../../src/report/wording/say.js';
import { facts, pageOfAnswer } from '../../support/pages/page-fixture.js';
import { type ReadFigure, readFigures } from '../../support/pages/read-page.js';
import { type Drawn, middleOf } from '../../support/pages/read-svg.js';
import { recommendAnswer as answer } from '../../support/recommend-answer.js';

const html = pageOfAnswer(answer);
const figures = readFigures(html);
const figure = (name: string): ReadFigure => figures.get(`${name}-figure`) as ReadFigure;
const picture = (name: string, title: string): readonly Drawn[] => {
  const found = figure(name).pictures.get(title);
  if (!found) throw new Error(`no picture "${title}" among ${[...figure(name).pictures.keys()].join('; ')}`);
  return found;
};
const tableOf = (name: string, caption: string) =>
  figure(name).tables.find((each) => each.caption === caption)!;

const [first] = answer.layouts;
const compared: readonly (readonly [sign: string, layout: SimulatedLayout])[] = [
  ...answer.layouts.map((layout) => [`${layout.rank}`, layout] as const),
  ['*', answer.middle],
];

/** Points of a named part. */
const pointsOf = (drawn: readonly Drawn[], ...parts: readonly string[]): Point[] =>
  drawn
    .filter((each) => each.text === null && parts.every((part) => each.parts.includes(part)))
    .flatMap(({ points }) => points);

/** A scale read off a picture's own numbers: the least and the greatest of those that stand in a row or a column. */
function scaleFrom(drawn: readonly Drawn[], axis: 0 | 1, isLabel: (each: Drawn) => boolean) {
  const labels = drawn
    .filter((each) => each.text !== null && isLabel(each))
    .map(({ text, points }) => ({ value: Number.parseFloat(text as string), at: points[0]![axis] }))
    .sort((a, b) => a.value - b.value);
  const [low, high] = [labels[0]!, labels.at(-1)!];
  expect(labels.length).toBeGreaterThan(2);
  return scaleLinear([low.at, high.at], [low.value, high.value]);
}

/** Coordinates are written to 1/1000 pt; a board is 7 pt wide and a foot 9 pt high. */
const NEAR = 3;

describe('the lane', () => {
  const drawn = picture('lane', 'Paths over the lane');
  const boardOf = scaleFrom(drawn, 0, ({ parts, text }) => parts.includes('boards') && /^\d+$/.test(text!));
  const ftOf = scaleFrom(drawn, 1, ({ parts, text }) => parts.includes('distances') && /^\d+$/.test(text!));
  /** Numbers stand 4 pt below what they number, so that they look centred. */
  const place = ([x, y]: Point) => ({ board: boardOf(x), ft: ftOf(y + 4) });

  test.each(compared)(
    'the path of %s lies where the answer says, at every foot, each phase in its part',
    (sign, layout) => {
      const { hookStartFt, rollStartFt } = layout.reaction;
      const spans = {
        skid: [0, hookStartFt],
        hook: [hookStartFt, rollStartFt],
        roll: [rollStartFt, 60],
      } as const;
      for (const [phase, [from, to]] of Object.entries(spans)) {
        const points = pointsOf(drawn, `layout ${sign}`, `${phase} ${sign}`).map(place);
        expect(points[0]!.ft).toBeCloseTo(from, NEAR);
        expect(points.at(-1)!.ft).toBeCloseTo(to, NEAR);
        const inside = layout.path.filter(({ distanceFt }) => distanceFt > from && distanceFt < to);
        expect(points).toHaveLength(inside.length + 2);
        for (const { board, ft } of points) expect(board).toBeCloseTo(boardAt(layout.path, ft)!, NEAR - 1);
      }
    },
  );

  test('the three phases differ in their lines, not in colour alone', () => {
    const strokes = ['skid 1', 'hook 1', 'roll 1'].map((part) => {
      const group = new RegExp(
        `<g data-part="${part}">\\s*<path [^>]*stroke-width="([\\d.]+)"[^>]*?(stroke-dasharray)?[^>]*/>`,
      );
      const [path = '', width] = group.exec(html) ?? [];
      return `${width} ${path.includes('stroke-dasharray')}`;
    });
    expect(new Set(strokes).size).toBe(3);
  });

  test('arrows, pins and pocket stand where a lane has them', () => {
    const arrows = drawn.filter(({ parts, text }) => parts.includes('arrows') && text === null);
    const tips = arrows.map(({ points }) => boardOf(points[0]![0]));
    expect(tips.map((board) => Math.round(board * 100) / 100)).toEqual([5, 10, 15, 20, 25, 30, 35]);
    const pins = drawn
      .filter(({ parts }) => parts.includes('pins'))
      .map(({ points }) => boardOf(middleOf(points)[0]));
    expect(pins).toHaveLength(10);
    expect(pins[0]).toBeCloseTo(20, NEAR - 1); // the head pin stands in the middle of 39 boards
    // the corner pins stand 36 in apart on a lane of 41.5 in and 39 boards
    expect(Math.abs(pins[6]! - pins[9]!)).toBeCloseTo((36 / 41.5) * 39, NEAR - 1);
    const pocket = pointsOf(drawn, 'pocket').map(([x]) => boardOf(x));
    expect(pocket.map((board) => Math.round(board * 100) / 100).sort()).toEqual([16.5, 18.5]);
  });

  test('the lane is stretched as the caption says', () => {
    const across = Math.abs(boardOf.invert(39) - boardOf.invert(0)) / 41.5; // pt an inch
    const along = Math.abs(ftOf.invert(60) - ftOf.invert(0)) / 720;
    expect(across / along).toBeCloseTo(9, 1);
    expect(html.replaceAll('\u00a0', ' ')).toContain('stretched across nine times');
  });

  test('oil is shaded where the lane has film, and nowhere else', () => {
    const at = drawn.filter(({ parts }) => parts.includes('oil')).flatMap(({ points }) => points.map(place));
    expect(Math.max(...at.map(({ ft }) => ft))).toBeCloseTo(40, NEAR); // the pattern's length
    expect(Math.min(...at.map(({ ft }) => ft))).toBeCloseTo(0, NEAR);
  });

  test('the table gives the same boards', () => {
    const { heads, rows } = tableOf('lane', 'Board crossed, counted from the right');
    expect(heads.slice(1)).toEqual(compared.map(([sign]) => `layout ${sign}`));
    compared.forEach(([sign], k) => {
      const points = pointsOf(drawn, `layout ${sign}`).map(place);
      for (const row of rows) {
        const there = points.find(({ ft }) => Math.abs(ft - Number(row[0])) < 1e-3)!;
        expect(Math.abs(Number(row[k + 1]) - there.board), `${sign} at ${row[0]}`).toBeLessThan(0.0501);
      }
    });
  });

  test('a left-hander’s lane is the mirror image, on a lane that is its own mirror image', () => {
    const left = pageOfAnswer({
      ...answer,
      inputs: { ...answer.inputs, bowler: { ...answer.inputs.bowler, hand: 'left' } },
    });
    const mirrored = readFigures(left).get('lane-figure')!.pictures.get('Paths over the lane')!;
    const middle = boardOf.invert(20);
    for (const [sign] of compared) {
      const [here, there] = [drawn, mirrored].map((each) => pointsOf(each, `layout ${sign}`, `hook ${sign}`));
      expect(here).toHaveLength(there!.length);
      here!.forEach(([x, y], i) => {
        expect(there![i]![0] - middle).toBeCloseTo(middle - x, NEAR - 1);
        expect(there![i]![1]).toBeCloseTo(y, NEAR);
      });
    }
  });
});

describe('boards from the usual path', () => {
  const title = 'Boards from the path of layout *';
  const drawn = picture('lane', title);
  const onLeft = ({ text, points }: Drawn) => /^[+-]?[\d.]+$/.test(text!) && points[0]![0] < 36;
  const below = ({ text, points }: Drawn) => /^\d+$/.test(text!) && points[0]![1] > 210 && points[0]![0] > 36;
  const boardsOf = scaleFrom(drawn, 1, onLeft);
  const ftOf = scaleFrom(drawn, 0, below);

  test.each(compared)('%s lies as far off as the answer says, in picture and table', (sign, layout) => {
    const points = pointsOf(drawn, `layout ${sign}`, `skid ${sign}`);
    expect(points.length).toBeGreaterThan(30);
    for (const [x, y] of points) {
      const ft = ftOf(x);
      const want = boardAt(layout.path, ft)! - boardAt(answer.middle.path, ft)!;
      expect(boardsOf(y + 4)).toBeCloseTo(want, NEAR - 1);
    }
    const { heads, rows } = tableOf('lane', title);
    const column = heads.indexOf(`layout ${sign}`);
    for (const row of rows) {
      const ft = Number(row[0]);
      const want = boardAt(layout.path, ft)! - boardAt(answer.middle.path, ft)!;
      expect(Math.abs(Number(row[column]) - want)).toBeLessThan(0.00501);
    }
  });
});

describe('numbers in plausible worlds', () => {
  test.each([
    ['Score, of 100', 'score', (l: SimulatedLayout) => l.nominalScore],
    ['Hook starts, ft', 'hookStartFt', (l: SimulatedLayout) => l.reaction.hookStartFt],
    ['Sharpness, deg/ft', 'sharpnessDegPerFt', (l: SimulatedLayout) => l.reaction.sharpnessDegPerFt],
    ['Total hook, boards', 'totalHookBoards', (l: SimulatedLayout) => l.reaction.totalHookBoards],
    ['Entry angle, deg', 'entryAngleDeg', (l: SimulatedLayout) => l.reaction.entryAngleDeg],
    ['Flare, in', 'flareIn', (l: SimulatedLayout) => l.reaction.flareIn],
  ] as const)(
    '%s: twenty dots a layout, each at its value, and the same numbers in the table',
    (title, key, nominal) => {
      const drawn = picture('worlds', title);
      const bottom = Math.max(
        ...drawn.filter(({ text }) => text !== null).map(({ points }) => points[0]![1]),
      );
      const readOff = scaleFrom(drawn, 0, ({ points }) => points[0]![1] === bottom);
      const [low, high] = readOff.range() as [number, number];
      const near = (high - low) / 1e4; // a thousandth of a point in some three hundred, and both ends of the scale
      const { rows } = tableOf('worlds', title);
      compared.forEach(([sign, layout], k) => {
        const circles = pointsOf(drawn, `worlds ${sign}`);
        expect(circles).toHaveLength(60); // a circle is a start and two arcs
        const values = layout.twentieths[key].map((_, i) =>
          readOff(middleOf(circles.slice(3 * i, 3 * i + 3))[0]),
        );
        values.forEach((value, i) => {
          expect(Math.abs(value - layout.twentieths[key][i]!), `${sign}, dot ${i}`).toBeLessThan(near);
        });
        const [name, undisturbed, band, dots] = rows[k]!;
        expect(name).toBe(`${sign} ${layout.text}`);
        const step = 0.501 * 10 ** -(undisturbed!.split('.')[1]?.length ?? 0);
        expect(Math.abs(Number(undisturbed) - nominal(layout))).toBeLessThan(step);
        const given = key === 'score' ? layout.bands.score : layout.bands.reaction[key];
        band!.split(' – ').forEach((end, i) => {
          expect(Math.abs(Number(end) - [given.low, given.high][i]!)).toBeLessThan(step);
        });
        const told = dots!.split(', ').map(Number);
        expect(told).toHaveLength(20);
        told.forEach((value, i) => {
          expect(Math.abs(value - layout.twentieths[key][i]!)).toBeLessThan(step);
        });
      });
    },
  );

  test('dots at one height never cover one another, and all stay in their row', () => {
    const drawn = picture('worlds', 'Hook starts, ft');
    const rows = compared.map(([sign]) => {
      const circles = pointsOf(drawn, `worlds ${sign}`);
      const diameter = Math.abs(circles[1]![0] - circles[0]![0]);
      const middles = Array.from({ length: 20 }, (_, i) => middleOf(circles.slice(3 * i, 3 * i + 3)));
      middles.forEach(([x, y], i) => {
        for (const [u, v] of middles.slice(0, i))
          if (Math.abs(y - v) < 1e-3) expect(Math.abs(x - u)).toBeGreaterThan(0.999 * diameter);
      });
      const heights = middles.map(([, y]) => y);
      return [Math.min(...heights) - diameter / 2, Math.max(...heights) + diameter / 2] as const;
    });
    rows.slice(1).forEach(([top], i) => {
      expect(top).toBeGreaterThan(rows[i]![1]);
    });
  });

  test('what was asked for is marked, and only there', () => {
    const texts = (title: string) => picture('worlds', title).map(({ text }) => text);
    expect(texts('Hook starts, ft')).toContain('aimed at 38.6');
    expect(texts('Sharpness, deg/ft')).toContain('aimed at 0.44');
    expect(texts('Total hook, boards').join()).not.toContain('aimed');
  });
});

describe('shares of the change from the usual layout', () => {
  const titles = [
    ['Score, points', first.shares.score, answer.middle.nominalScore],
    ['Hook starts, ft', first.shares.hookStartFt, answer.middle.reaction.hookStartFt],
    ['Total hook, boards', first.shares.totalHookBoards, answer.middle.reaction.totalHookBoards],
    ['Total differential, in', first.shares.differentialIn, answer.middle.drilled.differentialIn],
  ] as const;
  test.each(titles)(
    '%s: each arrow is as long as its share, to one scale, and the table says the same',
    (title, shares, start) => {
      const drawn = picture('shares', title);
      const xOf = (name: string): number[] => pointsOf(drawn, `share ${name}`).map(([x]) => x);
      const scale = scaleLinear([xOf('from')[0]!, xOf('to')[0]!], [start, start + shares.total]);
      let at = start;
      for (const [name, share] of [
        ['drilling angle', shares.drillingAngle],
        ['pin-to-PAP', shares.pinToPap],
        ['VAL angle', shares.valAngle],
      ] as const) {
        const xs = xOf(name);
        const ends = [scale(xs[0]!), scale(xs[3]!)]; // its tail, and its tip
        expect(Math.abs(ends[0]! - at)).toBeLessThan(2e-4 * Math.abs(shares.total));
        at += share;
        expect(Math.abs(ends[1]! - at)).toBeLessThan(2e-4 * Math.abs(shares.total));
      }
      const row = figure('shares')
        .tables[0]!.rows.find(([name]) => name === title)!
        .slice(1);
      const written = drawn.flatMap(({ text }) =>
        text !== null && /^[+-]?[\d.]+$/.test(text) ? [text] : [],
      );
      expect([row[0], ...row.slice(1, 4), row[4]].sort()).toEqual([...written].sort());
    },
  );
});

describe('the map of drilled numbers', () => {
  const titles = [
    ['RG, in', 'rgIn'],
    ['Total differential, in', 'differentialIn'],
    ['Intermediate diff., in', 'intermediateDifferentialIn'],
  ] as const;
  test.each(titles)(
    '%s: layouts stand where their numbers put them, cells hold the table’s numbers',
    (title, key) => {
      const drawn = picture('map', title);
      const angleOf = scaleFrom(drawn, 0, ({ text }) => /^\d+°$/.test(text!));
      const arcOf = scaleFrom(drawn, 1, ({ text, points }) => /^\d$/.test(text!) && points[0]![0] < 42);
      for (const [sign, layout] of compared) {
        const [x, y] = middleOf(pointsOf(drawn, `layout ${sign}`));
        expect(angleOf(x)).toBeCloseTo(layout.drillingAngleDeg!, NEAR - 1);
        expect(arcOf(y + 4)).toBeCloseTo(layout.pinToPapIn, NEAR - 1);
      }
      const { rows } = tableOf('map', title);
      expect(rows.map((row) => row.slice(1).map(Number))).toEqual(
        facts.map!.rows.map((row) => row.map((point) => Number(point[key].toFixed(3)))),
      );
      const cells = drawn.filter(({ text, parts }) => parts.length === 0 && /^\d\.\d{3}$/.test(text ?? ''));
      expect(cells.length).toBeGreaterThan(15); // of 25, some below layouts
      for (const { text, points } of cells) {
        const i = Math.round((arcOf(points[0]![1]) - 2) / 1);
        const j = Math.round((angleOf(points[0]![0]) - 10) / 20);
        expect(text).toBe(rows[i]![j + 1]);
      }
    },
  );
});

describe('the ball', () => {
  test('marks stand where the ball’s face has them, and the table gives their tape arcs', () => {
    const drawn = picture('ball', 'From the grip side, fingers up');
    const outline = drawn.find(
      ({ text, parts }) => text === null && parts.includes('ball, grip side'),
    )!.points;
    const [cx, cy] = middleOf(outline);
    const radius = Math.abs(outline[1]![0] - outline[0]![0]) / 2;
    for (const [name, [x, y]] of [
      ['pin', facts.face.pin],
      ['PAP', facts.face.pap],
      ['marker', facts.face.marker],
    ] as const) {
      const sign = drawn.find(({ parts }) => parts.includes(`mark ${name}`))!;
      const [u, v] = middleOf(sign.points);
      // the triangle of the marker has its middle a little below its corners' mean
      expect((u - cx) / radius, name).toBeCloseTo(x, name === 'marker' ? 1 : NEAR);
      expect((cy - v) / radius, name).toBeCloseTo(y, name === 'marker' ? 1 : NEAR);
    }
    const { rows } = figure('ball').tables[0]!;
    expect(rows).toEqual([
      ['PAP', '5 1/8', '', '4 1/2'],
      ['pin', '2 5/16', '4 1/2', ''],
      ['marker', '4 7/8', '4 1/8', '6 3/4'],
    ]);
  });

  test('where both angles would stand in one place, their numbers are moved apart', () => {
    // 10 x 3 x 44: the pin near the PAP, the marker nearly in line with it
    const face = {
      ...facts.face,
      pap: [0.9237, 0.2306, 0.3061] as [number, number, number],
      pin: [0.4659, 0.6266, 0.6248] as [number, number, number],
      marker: [0.8845, 0.2044, 0.4193] as [number, number, number],
    };
    const { drillingAngle, valAngle } = ballLines(face);
    const apart = [0, 1].map((k) => Math.abs(drillingAngle.label[k]! - valAngle.label[k]!));
    expect(Math.max(...apart)).toBeLessThan(0.15); // of the ball's radius: less than a number is wide
    const page = pageOfAnswer(answer, { facts: { ...facts, face } });
    const texts = readFigures(page)
      .get('ball-figure')!
      .pictures.get('From the grip side, fingers up')!
      .filter(({ text }) => /^\d+°$/.test(text ?? ''));
    expect(texts.map(({ text }) => text).sort()).toEqual(['30°', '70°']);
    const [[x0, y0], [x1, y1]] = texts.map(({ points }) => points[0]!) as [Point, Point];
    expect(Math.abs(x0 - x1) > 20 || Math.abs(y0 - y1) > 12, `${[x0, y0, x1, y1]}`).toBe(true);
  });
});

describe('the page as a text', () => {
  test('every figure has pictures and a table with rows', () => {
    expect([...figures.keys()]).toEqual(
      ['lane', 'worlds', 'shares', 'map', 'ball'].map((name) => `${name}-figure`),
    );
    for (const { pictures, tables } of figures.values()) {
      expect(pictures.size).toBeGreaterThan(0);
      expect(tables.length).toBeGreaterThan(0);
      for (const { rows } of tables) expect(rows.length).toBeGreaterThan(0);
    }
  });

  test('the first layout, what it makes of a difference, how sure that is and the cautions stand before everything else', () => {
    const top = html.slice(0, html.indexOf('<nav')).replaceAll('\u00a0', ' ');
    for (const words of [
      first.text,
      'Drilling angle 70°',
      say(answer.headline, UNITS.trade),
      'Against the next, 85 x 3 3/4 x 45: probably better (73 % of worlds).',
      ...sayAll(answer.cautions, UNITS.trade),
    ])
      expect(top).toContain(words);
  });

  test('invented records are said to be, real ones not', () => {
    expect(html).not.toContain('A demonstration');
    expect(pageOfAnswer(answer, { invented: ['ball'] })).toContain('A demonstration: the ball is invented');
    expect(pageOfAnswer(answer, { invented: ['bowler', 'lane'] })).toContain(
      'the bowler and the lane are invented',
    );
  });

  test('version, seed, every assumption and everything that was given are there', () => {
    const text = html.replaceAll('\u00a0', ' ').replaceAll('&quot;', '"').replaceAll('&#39;', "'");
    for (const words of [
      `flarewise ${answer.version}, seed ${answer.seed}`,
      ...sayAll(answer.assumptions, UNITS.trade),
      ...sayAll(answer.limits, UNITS.trade),
    ])
      expect(text).toContain(words);
    const records = /<pre>([\s\S]*?)<\/pre>/.exec(text)![1]!;
    expect(JSON.parse(records)).toEqual(answer.inputs);
  });

  test('the same answer gives the same bytes, with colours in the terminal or without', () => {
    expect(pageOfAnswer(structuredClone(answer))).toBe(html);
    expect(pageOfAnswer(answer, { level: 1 })).toBe(html);
  });

  test('names from a file cannot become markup', () => {
    const name = `<script>alert(1)</script> & "Co's"`;
    const inputs = { ...answer.inputs, bowler: { ...answer.inputs.bowler, name } };
    const page = pageOfAnswer({ ...answer, inputs });
    expect(page).not.toContain('<script');
    expect(page).toContain('&lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;Co&#39;s&quot;');
  });

  test('on a metric page no inch, foot or mile is left but in layouts', () => {
    const metric = pageOfAnswer(answer, { units: 'metric' })
      .replace(/<pre>[\s\S]*?<\/pre>/, '')
      .replaceAll('\u00a0', ' ');
    const said = metric.replace(/<[^>]*>/g, ' ');
    expect(said).toMatch(/Hook starts, m\b/);
    expect(said).not.toMatch(/\d (?:in|ft|mph|lb|oz)(?![a-z])(?! (?:\d|the |which ))/);
  });

  test('a ball that never gets to the pins, and no wishes, still make a page', () => {
    const gutter = {
      ...first,
      path: first.path.slice(0, 81),
      reaction: { ...first.reaction, outcome: 'gutter' as const, rollsBeforePins: false },
    };
    const page = pageOfAnswer({ ...answer, targets: [], layouts: [gutter, ...answer.layouts.slice(1)] });
    expect(page).toContain('none: gutter');
    expect(page).not.toMatch(/NaN|undefined|Infinity/);
    const stuck = { ...answer.middle, path: answer.middle.path.slice(0, 1) };
    expect(pageOfAnswer({ ...answer, middle: stuck })).not.toMatch(/NaN|undefined|Infinity/);
  });
});
