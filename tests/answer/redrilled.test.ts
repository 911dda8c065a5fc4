import { describe, expect, test } from 'vitest';
import { drilledAnswer } from '../../src/answer/drilled-answer.js';
import { plugFindings } from '../../src/answer/parts/plug-findings.js';
import { from, INCH, to } from '../../src/base/units.js';
import type { Hole } from '../../src/layout/hole.js';
import { QUARTER_ARC, toDistances } from '../../src/layout/layout.js';
import { ballPoint } from '../../src/math/ball-point.js';
import { IDENTITY } from '../../src/math/mat3.js';
import { arcAngle } from '../../src/math/sphere.js';
import type { Vec3 } from '../../src/math/vec3.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { type OldMouth, oldHoles } from '../../src/prepare/old-holes.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { drilledAnswerSchema } from '../../src/records/answers/drilled-answer.js';
import type { Ball } from '../../src/records/schemas/ball.js';
import type { EarlierDrilling } from '../../src/records/schemas/earlier-drilling.js';
import { usualGrip } from '../../src/records/schemas/grip.js';
import { parseLayout } from '../../src/records/text/layout-text.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { expectNear } from '../support/expect-near.js';
import { averageBowler, plainBall } from '../support/problems.js';
import { refusalOf } from '../support/refusal-of.js';
import { said } from '../support/said.js';

const RADIUS = from(27, INCH) / (2 * Math.PI);
const OLD: EarlierDrilling = {
  layout: '50 x 4 x 35',
  hand: 'right',
  pap: averageBowler.pap,
  grip: usualGrip(true),
};
const drilledBefore = (...drillings: EarlierDrilling[]): Ball => ({ ...plainBall, drilledBefore: drillings });
const mouthsOf = (...drillings: EarlierDrilling[]): readonly OldMouth[] =>
  oldHoles({ drilledBefore: drillings }, 'right', RADIUS, QUARTER_ARC).mouths;
const places = (mouths: readonly OldMouth[]): Vec3[] => mouths.map(({ mouth_C }) => mouth_C);

describe('where old holes lie', () => {
  const layout = parseLayout(OLD.layout as string);

  test('as far from the pin as the same layout puts them when it is drilled', () => {
    const { marks } = drilledAnswer({ bowler: averageBowler, ball: plainBall, layout }, { ounce: 'moment' });
    for (const { name, mouth_C } of mouthsOf(OLD)) {
      const mark = marks.find((each) => each.mark === `${name} hole`);
      expectNear(to(RADIUS * arcAngle(mouth_C, [0, 0, 1]), INCH), mark?.fromPinIn ?? Number.NaN, 1e-12);
    }
  });

  test('drilled again with its own layout, each comes to lie where it was', () => {
    const ball = drilledBefore(OLD);
    const { redrilled, marks } = drilledAnswer({ bowler: averageBowler, ball, layout }, { ounce: 'moment' });
    expect(redrilled?.oldMarks).toHaveLength(3);
    for (const old of redrilled?.oldMarks ?? []) {
      const now = marks.find(({ mark }) => `old ${mark}` === old.mark);
      expectNear(
        [old.fromGripCentreIn, old.fromPapIn, old.fromPinIn ?? Number.NaN],
        [now?.fromGripCentreIn, now?.fromPapIn, now?.fromPinIn].map((x) => x ?? Number.NaN),
        1e-7, // arcs from atan2 of nearly equal directions
      );
    }
  });

  test('the distances notation says the same as the angles notation', () => {
    const { pinToPap, markerToPap, pinBuffer } = toDistances(toLayout(layout, RADIUS));
    const inches = [pinToPap, markerToPap, pinBuffer].map((arc) => to(arc * RADIUS, INCH).toFixed(9));
    const { layout: _, ...rest } = OLD;
    const byDistances = mouthsOf({ ...rest, layoutDistances: inches.join(' x ') });
    expectNear(places(byDistances), places(mouthsOf(OLD)), 1e-7);
    const below = mouthsOf({ ...rest, layoutDistances: inches.join(' x '), pinSide: 'below' });
    expect(Math.abs(below[0].mouth_C[2] - byDistances[0].mouth_C[2])).toBeGreaterThan(0.1);
  });

  test('distances that no ball can have are an error that says why', () => {
    const { layout: _, ...rest } = OLD;
    const { codes, worded } = refusalOf(() => mouthsOf(OLD, { ...rest, layoutDistances: '2 x 3 x 4' }));
    const { faults } = worded;
    expect(codes).toEqual(['earlier-arcs-clash']);
    expect(faults[0].field).toBe('ball.drilledBefore[1].layoutDistances');
    expect(faults[0].got).toContain('pin buffer');
  });

  test('a left-hander’s old holes are the mirror image, in the plane of pin and marker, of a right-hander’s', () => {
    const flip = ([x, y, z]: Vec3): Vec3 => [x, -y, z];
    expectNear(places(mouthsOf({ ...OLD, hand: 'left' })), places(mouthsOf(OLD)).map(flip), 1e-16);
  });

  test('a ball drilled left, then right, is the mirror image of one drilled right, then left', () => {
    const numbers = (hand: 'right' | 'left', then: 'right' | 'left') => {
      const { drilled, psa } = drilledAnswer(
        {
          bowler: { ...averageBowler, hand },
          ball: drilledBefore({ ...OLD, hand: then }),
          layout: parseLayout('70 x 4 1/2 x 30'),
        },
        { ounce: 'moment' },
      );
      return [drilled.rgIn, drilled.intermediateDifferentialIn, drilled.staticOz.side, psa.fromPapIn];
    };
    expect(numbers('left', 'right')).toEqual(numbers('right', 'left'));
    expect(numbers('left', 'left')).toEqual(numbers('right', 'right'));
    expect(Math.abs(numbers('left', 'right')[2] - numbers('right', 'right')[2])).toBeGreaterThan(0.01);
  });
});

