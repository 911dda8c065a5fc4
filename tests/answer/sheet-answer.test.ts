import { beforeAll, describe, expect, test } from 'vitest';
import { type SheetAnswer, sheetAnswerSchema } from '../../src/records/answers/sheet-answer.js';
import { loadRuleSets } from '../../src/records/shared/rules.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { d3Arc } from '../oracles/great-circle.js';
import { expectNear } from '../support/expect-near.js';
import { realSheet } from '../support/pages/real-sheets.js';
import { houseLane } from '../support/problems.js';
import { said } from '../support/said.js';

describe('sheetAnswer', () => {
  let answer: SheetAnswer;
  beforeAll(async () => {
    answer = await realSheet({ lane: houseLane });
  });

  test('has the shape of the published schema, and survives JSON', () => {
    const printed = withSentences(answer);
    expect(sheetAnswerSchema.parse(JSON.parse(JSON.stringify(printed)))).toEqual(printed);
  });

  test('marks lie on the ball as the layout says (arcs by d3-geo 3.1.2)', () => {
    const { face, layout } = answer;
    const inches = (arc: number): number => arc * face.radiusIn;
    expectNear(inches(d3Arc(face.pin, face.pap)), layout.pinToPapIn, 1e-9);
    expectNear(inches(d3Arc(face.marker, face.pap)), layout.markerToPapIn!, 1e-9);
    for (const at of [face.pap, face.pin, face.marker, ...face.holes.map((hole) => hole.at)])
      expectNear(Math.hypot(...at), 1, 1e-12);
  });

  test('says what every known rule set finds, the usual one first', () => {
    expect(answer.legality.map(({ ruleSet }) => ruleSet).sort()).toEqual(
      loadRuleSets()
        .map(({ title }) => title)
        .sort(),
    );
    expect(answer.legality[0]?.ruleSet).not.toContain('8 lb');
  });

  test('rings in oil are among all rings, and the nearest one is as near as the nearest hole says', () => {
    const rings = answer.rings!;
    expect(rings.ringsInOil).toBeGreaterThan(3);
    expect(rings.ringsInOil).toBeLessThanOrEqual(rings.rings.length);
    const nearest = Math.min(...rings.clearances.map(({ clearanceIn }) => clearanceIn));
    const { low, high } = rings.bands.ringClearanceIn;
    expect(low).toBeLessThan(high);
    // the nominal world is the middle of all, so its clearance lies in or near their band
    expect(nearest).toBeGreaterThan(low - 0.5);
    expect(nearest).toBeLessThan(high + 0.5);
  });

  test('a hole’s clearance is no more than the least way from any drawn ring to its edge (arcs by d3-geo)', () => {
    const { face, rings } = answer;
    for (const { hole, clearanceIn } of rings!.clearances) {
      const { at, openIn } = face.holes.find(({ name }) => name === hole)!;
      const ways = rings!.rings.flatMap(({ points }) =>
        points.map(({ overIn, upIn }) => {
          const [o, u] = [overIn / face.radiusIn, upIn / face.radiusIn];
          return d3Arc(at, [Math.cos(u) * Math.sin(o), Math.sin(u), Math.cos(u) * Math.cos(o)]);
        }),
      );
      const edge = Math.asin(openIn / 2 / face.radiusIn);
      const least = face.radiusIn * (Math.min(...ways) - edge);
      expect(clearanceIn).toBeLessThanOrEqual(least + 1e-6);
      expect(clearanceIn).toBeGreaterThan(least - 0.1); // drawn points lie 0.37 in apart; rings bend slowly
    }
  });

  test('without a lane there are no rings, and no assumption about one', async () => {
    const bare = await realSheet();
    expect(bare.rings).toBeNull();
    expect(said(bare.assumptions)).not.toMatch(/film|Friction/);
  });

  test('the same inputs give the same answer', async () => {
    expect(JSON.stringify(await realSheet())).toBe(JSON.stringify(await realSheet()));
  });
});
