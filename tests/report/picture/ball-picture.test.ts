import { describe, expect, test } from 'vitest';
import { DEGREE } from '../../../src/base/units.js';
import { norm, scale, unit, type Vec3 } from '../../../src/math/vec3.js';
import type { SheetAnswer } from '../../../src/records/answers/sheet-answer.js';
import { loadTypeface } from '../../../src/report/font/typeface.js';
import { ballPicture } from '../../../src/report/picture/ball-picture.js';
import { gripView, papView, type View } from '../../../src/report/picture/view.js';
import type { Scene } from '../../../src/report/scene/scene.js';
import { svgFile } from '../../../src/report/scene/svg-file.js';
import { angleOfArcs, d3Arc } from '../../oracles/great-circle.js';
import { expectNear } from '../../support/expect-near.js';
import { measuredBall, READING } from '../../support/pages/measured-ball.js';
import { type Drawn, readSvg } from '../../support/pages/read-svg.js';
import { realSheets } from '../../support/pages/real-sheets.js';

const typeface = loadTypeface();
const sheets = await realSheets();

const isSeenWell = (u: Vec3 | null): u is Vec3 => u !== null && u[2] > 0.26;

/** Both pictures of a ball beside one another. */
function bothPictures({ face, layout }: SheetAnswer): Scene {
  const frame = {
    width: 270,
    height: 190,
    textSize: 7,
    widthOf: (text: string, size: number) => typeface.width(text, size),
  };
  const ball = { face, layout };
  const one = (view: View, i: number) =>
    ({ kind: 'group', dx: 32 + 290 * i, dy: 32, nodes: [ballPicture(ball, view, frame)] }) as const;
  return {
    width: 640,
    height: 260,
    title: 'ball',
    description: '',
    nodes: [gripView(face), papView(face)].map(one),
  };
}

const drawnSheets = await Promise.all(
  Object.entries(sheets).map(async ([name, answer]) => {
    const drawn = readSvg(await svgFile(bothPictures(answer), typeface));
    return [name, answer, drawn] as const;
  }),
);

describe.each(drawnSheets)('pictures of %s, measured off the SVG', (_name, answer: SheetAnswer, drawn) => {
  const { face, layout, bowler } = answer;
  const grip = measuredBall(drawn, 'grip');
  const pap = measuredBall(drawn, 'pap');
  const hand = bowler.hand === 'right' ? 1 : -1;
  const arcs = (inches: number): number => inches / face.radiusIn;

  test('grip side: the PAP lies as far over and up as the bowler’s', () => {
    expectNear(grip.mark('grip centre')!, [0, 0, 1], READING);
    const [x, y, z] = grip.mark('PAP')!;
    expect(Math.sign(x)).toBe(hand);
    expectNear(Math.asin(y), arcs(bowler.pap.upIn), READING);
    if (z > 0.26) expectNear(Math.atan2(hand * x, z), arcs(bowler.pap.overIn), 4 * READING);
  });

  test('PAP side: pin-to-PAP and VAL angle are those of the layout (the middle keeps angles)', () => {
    expectNear(pap.mark('PAP')!, [0, 0, 1], READING);
    const pin = pap.mark('pin')!;
    expectNear(Math.hypot(pin[0], pin[1]), Math.sin(arcs(layout.pinToPapIn)), READING);
    if (layout.pinToPapIn === 0) return;
    const towardGrip = -hand * pin[0];
    expectNear(Math.atan2(towardGrip, pin[1]) / DEGREE, layout.valAngleDeg, 0.02);
    // the buffer is the way to the upright through the middle: sin(buffer) is what the pin lies aside
    expectNear(Math.asin(towardGrip), arcs(layout.pinBufferIn), READING);
  });

  test('where pin, PAP and marker are seen together, their triangle gives the drilling angle (Todhunter, art. 45)', () => {
    if (layout.pinToPapIn === 0) return;
    let seen = 0;
    for (const view of [grip, pap]) {
      const [pin, papMark, marker] = ['pin', 'PAP', 'marker'].map((name) => view.mark(name));
      if (!isSeenWell(pin!) || !isSeenWell(papMark!) || !isSeenWell(marker!)) continue;
      seen += 1;
      const angle = angleOfArcs(d3Arc(papMark, marker), d3Arc(pin, papMark), d3Arc(pin, marker));
      expectNear(angle / DEGREE, layout.drillingAngleDeg!, 0.1);
    }
    expect(seen).toBeGreaterThan(0);
  });

  test('every hole on the near side is drawn where it lies and as wide as it is', () => {
    for (const { name, at, openIn } of face.holes) {
      const outline = grip.outlineOf(`${name} hole`);
      const sum = outline
        .slice(1)
        .reduce((total, u): Vec3 => [total[0] + u[0], total[1] + u[1], total[2] + u[2]], [0, 0, 0] as Vec3);
      const middle = unit(sum);
      expectNear(middle, [hand * at[0], at[1], at[2]], 10 * READING); // a polygon's points, not quite even
      for (const u of outline)
        expectNear(
          d3Arc(scale(1 / norm(u), u), [hand * at[0], at[1], at[2]]),
          Math.asin(openIn / 2 / face.radiusIn),
          READING,
        );
    }
  });
});

test('names of marks do not cover one another, nor leave the page', async () => {
  for (const answer of Object.values(sheets)) {
    const scene = bothPictures(answer);
    const names = readSvg(await svgFile(scene, typeface)).filter(
      ({ parts, text }) =>
        text !== null && parts.some((part) => part.startsWith('ball')) && !text.endsWith('°'),
    );
    expect(names.length).toBeGreaterThan(10);
    for (const {
      points: [[x, y]],
      text,
    } of names as (Drawn & { points: [[number, number]] })[]) {
      expect(x, text!).toBeGreaterThan(30);
      expect(x, text!).toBeLessThan(scene.width - 30);
      for (const other of names)
        if (other.points[0]![0] === x && other.points[0]![1] !== y)
          expect(Math.abs(other.points[0]![1] - y), `${text} and ${other.text}`).toBeGreaterThan(6);
    }
  }
});