describe('the answer for a redrilled ball', () => {
  const answer = (plugDensityGcc: number, layout = '70 x 4 1/2 x 30', grip = usualGrip(true)) =>
    drilledAnswer(
      {
        bowler: averageBowler,
        ball: drilledBefore({ ...OLD, grip, plugDensityGcc }),
        layout: parseLayout(layout),
      },
      { ounce: 'moment' },
    );

  test('meets its schema, and says what was assumed', () => {
    const { grip: _, ...bare } = OLD;
    const given = drilledAnswer(
      { bowler: averageBowler, ball: drilledBefore(bare), layout: parseLayout('70 x 4 1/2 x 30') },
      { ounce: 'moment' },
    );
    expect(drilledAnswerSchema.parse(withSentences(given))).toEqual(withSentences(given));
    const assumed = said(given.assumptions);
    for (const words of ['drilled before', 'Plugs of 1.2 g/cc', 'usual fingertip sizes'])
      expect(assumed).toContain(words);
  });

  test('plugs weigh their volume times their density: the slug’s bore and both inserts’, tips included', () => {
    // thumb 1 1/4 in × 2 3/4 in and fingers 31/32 in × 2 1/4 in with 118° tips, less what the ball's curve lacks
    const bore = (diameter: number, depth: number): number => {
      const r = diameter / 2;
      const R = to(RADIUS, INCH);
      const cap = (2 * Math.PI * (R ** 3 - (R * R - r * r) ** 1.5)) / 3;
      const lacking = Math.PI * r * r * R - cap;
      return Math.PI * r * r * depth - lacking + (Math.PI * r ** 3) / (3 * Math.tan((59 * Math.PI) / 180));
    };
    const solid = bore(1.25, 2.75) + 2 * bore(0.969, 2.25);
    const ounces = (cubicInches: number): number => (cubicInches * 2.54 ** 3 * 1.3) / 28.349523125;
    // a bridge of 1 in keeps the fingers apart inside; the thumb's pitch leaves the curve a hair aslant
    const { redrilled } = answer(1.3, '70 x 4 1/2 x 30', { ...usualGrip(true), bridgeIn: 1 });
    expectNear((redrilled?.plugOz ?? 0) / ounces(solid), 1, 1e-3);
  });

  test('its own holes again take its plugs out whole, and no seam is left to warn of', () => {
    const { redrilled, legality } = answer(1.2, OLD.layout);
    expectNear((redrilled?.plugTakenOz ?? 0) / (redrilled?.plugOz ?? 1), 1, 1e-9);
    expect(said(legality.findings)).not.toMatch(/plugs/);
  });

  test('a new ball has none', () =>
    expect(
      drilledAnswer(
        { bowler: averageBowler, ball: plainBall, layout: parseLayout('70 x 4 1/2 x 30') },
        { ounce: 'moment' },
      ).redrilled,
    ).toBeNull());
});

