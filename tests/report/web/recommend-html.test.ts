import { scaleLinear } from 'd3-scale';
import { describe, expect, test } from 'vitest';
import type { SimulatedLayout } from '../../../src/records/answers/answer.js';
import { boardAt } from '../../../src/report/lane/board-at.js';
import { ballLines } from '../../../src/report/picture/ball-lines.js';
import type { Point } from '../../../src/report/scene/shapes.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { alsoTexts, sizeTexts, sureText } from '../../../src/report/wording/answer-facts.js';
import { sayAll } from '../../../src/report/wording/say.js';
import { facts, pageOfAnswer } from '../../support/pages/page-fixture.js';
import { type ReadFigure, readFigures, readTables } from '../../support/pages/read-page.js';
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

/** Coordinates are written to 1/1000 pt; a board is 7 pt wide and a foot 7 pt high. */
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
    expect(across / along).toBeCloseTo(12, 1);
    expect(html.replaceAll('\u00a0', ' ')).toContain('stretched across twelve times');
  });

  test('oil is hatched where the lane has film, and nowhere else', () => {
    const at = drawn.filter(({ parts }) => parts.includes('oil')).flatMap(({ points }) => points.map(place));
    const feet = at.map(({ ft }) => ft);
    expect(Math.max(...feet)).toBeLessThan(40.001); // the pattern's length
    expect(Math.max(...feet)).toBeGreaterThan(38.2); // the thinnest film's lines stand 12 pt apart
    expect(Math.min(...feet)).toBeGreaterThan(-0.001);
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

/** Values of twenty dots of a layout, in order. */
function dotsOf(drawn: readonly Drawn[], sign: string): number[] {
  const circles = pointsOf(drawn, `worlds ${sign}`);
  expect(circles).toHaveLength(60); // a circle is a start and two arcs
  return Array.from({ length: 20 }, (_, i) => middleOf(circles.slice(3 * i, 3 * i + 3))[0]);
}

describe('differences from the usual layout, world by world', () => {
  test.each([
    ['Hook starts, ft', 'hookStartFt', 2],
    ['Sharpness, deg/ft', 'sharpnessDegPerFt', 3],
  ] as const)(
    '%s: twenty dots a layout, each at its value, and the same in the table',
    (title, key, digits) => {
      const drawn = picture('paired', title);
      const ticks = Math.max(
        ...drawn.filter(({ text }) => /^[+-]/.test(text ?? '')).map(({ points }) => points[0]![1]),
      );
      const readOff = scaleFrom(drawn, 0, ({ points }) => points[0]![1] === ticks);
      const { rows } = tableOf('paired', title);
      answer.layouts.forEach(({ rank, confidence: { paired } }, k) => {
        dotsOf(drawn, `${rank}`).forEach((x, i) => {
          // ticks are written to a tenth of a foot or a thousandth of a degree a foot
          expect(Math.abs(readOff(x) - paired![key][i]!), `${rank}, dot ${i}`).toBeLessThan(10 ** -digits);
        });
        const told = rows[k]![1]!.split(', ').map(Number);
        told.forEach((value, i) => {
          expect(Math.abs(value - paired![key][i]!)).toBeLessThan(
            0.501 * 10 ** -(key === 'hookStartFt' ? 1 : 3),
          );
        });
      });
      const [from, to] = pointsOf(drawn, 'not noticeable').map(([x]) => readOff(x)) as [number, number];
      expect(from).toBeCloseTo(-answer.scatter[key] / 2, digits - 1);
      expect(to).toBeCloseTo(answer.scatter[key] / 2, digits - 1);
    },
  );

  test('dots at one height never cover one another', () => {
    const drawn = picture('paired', 'Hook starts, ft');
    for (const { rank } of answer.layouts) {
      const circles = pointsOf(drawn, `worlds ${rank}`);
      const diameter = Math.abs(circles[1]![0] - circles[0]![0]);
      const middles = Array.from({ length: 20 }, (_, i) => middleOf(circles.slice(3 * i, 3 * i + 3)));
      middles.forEach(([x, y], i) => {
        for (const [u, v] of middles.slice(0, i))
          if (Math.abs(y - v) < 1e-3) expect(Math.abs(x - u)).toBeGreaterThan(0.999 * diameter);
      });
    }
  });
});

describe('what was asked for, and what layouts reach', () => {
  test('wish, range and layouts stand on one scale, where the answer has them', () => {
    const { attainable, value } = answer.targets[0]!;
    const drawn = figure('reach').pictures.values().next().value as readonly Drawn[];
    const [from, to] = [...new Set(pointsOf(drawn, 'reach').map(([x]) => x))].sort((a, b) => a - b);
    const readOff = scaleLinear([from!, to!], [attainable.low, attainable.high]);
    expect(readOff(pointsOf(drawn, 'wish')[0]![0])).toBeCloseTo(value, NEAR);
    for (const [sign, { reaction }] of compared) {
      const [stalk] = pointsOf(drawn, `layout ${sign}`);
      expect(readOff(stalk![0]), sign).toBeCloseTo(reaction.hookStartFt, NEAR - 1);
    }
  });
});

describe('what moves the reaction', () => {
  const drawn = picture('movers', 'What moves hook start, ft');
  const lengthOf = (i: number): number => {
    const xs = pointsOf(drawn, `mover ${i}`).map(([x]) => x);
    return Math.max(...xs.slice(0, 4)) - Math.min(...xs.slice(0, 4));
  };

  test('the scatter of shots stands first, all else from much to little, bars as long as they say', () => {
    const { rows } = tableOf('movers', 'What moves hook start, ft');
    expect(rows[0]![0]).toBe('shot to shot, 9 of 10 shots');
    const sizes = rows.map(([, size]) => Number.parseFloat(size!));
    expect(sizes[0]).toBeCloseTo(2 * 1.645 * answer.scatter.hookStartFt, 1);
    expect(sizes.slice(1)).toEqual([...sizes.slice(1)].sort((a, b) => b - a));
    for (const [i, size] of sizes.entries())
      expect(lengthOf(i) / lengthOf(0), rows[i]![0]).toBeCloseTo(size / sizes[0]!, 1);
  });

  test('the best layout is among them, and what all layouts reach', () => {
    const names = tableOf('movers', 'What moves hook start, ft').rows.map(([name]) => name);
    const { rank, text } = answer.layouts[0]!;
    expect(names).toContain(`${rank} ${text}`);
    expect(names).toContain('all layouts, least to most');
  });
});

describe('shares of the change from the usual layout', () => {
  const drawn = [...figure('shares').pictures.values()][0] as readonly Drawn[];
  test.each(['hookStartFt', 'sharpnessDegPerFt'] as const)(
    '%s: each step is as long as its share, on the one scale of the scatter, and begins where the last one ended',
    (key) => {
      const { drillingAngle, pinToPap, valAngle, total } = first.shares[key];
      const endsOf = (name: string): [number, number] => {
        const xs = pointsOf(drawn, `share ${key} ${name}`).map(([x]) => x);
        return [Math.min(...xs), Math.max(...xs)];
      };
      const [low, high] = pointsOf(drawn, 'not noticeable').map(([x]) => x) as [number, number];
      const readOff = scaleLinear([low, high], [-0.5, 0.5]); // in standard deviations
      let at = 0;
      for (const [name, share] of [
        ['drilling angle', drillingAngle],
        ['pin-to-PAP', pinToPap],
        ['VAL angle', valAngle],
        ['in all', total],
      ] as const) {
        const from = name === 'in all' ? 0 : at;
        at = from + share;
        const want = [from, at].map((value) => value / answer.scatter[key]).sort((a, b) => a - b);
        endsOf(name).forEach((x, i) => {
          expect(readOff(x), `${name}, end ${i}`).toBeCloseTo(want[i]!, NEAR - 1);
        });
      }
    },
  );

  test('a step that would be shown as 0 is left out', () => {
    const small = {
      ...first,
      shares: {
        ...first.shares,
        hookStartFt: { total: 2, drillingAngle: 2, pinToPap: 0.01, valAngle: -0.01 },
      },
    };
    const page = readFigures(pageOfAnswer({ ...answer, layouts: [small, ...answer.layouts.slice(1)] }));
    const parts = [...page.get('shares-figure')!.pictures.values()].flat().flatMap((each) => each.parts);
    expect(parts).toContain('share hookStartFt drilling angle');
    expect(parts).not.toContain('share hookStartFt pin-to-PAP');
  });
});

describe('the map of drilled numbers', () => {
  const titles = [['Intermediate differential, in', 'intermediateDifferentialIn']] as const;
  test.each(titles)(
    '%s: layouts stand where their numbers put them, cells hold the table’s numbers',
    (title, key) => {
      const drawn = picture('map', title);
      const angleOf = scaleFrom(drawn, 0, ({ text }) => /^\d+°$/.test(text!));
      const arcOf = scaleFrom(drawn, 1, ({ text, points }) => /^\d$/.test(text!) && points[0]![0] < 42);
      for (const [sign, layout] of compared) {
        const points = pointsOf(drawn, `layout ${sign}`);
        if (Math.abs(layout.valAngleDeg - facts.map!.valAngleDeg) >= 3) {
          expect(points, sign).toEqual([]); // another VAL angle, another map
          continue;
        }
        const [x, y] = middleOf(points);
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
    const drawn = picture('grip', 'From the grip side, fingers up');
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
    const { rows } = readTables(/<figure id="ball-figure">[\s\S]*?<\/figure>/.exec(html)![0])[0]!;
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
      .get('grip-figure')!
      .pictures.get('From the grip side, fingers up')!
      .filter(({ text }) => /^\d+°$/.test(text ?? ''));
    expect(texts.map(({ text }) => text).sort()).toEqual(['30°', '70°']);
    const [[x0, y0], [x1, y1]] = texts.map(({ points }) => points[0]!) as [Point, Point];
    expect(Math.abs(x0 - x1) > 20 || Math.abs(y0 - y1) > 12, `${[x0, y0, x1, y1]}`).toBe(true);
  });
});

describe('the page as a text', () => {
  test('every figure has pictures, and behind it a table with rows', () => {
    expect([...figures.keys()]).toEqual(
      ['movers', 'grip', 'movers-more', 'reach', 'paired', 'lane', 'ball', 'shares', 'map'].map(
        (name) => `${name}-figure`,
      ),
    );
    for (const [name, { pictures, tables }] of figures) {
      expect(pictures.size).toBeGreaterThan(0);
      if (!/^(grip|ball)/.test(name)) expect(tables.length, name).toBeGreaterThan(0); // the marks' table stands open

      for (const { rows } of tables) expect(rows.length).toBeGreaterThan(0);
    }
  });

  test('the first layout, why, how sure, how much it matters and the cautions stand before everything else', () => {
    const top = html.slice(0, html.indexOf('<nav')).replaceAll('\u00a0', ' ');
    for (const words of [
      `<h1>Drill ${first.text}</h1>`,
      'Drilling angle 70°',
      '<dt>Why</dt>',
      `<dd>${sureText(answer, first, UNITS.trade)}`,
      ...sizeTexts(answer, first, UNITS.trade),
      ...alsoTexts(answer),
      ...sayAll(answer.cautions, UNITS.trade),
    ])
      expect(top).toContain(words);
  });

  test('invented records are said to be, real ones not', () => {
    expect(html).not.toContain('A demonstration');
    expect(pageOfAnswer(answer, { invented: ['ball'] })).toContain('A demonstration: the ball is invented');
    expect(pageOfAnswer(answer, { invented: ['bowler', 'lane'] })).toContain(
      'the bowler and lane are invented',
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

  test('the same answer gives the same bytes', () => {
    expect(pageOfAnswer(structuredClone(answer))).toBe(html);
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
    const said = metric.replace(/<[^>]*>/g, ' ').replaceAll(/\b[02]\.\d{2,3} in\b/g, ''); // RG and differentials, as published
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
