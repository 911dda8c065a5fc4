import { describe, expect, test } from 'vitest';
import { coreAnswer } from '../../../src/answer/core/core-answer.js';
import { from, GRAM_PER_CC, POUND, to } from '../../../src/base/units.js';
import { ballProblem } from '../../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import { examineCore } from '../../../src/prepare/own-core.js';
import { coreAnswerSchema } from '../../../src/records/answers/core-answer.js';
import { Refusal } from '../../../src/records/refusals/refusal.js';
import type { Core } from '../../../src/records/schemas/core.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { coreVerdict } from '../../../src/report/wording/core-verdict.js';
import { withSentences } from '../../../src/report/wording/with-sentences.js';
import { areaOf } from '../../oracles/loop-moments.js';
import { asymmetricCore, BAR, BODY, ballAround, core } from '../../support/core-files.js';
import { binaryStl, box } from '../../support/meshes/make-stl.js';
import { averageBowler } from '../../support/problems.js';

type Parts = Core['parts'];

const check = (given: Core, meshes: Readonly<Record<string, Uint8Array>> = {}) =>
  coreAnswer(ballAround(given, meshes), null, null);
const codesOf = (given: Core) => check(given).answer.doubts.map(({ code }) => code);

describe('coreAnswer', () => {
  test('keeps its schema, and has the numbers with which the ball is drilled', () => {
    const ball = ballAround(asymmetricCore);
    const { answer, refusal } = coreAnswer(ball, ball, null);
    expect(refusal).toBeNull();
    expect(coreAnswerSchema.parse(withSentences(answer))).toEqual(withSentences(answer));
    const { published } = ballProblem(ball, averageBowler, 'moment');
    expect(answer.numbers?.rgIn).toBeCloseTo(published.lowRg / 0.0254, 12);
    expect(answer.numbers?.pinToCgIn).toBeCloseTo((published.pinToCg * published.radius) / 0.0254, 12);
  });

  test('of a ball that was drilled before, it says that the numbers are those of the new ball, without old holes', () => {
    const drilledBefore = [
      { layout: '50 x 4 1/2 x 30', hand: 'right' as const, pap: { overIn: 5, upIn: 0.5 } },
    ];
    const used = ballAround(asymmetricCore, {}, { drilledBefore });
    const { answer } = coreAnswer(used, used, { bowler: averageBowler, layout: MIDDLE_LAYOUT });
    const asNew = check(asymmetricCore).answer;
    expect(answer.numbers).toEqual(asNew.numbers);
    expect(answer.known.map(({ code }) => code)).toContain('old-holes-left-out');
    expect(asNew.known.map(({ code }) => code)).not.toContain('old-holes-left-out');
    expect(coreVerdict(answer, UNITS.trade)).toContain('As a new 15 lb ball');
    expect(coreVerdict(asNew, UNITS.trade)).toContain('As a 15 lb ball');
  });

  test('a part’s weight is its volume, less what later parts cover, times its density (an ellipsoid and a ball in it)', () => {
    const inner = {
      shape: 'ellipsoid',
      radii: [0.5, 0.5, 0.5],
      centre: [0, 0, 0.4],
      densityGcc: 3.4,
    } as const;
    const parts = [
      { shape: 'ellipsoid', radii: [1.5, 1.5, 2.5], centre: [0, 0, 0.2], densityGcc: 2.5 },
      inner,
    ];
    const { answer } = check(core({ parts: parts as unknown as Parts }));
    const [outerIn3, innerIn3] = [1.5 * 1.5 * 2.5, 0.125].map((abc) => (4 / 3) * Math.PI * abc);
    const pounds = (in3: number, gcc: number): number =>
      to(in3 * 0.0254 ** 3 * from(gcc, GRAM_PER_CC), POUND);
    // what two parts share is found by lines, to some ten millionths of a pound
    expect(answer.parts[0].weightLb).toBeCloseTo(pounds(outerIn3 - innerIn3, 2.5), 5);
    expect(answer.parts[1].weightLb).toBeCloseTo(pounds(innerIn3, 3.4), 9);
    expect(answer.parts[0].share).toBeCloseTo(1 - innerIn3 / outerIn3, 5);
  });

  test('sections in inches from the centre: areas of an ellipsoid by its closed form, pin up and marker to the right', () => {
    const parts = [{ shape: 'ellipsoid', radii: [1.2, 1.6, 2.4], centre: [0.3, 0, 0.2], densityGcc: 2.9 }];
    const { answer } = check(core({ parts: parts as unknown as Parts }));
    const [upright, equator] = answer.sections;
    const share = 1 - (0.2 / 2.4) ** 2; // of the middle section, at 0.2 in from the ellipsoid's own middle
    for (const [section, area] of [
      [upright, Math.PI * 1.2 * 2.4],
      [equator, Math.PI * 1.2 * 1.6 * share],
    ] as const) {
      const got = areaOf(section.parts[0].loops);
      expect(Math.abs(got - area) / area).toBeLessThan(2e-4);
    }
    const places = upright.parts[0].loops[0];
    expect(Math.max(...places.map(([x]) => x))).toBeCloseTo(1.5, 3);
    expect(Math.max(...places.map(([, y]) => y))).toBeCloseTo(2.6, 3);
    const radius = 27 / (2 * Math.PI);
    expect(upright.marks).toContainEqual({ mark: 'pin', at: [0, expect.closeTo(radius, 3)] });
    expect(upright.marks).toContainEqual({ mark: 'marker', at: [expect.closeTo(radius, 3), 0] });
  });

  test('pin and marker of the file turn the sections', () => {
    const given = { parts: [BODY] as unknown as Parts };
    const [asFiled] = check(core(given)).answer.sections;
    const [turned] = check(core({ ...given, pin: [1, 0, 0], marker: [0, 0, 1] })).answer.sections;
    const heights = (section: typeof asFiled, axis: 0 | 1): number =>
      Math.max(...section.parts[0].loops[0].map((place) => place[axis]));
    expect(heights(turned, 1)).toBeCloseTo(heights(asFiled, 0), 3);
    expect(heights(turned, 0)).toBeCloseTo(heights(asFiled, 1), 3);
  });

  test('what looks wrong is named: upside down, marker turned, hidden, apart; a good file has none of it', () => {
    expect(codesOf(core({ parts: [BODY] as unknown as Parts }))).toEqual([]);
    expect(codesOf(core({ pin: [0, 0, -1], parts: [BODY] as unknown as Parts }))).toEqual([
      'core-upside-down',
    ]);
    const round = { shape: 'ellipsoid', radii: [1.8, 1.8, 2.8], centre: [0.13, 0, 0.15], densityGcc: 2.85 };
    expect(codesOf(core({ parts: [round] as unknown as Parts }))).toEqual([]);
    expect(codesOf(core({ marker: [-1, 0, 0], parts: [round] as unknown as Parts }))).toEqual([
      'marker-turned',
    ]);
    const block = { shape: 'capsule', radius: 0.4, height: 1.5, name: 'block', densityGcc: 3.2 };
    expect(check(core({ parts: [block, BODY] as unknown as Parts })).answer.doubts).toContainEqual({
      code: 'part-hidden',
      params: { part: 'parts[0] (block)', by: 'parts[1] (body)' },
    });
    const far = { ...block, height: 0.9, centre: [0, 0, -3] };
    expect(
      check(core({ parts: [BODY, { ...far, centre: [2.8, 0, 0] }] as unknown as Parts })).answer.doubts,
    ).toContainEqual({
      code: 'part-apart',
      params: { part: 'parts[1] (block)' },
    });
  });

  test.each([false, true])(
    'axes off their marks are named with the directions to give in the file, from 40° to 50° between y and z (mirrored: %s)',
    (mirrored) => {
      // a body whose long axis leans by 50° from the file's z toward y, and whose short one is x
      const parts = [{ ...BODY, centre: [0, 0, 0], tiltDeg: 50, towardDeg: 90 }] as unknown as Parts;
      const { made } = examineCore(
        ballAround(core({ parts, marker: [0, 1, 0] })),
        mirrored ? 'left' : 'right',
      );
      if (made instanceof Refusal) throw made;
      const [sin, cos] = [0.77, 0.64];
      expect(made.warnings).toEqual([
        expect.objectContaining({
          params: expect.objectContaining({ axis: 'low-rg', along: [0, sin, cos], marked: [0, 0, 1] }),
        }),
        expect.objectContaining({
          params: expect.objectContaining({ axis: 'high-rg', along: [1, 0, 0], marked: [0, 1, 0] }),
        }),
      ]);
    },
  );

  test('a core that makes no ball is cut all the same, with why', () => {
    const outside = core({ parts: [{ ...BODY, centre: [0, 0, 1.5] }, BAR] as unknown as Parts });
    const { answer, refusal } = check(outside);
    expect(answer.refused).toEqual(['part-outside']);
    expect(refusal?.statements.map(({ code }) => code)).toEqual(['part-outside']);
    expect(answer.numbers).toBeNull();
    expect(answer.cautions).toEqual([]); // nothing to drill
    expect(answer.sections[0].parts).toHaveLength(2);
    expect(answer.reachIn).toBeCloseTo(4.4, 1);
    expect(check(core({ unit: 'mm', parts: [BODY] as unknown as Parts })).answer.refused).toEqual([
      'core-unit',
    ]);
  });

  test('a mesh is cut too', () => {
    const parts = [{ shape: 'mesh', file: 'a.stl', unit: 'in', densityGcc: 2.9 }] as unknown as Parts;
    const { answer } = check(core({ parts }), { 'a.stl': binaryStl(box([1, 1.5, 2.2])) });
    expect(areaOf(answer.sections[0].parts[0].loops)).toBeCloseTo(8.8, 3);
    expect(areaOf(answer.sections[1].parts[0].loops)).toBeCloseTo(6, 3);
  });

  test('holes: a left-hander’s are the mirror image of a right-hander’s in the plane of pin and marker', () => {
    const parts = [BODY] as unknown as Parts; // its own mirror image
    const ball = ballAround(core({ parts }));
    const of = (hand: 'right' | 'left') =>
      coreAnswer(ball, ball, { bowler: { ...averageBowler, hand }, layout: MIDDLE_LAYOUT }).answer;
    const [right, left] = [of('right'), of('left')];
    expect(right.layout).toBe('50 x 4 1/2 x 35');
    expect(right.sections[0].holes.length).toBeGreaterThanOrEqual(3);
    right.sections[1].holes.forEach(({ outline }, i) => {
      const middle = (places: readonly (readonly [number, number])[], axis: 0 | 1): number =>
        (Math.max(...places.map((place) => place[axis])) + Math.min(...places.map((place) => place[axis]))) /
        2;
      const mirrored = left.sections[1].holes[i].outline;
      expect(middle(mirrored, 0)).toBeCloseTo(middle(outline, 0), 3);
      expect(middle(mirrored, 1)).toBeCloseTo(-middle(outline, 1), 3);
    });
  });
});