describe('plugFindings (a web of 1/4 in: common practice, no source)', () => {
  const base = ballProblem(plainBall, averageBowler, 'moment');
  const at = (overIn: number): Vec3 => ballPoint(from(overIn, INCH) / RADIUS, 0);
  const hole = (overIn: number, diameterIn: number): Hole => ({
    name: 'thumb',
    mouth_B: at(overIn),
    axis_B: [0, 0, -1],
    open: { radius: from(diameterIn, INCH) / 2, depth: 0.05 },
    sleeve: null,
    tip: 'flat',
  });
  /** A new thumb hole, 1 in wide, `apartIn` from the centre of an old ring hole, 1 in wide. */
  const findings = (
    apartIn: number,
    oldWidthIn = 1,
    pin_B: Vec3 = [0, 1, 0],
    drilling: number | null = null,
    { marker_B = [0, -1, 0] as Vec3, marker = base.marker } = {},
  ): string =>
    said(
      plugFindings(
        { R_BC: IDENTITY, pap_B: at(5), pin_B, marker_B },
        {
          ...base,
          marker,
          holes: [hole(0, 1)],
          oldMouths: [
            {
              name: 'ring',
              drilling,
              mouth_C: at(apartIn),
              radius: from(oldWidthIn, INCH) / 2,
              bores_C: [],
            },
          ],
        },
      ),
    );

  test.each([
    { apartIn: 1.3, oldWidthIn: 1, says: /^$/, name: 'well beside it' },
    {
      apartIn: 1.13,
      oldWidthIn: 1,
      says: /1\/8 in between the thumb hole and the old ring hole/,
      name: 'near it',
    },
    {
      apartIn: 0.5,
      oldWidthIn: 1,
      says: /run across.*thumb hole over the old ring hole/,
      name: 'across its edge',
    },
    { apartIn: 0.1, oldWidthIn: 1.5, says: /^$/, name: 'inside it' },
    { apartIn: 0.1, oldWidthIn: 0.5, says: /^$/, name: 'that takes it whole' },
    { apartIn: 0, oldWidthIn: 1, says: /^$/, name: 'exactly where it was' },
  ])('a new hole $name', ({ apartIn, oldWidthIn, says }) =>
    expect(findings(apartIn, oldWidthIn)).toMatch(says),
  );

  test('of several earlier drillings, each finding says which', () => {
    expect(findings(1.13, 1, undefined, 2)).toMatch(/thumb hole and the old ring hole of drilling 2/);
    expect(findings(0.5, 1, undefined, 2)).toMatch(/thumb hole over the old ring hole of drilling 2/);
  });

  test('a mark under a plug is told by its name; a ball without one has none to lose', () => {
    const under = (marker: string | null): string =>
      findings(3, 1, undefined, null, { marker_B: at(3.3), marker });
    for (const mark of ['mass-bias mark', 'CG mark'])
      expect(under(mark)).toContain(`${mark} lies under an old plug`);
    expect(under(null)).toBe('');
  });

  test('a pin under a plug is told', () => {
    expect(findings(3, 1, at(3.3))).toContain('pin lies under an old plug');
    expect(findings(3, 1, at(3.7))).toBe('');
  });
});
