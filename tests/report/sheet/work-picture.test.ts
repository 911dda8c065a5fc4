import { describe, expect, test } from 'vitest';
import { DEGREE } from '../../../src/base/units.js';
import { unit, type Vec3 } from '../../../src/math/vec3.js';
import { formatSixteenths } from '../../../src/records/text/layout-text.js';
import { loadTypeface } from '../../../src/report/font/typeface.js';
import { svgFile } from '../../../src/report/scene/svg-file.js';
import { sheetPages } from '../../../src/report/sheet/sheet-pages.js';
import { expectNear } from '../../support/expect-near.js';
import { measuredBall, READING } from '../../support/pages/measured-ball.js';
import { type Drawn, readSvg } from '../../support/pages/read-svg.js';
import { realSheets } from '../../support/pages/real-sheets.js';

const typeface = loadTypeface();
const drawnSheets = await Promise.all(
  Object.entries(await realSheets()).map(async ([name, answer]) => {
    const [first] = sheetPages(answer, 'a4', typeface);
    return [name, answer, readSvg(await svgFile(first!, typeface))] as const;
  }),
);

const textsOn = (drawn: readonly Drawn[], side: string): string[] =>
  drawn.flatMap(({ parts, text }) => (text && parts.includes(`ball, ${side} side`) ? [text] : []));

describe.each(drawnSheets)('work drawings of %s, measured off the SVG', (_name, answer, drawn) => {
  const { face, layout, bowler, grip } = answer;
  const gripSide = measuredBall(drawn, 'grip');
  const papSide = measuredBall(drawn, 'pap');
  const hand = bowler.hand === 'right' ? 1 : -1;

  test('PAP and pin lie where the layout puts them', () => {
    const [, y] = gripSide.mark('PAP')!;
    expectNear(Math.asin(y), bowler.pap.upIn / face.radiusIn, READING);
    const pin = papSide.mark('pin')!;
    expectNear(Math.hypot(pin[0], pin[1]), Math.sin(layout.pinToPapIn / face.radiusIn), READING);
    if (layout.pinToPapIn > 0)
      expectNear(Math.atan2(-hand * pin[0], pin[1]) / DEGREE, layout.valAngleDeg, 0.02);
  });

  test('holes are drawn where they lie when the fit was given, and none when it was not', () => {
    for (const { name, at } of face.holes) {
      const outline = gripSide.outlineOf(`${name} hole`);
      if (!grip) {
        expect(outline).toEqual([]);
        continue;
      }
      const sum = outline
        .slice(1)
        .reduce((total, u): Vec3 => [total[0] + u[0], total[1] + u[1], total[2] + u[2]], [0, 0, 0] as Vec3);
      expectNear(unit(sum), [hand * at[0], at[1], at[2]], 10 * READING);
    }
  });

  test('marks carry the numbers of their steps, lines their inches', () => {
    const texts = [...textsOn(drawn, 'grip'), ...textsOn(drawn, 'pap')];
    answer.marking.steps.forEach(({ mark }, i) => {
      if (mark !== 'VAL')
        expect(texts).toContain(mark === 'VAL on the midline' ? `${i + 1}` : `${i + 1} ${mark}`);
    });
    if (layout.pinToPapIn > 1) expect(texts).toContain(`${formatSixteenths(layout.pinToPapIn)} in`);
    if (layout.pinBufferIn > 1) expect(texts).toContain(`${formatSixteenths(layout.pinBufferIn)} in`);
    expect(texts).not.toContain('PSA');
  });
});
