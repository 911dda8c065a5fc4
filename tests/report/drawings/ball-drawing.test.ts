import { describe, expect, test } from 'vitest';
import type { BallFace, RingAnswer } from '../../../src/records/answers/parts/ball-face.js';
import { ballDrawing } from '../../../src/report/drawings/ball-drawing.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { pageOf } from '../../support/page.js';
import { face } from '../../support/recommend-answer.js';

/** Oil rings about the PAP's axis, as a ball without flare would have them: a quarter of the ball away. */
const ringOf = (turn: number, shiftIn: number): RingAnswer => ({
  turn,
  fromFt: 5 * turn,
  points: Array.from({ length: 73 }, (_, i) => {
    const upIn = 6 * Math.sin((2 * Math.PI * i) / 72);
    return { overIn: (i > 18 && i < 54 ? 10 : -2) + shiftIn, upIn };
  }),
});
const rings = [ringOf(1, 0), ringOf(2, -0.3), ringOf(3, -0.6)];
const ROWS = 21;
const rowsOf = (lines: readonly string[]): string[] => lines.slice(0, ROWS);

/** Column and row of a sign in a drawing; the ball's middle is column 22, row 10. */
function find(lines: readonly string[], sign: string): [column: number, row: number] {
  const row = rowsOf(lines).findIndex((line) => line.includes(sign));
  return [[...(lines[row] ?? '')].indexOf(sign), row];
}

describe.each([
  { ascii: false, pin: '●', pap: '⊕', marker: '▲', psa: '□' },
  { ascii: true, pin: 'P', pap: 'X', marker: 'A', psa: 'S' },
])('ballDrawing, ASCII $ascii', ({ ascii, pin, pap, marker, psa }) => {
  const draw = (given: BallFace, width = 80): string[] => ballDrawing(given, rings, pageOf(width, { ascii }));

  test('every mark stands in the cell its place is seen in: 20 columns and 10 rows to the edge', () => {
    const lines = draw(face);
    for (const [sign, [x, y]] of [
      [pin, face.pin],
      [pap, face.pap],
      [marker, face.marker],
      ['+', [0, 0, 1]],
      ['T', face.holes[0]!.at],
      ['R', face.holes[2]!.at],
    ] as const) {
      const [column, row] = find(lines, sign);
      expect(Math.abs(column - (22 + 20 * x!)), sign).toBeLessThanOrEqual(0.51);
      expect(Math.abs(row - (10 - 10 * y!)), sign).toBeLessThanOrEqual(0.51);
    }
  });

  test('angles and lengths of the layout stand on it', () => {
    const drawn = rowsOf(draw(face)).join('\n');
    const arc = (a: readonly number[], b: readonly number[]): number =>
      face.radiusIn * Math.acos(a[0]! * b[0]! + a[1]! * b[1]! + a[2]! * b[2]!);
    const inches = (length: number): string => UNITS.trade.tape.show(length);
    expect(drawn).toContain(inches(arc(face.pin, face.pap)));
    expect(drawn).toContain(inches(arc(face.pin, face.marker)));
    expect(drawn.match(ascii ? /\d+d/g : /\d+°/g)).toHaveLength(2);
  });

  test('a left-hander sees the mirror image', () => {
    const [right, left] = [draw(face), draw({ ...face, hand: 'left' })];
    for (const sign of [pin, pap, marker, 'T', 'M', 'R']) {
      const [[a, rowA], [b, rowB]] = [find(right, sign), find(left, sign)];
      expect(rowA, sign).toBe(rowB);
      expect(a + b, sign).toBe(2 * 22);
    }
  });

  test('no line is wider than the page, and the legend names every sign', () => {
    for (const width of [40, 60, 80, 200])
      for (const line of draw(face, width)) expect(columnsOf(line)).toBeLessThanOrEqual(width);
    const legend = draw(face).slice(ROWS).join(' ');
    for (const name of ['thumb', 'middle', 'ring', 'grip centre', 'CG mark', 'PAP', 'pin', 'VAL'])
      expect(legend).toContain(name);
    expect(legend).toContain('1, 3: first and last oil ring');
  });

  test('a mark on the far side is said, not drawn', () => {
    const lines = draw({ ...face, psa: [0, -0.6, -0.8] });
    expect(rowsOf(lines).join('')).not.toContain(psa);
    expect(lines.join(' ')).toContain('PSA on the far side');
  });

  test('plugged holes of earlier drillings are drawn where they lie, named once, and absent on a new ball', () => {
    const old = [
      { name: 'thumb', at: [-0.48, -0.6, 0.64], boreIn: 1.25 },
      { name: 'middle', at: [-0.6, 0.4, 0.69], boreIn: 1 },
      { name: 'middle', at: [0.3, -0.3, 0.91], boreIn: 1 },
      { name: 'ring', at: [0, 0.6, -0.8], boreIn: 1 },
    ] satisfies BallFace['oldHoles'];
    const lines = draw({ ...face, oldHoles: old });
    for (const [sign, [x, y]] of [
      ['t', old[0]!.at],
      ['m', old[1]!.at],
    ] as const) {
      const [column, row] = find(lines, sign);
      expect(Math.abs(column - (22 + 20 * x!)), sign).toBeLessThanOrEqual(0.51);
      expect(Math.abs(row - (10 - 10 * y!)), sign).toBeLessThanOrEqual(0.51);
    }
    const legend = lines.slice(ROWS).join(' ').replace(/\s+/g, ' ');
    expect(legend).toContain('t old thumb, plugged');
    expect(legend.match(/old middle, plugged/g)).toHaveLength(1);
    expect(legend).toContain('old ring, plugged on the far side');
    expect(draw(face).join(' ')).not.toContain('plugged');
  });

  test('without rings none are named', () => {
    expect(ballDrawing(face, [], pageOf(80, { ascii })).join(' ')).not.toContain('oil ring');
  });
});

test('ballDrawing: colour is never needed: with it the signs are the same', () => {
  const coloured = ballDrawing(face, rings, pageOf(80, { level: 1 })).join('\n');
  // biome-ignore lint/suspicious/noControlCharactersInRegex: colour codes are what is removed
  const plain = coloured.replace(/\u001b\[\d+m/g, '');
  expect(plain.split('\n').map((line) => line.trimEnd())).toEqual(ballDrawing(face, rings, pageOf(80)));
});
