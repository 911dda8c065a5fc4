import { describe, expect, test } from 'vitest';
import { coreAnswer } from '../../../src/answer/core/core-answer.js';
import type { Core } from '../../../src/records/schemas/core.js';
import { corePicture } from '../../../src/report/picture/core-picture.js';
import { PAPER } from '../../../src/report/scene/scene.js';
import { toSvg } from '../../../src/report/scene/to-svg.js';
import { coreReport } from '../../../src/report/screens/core-report.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { coreHtml } from '../../../src/report/web/core-html.js';
import { asymmetricCore, BAR, BODY, ballAround, core } from '../../support/core-files.js';
import { pageOf } from '../../support/page.js';

const { answer } = coreAnswer(ballAround(asymmetricCore), null, null);
const { answer: outside } = coreAnswer(
  ballAround(core({ parts: [{ ...BODY, centre: [0, 0, 1.5] }, BAR] as unknown as Core['parts'] })),
  null,
  null,
);
const svgOf = (given: typeof answer): string =>
  toSvg(corePicture(given, UNITS.trade), { palette: PAPER, fontFamily: 'x' });

describe('coreReport', () => {
  test.each([40, 60, 80, 120])(
    'keeps within %i columns, and the verdict and both drawings within a screen of 24 lines',
    (width) => {
      const lines = coreReport(answer, pageOf(width)).split('\n');
      for (const line of lines) expect(columnsOf(line), line).toBeLessThanOrEqual(width);
      if (width === 80)
        expect(lines.findIndex((line) => line.includes('pin up, marker right'))).toBeLessThan(24);
    },
  );

  test('with ASCII alone nothing else is shown', () => {
    const text = coreReport(answer, pageOf(80, { ascii: true }));
    expect([...text].filter((sign) => sign.charCodeAt(0) > 126)).toEqual([]);
  });

  test('the drawing shares out the ball’s disc as the areas of its parts do', () => {
    const text = coreReport(answer, pageOf(120)).split('\n');
    const upright = text.filter((line) => /^ {2,}[▒·ABC+* ]+/.test(line)).map((line) => line.slice(0, 47));
    const count = (sign: string): number => upright.join('').split(sign).length - 1;
    const disc = ['A', 'B', '▒', '·'].reduce((sum, sign) => sum + count(sign), 0);
    const coverShare = 1 - ((answer.radiusIn - 0.8) / answer.radiusIn) ** 2;
    expect(count('▒') / disc).toBeCloseTo(coverShare, 1);
  });

  test('a high-RG axis square to the marker is drawn at the edge of the ball (an ellipsoid turned from its marker)', () => {
    const parts = [{ ...BODY, centre: [0, 0, 0] }] as unknown as Core['parts'];
    const { answer: turned } = coreAnswer(ballAround(core({ marker: [0, 1, 0], parts })), null, null);
    for (const width of [80, 120]) {
      const drawn = coreReport(turned, pageOf(width))
        .split('\n')
        .filter((line) => line.includes('▒') && !line.includes('filler'));
      // in the middle of the section that it is square to, at the edge of the other
      expect(drawn.filter((line) => line.includes('*'))).toHaveLength(2);
      expect([drawn.at(0), drawn.at(-1)].join('')).toContain('*');
    }
  });

  test('a core at the ball’s centre is said to have no top weight, and no warning rests on where rounding puts its CG', () => {
    const bars = [
      [4.4, 1.2, 3],
      [1.2, 4.4, 3],
    ].map((sides) => ({ shape: 'box', sides, densityGcc: 2.6 }));
    const pole = { shape: 'ellipsoid', radii: [1.2, 1.2, 2.9], densityGcc: 2.6 };
    const parts = [...bars, pole] as unknown as Core['parts'];
    const { answer: centred } = coreAnswer(ballAround(core({ parts })), null, null);
    expect(centred.doubts).toEqual([]);
    expect(centred.numbers).toMatchObject({ topWeightOz: 0, pinToCgIn: 0 });
    const text = coreReport(centred, pageOf(120)).replace(/\s+/g, ' ');
    expect(text).toContain('and no top weight: its CG is at its centre.');
    expect(text).toContain('its CG is at its centre; the marker lies a quarter of the ball from the pin.');
  });

  test('parts outside the cover are drawn outside it, and said to be', () => {
    const text = coreReport(outside, pageOf(80));
    expect(text).toContain('No ball can be made with this core.');
    expect(text).toContain('letters in or outside the cover: matter where none can be');
    expect(text.split('\n').findIndex((line) => line.includes('AAA'))).toBeLessThan(8);
  });
});

describe('corePicture', () => {
  test('to scale: the ball’s circle and a part’s outline stand to one another as their sizes do', () => {
    const svg = svgOf(answer);
    const [, from, to] = /<path d="M([\d.]+),[\d.]+A[\d.]+,[\d.]+,0,1,1,([\d.]+)/.exec(svg) ?? [];
    const ptPerInch = (Number(to) - Number(from)) / (2 * answer.radiusIn);
    const [, outline = ''] = /data-part="part A">\s*<path d="([^"]+)"/.exec(svg) ?? [];
    const ys = [...outline.matchAll(/[ML][\d.]+,([\d.]+)/g)].map(([, y]) => Number(y));
    expect((Math.max(...ys) - Math.min(...ys)) / ptPerInch).toBeCloseTo(5.8, 2);
  });

  test('every part has its letter, its hatch and its density in the key, so that nothing rests on tone', () => {
    const svg = svgOf(answer);
    for (const { sign, name, densityGcc } of answer.parts)
      expect(svg).toContain(`${sign}  ${name}, ${densityGcc.toFixed(2)} g/cc`);
    expect(svg.match(/>A<\/text>/g)?.length).toBe(2);
  });

  test('a core that reaches outside the ball is drawn whole', () => {
    const scene = corePicture(outside, UNITS.trade);
    const svg = svgOf(outside);
    const xs = [...svg.matchAll(/[ML](-?[\d.]+),(-?[\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)]);
    for (const [x, y] of xs) {
      expect(x).toBeGreaterThanOrEqual(-60); // hatch of the key stands in groups of its own
      expect(x).toBeLessThanOrEqual(scene.width);
      expect(y).toBeLessThanOrEqual(scene.height);
    }
  });

  test('where a core reaches outside the ball, the ball’s edge is drawn over it', () => {
    const [, edge = ''] = /<path d="(M[\d.]+,[\d.]+A[^"]+)"/.exec(svgOf(outside)) ?? [];
    const parted = svgOf(outside).split('data-part=');
    expect(parted[2]).toContain(`d="${edge}"`); // behind the last part of the first section
    expect(svgOf(answer).split('data-part=')[2]).not.toContain(`d="${edge}"`);
  });
});

test('coreHtml: one page with the picture, its caption and its tables', () => {
  const html = coreHtml(answer, ['a fault'], UNITS.trade);
  expect(html).toContain('<figcaption>');
  expect(html).toContain('The same in numbers');
  expect(html).toContain('<li>a fault</li>');
  expect(html).not.toContain('<script');
});
