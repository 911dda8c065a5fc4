import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { faceAnswer } from '../../../src/answer/parts/face-answer.js';
import { tapePlan } from '../../../src/answer/parts/tape-plan.js';
import { DEGREE, from, INCH, to } from '../../../src/base/units.js';
import { ballPoint } from '../../../src/math/ball-point.js';
import { cross, dot, type Vec3 } from '../../../src/math/vec3.js';
import { type BallProblem, ballProblem } from '../../../src/prepare/ball-problem.js';
import type { TapeStep } from '../../../src/records/answers/sheet-answer.js';
import type { Bowler } from '../../../src/records/schemas/bowler.js';
import { usualGrip } from '../../../src/records/schemas/grip.js';
import { parseLayout } from '../../../src/records/text/layout-text.js';
import { angleOfArcs, d3Arc } from '../../oracles/great-circle.js';
import { courseTo, markedByHand } from '../../oracles/tape-by-hand.js';
import { within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';
import { averageBowler, plainBall } from '../../support/problems.js';

const noPsa = { overIn: 0, upIn: 0, fromPapIn: 0, fromPinIn: 0, fromGripCentreIn: 0, certain: false };
const asymmetric = { ...plainBall, coreShape: 'asymmetric', intermediateDifferentialIn: 0.015 } as const;
const measured: Bowler = { ...averageBowler, grip: usualGrip(true) };
const twoHanded: Bowler = {
  ...averageBowler,
  thumbHole: false,
  grip: usualGrip(false),
  pap: { overIn: 5.375, upIn: 1 },
};

/** A plan with the places of all its marks, by name. */
function planOf(bowler: Bowler, ballRecord: typeof plainBall | typeof asymmetric, text: string) {
  const ball = ballProblem(ballRecord, bowler, 'moment');
  const layout = parseLayout(text);
  const face = faceAnswer(layout, noPsa, bowler.hand, ball);
  const places = new Map<string, Vec3>([
    ['pin', face.pin],
    [face.markerName, face.marker],
    ['PAP', face.pap],
    ['grip centre', [0, 0, 1]],
    ['VAL on the midline', ballPoint(bowler.pap.overIn / face.radiusIn, 0)],
    ...face.holes.map((hole) => [`${hole.name} hole`, hole.at] as [string, Vec3]),
  ]);
  return { plan: tapePlan(layout, bowler, ball), places, radiusIn: face.radiusIn, layout };
}

const cases = [
  { name: 'a plain ball', bowler: measured, ball: plainBall, text: '70 x 4 1/2 x 30' },
  { name: 'a mass bias', bowler: measured, ball: asymmetric, text: '50 x 4 x 45' },
  { name: 'the pin below', bowler: measured, ball: plainBall, text: '35 x 5 1/8 x 110' },
  { name: 'two hands', bowler: twoHanded, ball: asymmetric, text: '60 x 5 x 40' },
] as const;

describe.each(cases)('tapePlan: $name', ({ bowler, ball, text }) => {
  const { plan, places, radiusIn, layout } = planOf(bowler, ball, text);
  const inches = (u: Vec3, v: Vec3): number => radiusIn * d3Arc(u, v);
  const at = (name: string): Vec3 => places.get(name) as Vec3;

  test('every mark has its step, each from marks that are on the ball by then', () => {
    const known = new Set(plan.given);
    for (const { mark, arcs } of plan.steps) {
      for (const { from } of arcs) expect(known, mark).toContain(from);
      known.add(mark);
    }
    expect([...known].sort()).toEqual([...places.keys()].sort());
  });

  test('where no fit is known no hole is marked, and all else as with one', () => {
    const { grip: _, ...unmeasured } = bowler;
    const blank = planOf(unmeasured, ball, text).plan;
    expect(blank.steps).toEqual(plan.steps.filter(({ mark }) => !mark.endsWith(' hole')));
    expect(blank.readBack).toEqual(plan.readBack);
  });

  test('each arc is the way between the two marks, to the sixteenth of a tape (arcs by d3-geo 3.1.2)', () => {
    for (const { mark, arcs } of plan.steps)
      for (const arc of arcs) {
        expect(Number.isInteger(arc.inches * 16)).toBe(true);
        expect(Math.abs(arc.inches - inches(at(arc.from), at(mark)))).toBeLessThanOrEqual(1 / 32 + 1e-9);
      }
  });

  test('the side named is the side the mark lies on, by the sign of the triple product', () => {
    for (const { mark, arcs, turn, side } of plan.steps) {
      const [a, b] = [...arcs, ...(turn ? [turn] : [])].map(({ from }) => at(from)) as [Vec3, Vec3];
      expect(side, mark).toBe(dot(cross(a, b), at(mark)) > 0 ? 'left' : 'right');
    }
  });

  test('marked by hand from the printed arcs and angles, marks and layout come out as the sheet says (Newton on d3-geo; great-circle sailing)', () => {
    const placed = new Map(plan.given.map((name) => [name, at(name)]));
    for (const step of plan.steps) {
      const found = markedByHand(step, (name) => placed.get(name) as Vec3, at(step.mark), radiusIn);
      expectNear(inches(found, at(step.mark)), step.offIn, 1e-6);
      placed.set(step.mark, found);
    }
    const [pin, marker, pap, grip] = [plan.given[0], plan.given[1], 'PAP', 'grip centre'].map(
      (name) => placed.get(name as string) as Vec3,
    ) as [Vec3, Vec3, Vec3, Vec3];
    const { readBack } = plan;
    expectNear(inches(pin, pap), readBack.pinToPapIn, 1e-6);
    const drilling = angleOfArcs(d3Arc(marker, pap), d3Arc(pin, pap), d3Arc(pin, marker));
    expectNear(drilling / DEGREE, readBack.drillingAngleDeg as number, 1e-5);
    // the VAL stands on the midline: its angle with the way to the grip centre has sin = cos(over) / sin(...)
    const toGrip = valToGrip(d3Arc(pap, grip), bowler.pap.upIn / radiusIn);
    const gripToPin = angleOfArcs(d3Arc(grip, pin), d3Arc(pap, grip), d3Arc(pap, pin));
    const isAboveGrip = dot(cross(pap, grip), pin) < 0;
    expectNear(
      (toGrip + (isAboveGrip ? -gripToPin : gripToPin)) / DEGREE,
      readBack.valAngleDeg as number,
      1e-5,
    );
  });

  test('rounding costs less than a sixteenth of pin-to-PAP and a degree', () => {
    const { error, readBack } = plan;
    expect(Math.abs(error.pinToPapIn)).toBeLessThanOrEqual(1 / 32 + 1e-9); // its own arc is one of the two
    expect(Math.abs(error.drillingAngleDeg as number)).toBeLessThan(1);
    expect(Math.abs(error.valAngleDeg as number)).toBeLessThan(1);
    expectNear(
      [error.pinToPapIn, error.drillingAngleDeg as number, error.valAngleDeg as number],
      [
        readBack.pinToPapIn - layout.pinToPapIn,
        (readBack.drillingAngleDeg as number) - layout.drillingAngleDeg,
        (readBack.valAngleDeg as number) - layout.valAngleDeg,
      ],
      1e-9,
    );
  });
});

/**
 * Angle at the PAP from the upper VAL to the grip centre: the VAL meets the midline at a right angle, so in the
 * triangle grip centre, foot, PAP the angle at the PAP has cosine tan(up) / tan(arc) (Todhunter, art. 62).
 */
const valToGrip = (arc: number, up: number): number => Math.PI - Math.acos(Math.tan(up) / Math.tan(arc));

test('tapePlan: a left-hander’s ball has the same arcs on the other side of every way', () => {
  const right = planOf(measured, plainBall, '70 x 4 1/2 x 30').plan;
  const left = planOf({ ...measured, hand: 'left' }, plainBall, '70 x 4 1/2 x 30').plan;
  const other = { left: 'right', right: 'left' } as const;
  const mirror = (step: TapeStep): TapeStep => ({ ...step, side: step.side && other[step.side] });
  expect(left.steps).toEqual(right.steps.map(mirror));
  expect(left.readBack).toEqual(right.readBack);
});

test('tapePlan: a pin on the PAP is said to be the same point, and no angle is made up', () => {
  const { plan } = planOf(measured, plainBall, '50 x 0 x 35');
  expect(plan.steps[0]).toMatchObject({
    mark: 'PAP',
    arcs: [{ from: 'pin', inches: 0 }],
    side: null,
    offIn: 0,
  });
  expect(plan.readBack).toMatchObject({ drillingAngleDeg: null, valAngleDeg: null, pinToPapIn: 0 });
});

test('tapePlan: with the CG on the pin the PAP may lie in any direction from it', () => {
  const { plan } = planOf(measured, { ...plainBall, pinToCgIn: 0 }, '50 x 4 x 35');
  expect(plan.given).toEqual(['pin']);
  expect(plan.steps[0]).toMatchObject({
    arcs: [{ from: 'pin', inches: 4 }],
    turn: null,
    side: null,
    crossingDeg: null,
  });
  expect(plan.readBack.drillingAngleDeg).toBeNull();
  expect(plan.error.drillingAngleDeg).toBeNull();
  expectNear(plan.readBack.valAngleDeg as number, 35, 1);
});

test('tapePlan: without a thumb hole none is marked', () => {
  const { plan } = planOf(twoHanded, plainBall, '60 x 4 x 40');
  expect(plan.steps.map(({ mark }) => mark).join()).not.toMatch(/thumb/);
});

test('tapePlan: a PAP on the midline needs no further point for the midline', () => {
  const level = { ...measured, pap: { overIn: 5, upIn: 0 } };
  const { plan } = planOf(level, plainBall, '60 x 4 x 40');
  expect(plan.steps.map(({ mark }) => mark)).not.toContain('VAL on the midline');
});

test('tapePlan: the layout comes back from the printed steps within 1/16 in and 1°, on any ball for any layout', () => {
  let [protractors, arcs] = [0, 0];
  const sixteenths = (least: number, most: number) =>
    fc.integer({ min: 16 * least, max: 16 * most }).map((n) => n / 16);
  const degrees = fc.integer({ min: 0, max: 180 });
  fc.assert(
    fc.property(
      fc.record({ drillingAngleDeg: degrees, pinToPapIn: sixteenths(0.25, 6.75), valAngleDeg: degrees }),
      fc.record({ overIn: sixteenths(3, 6.5), upIn: sixteenths(-1.5, 1.5) }),
      fc.oneof(within(0.0625, 1), within(1, 5)),
      fc.boolean(),
      (layout, pap, pinToCgIn, hasMassBias) => {
        const ballRecord = { ...(hasMassBias ? asymmetric : plainBall), pinToCgIn };
        const bowler = { ...measured, pap };
        const problem = { ...readyBall(hasMassBias), ...marked(ballRecord, bowler) };
        const plan = tapePlan(layout, bowler, problem);
        const radiusIn = to(problem.published.radius, INCH);
        const { pin, marker, pap: truePap } = faceAnswer(layout, noPsa, 'right', problem);
        const placed = new Map<string, Vec3>([
          ['pin', pin],
          [problem.marker ?? '', marker],
        ]);
        const guesses: Record<string, Vec3> = { PAP: truePap, 'grip centre': [0, 0, 1] };
        for (const step of plan.steps.slice(0, 2)) {
          const guess = guesses[step.mark] as Vec3;
          placed.set(
            step.mark,
            markedByHand(step, (name) => placed.get(name) as Vec3, guess, radiusIn),
          );
          if (step.turn) protractors += 1;
          else arcs += 1;
        }
        const [found, grip] = [placed.get('PAP') as Vec3, placed.get('grip centre') as Vec3];
        expect(Math.abs(radiusIn * d3Arc(pin, found) - layout.pinToPapIn)).toBeLessThan(1 / 16);
        const drilling = (courseTo(pin, marker) - courseTo(pin, found)) / DEGREE;
        expect(Math.abs(lessTurn(drilling - layout.drillingAngleDeg))).toBeLessThan(1);
        const toGrip = valToGrip(d3Arc(found, grip), pap.upIn / radiusIn);
        const val = (toGrip + courseTo(found, grip) - courseTo(found, pin)) / DEGREE;
        expect(Math.abs(lessTurn(val - layout.valAngleDeg))).toBeLessThan(1);
      },
    ),
    { numRuns: 400 },
  );
  expect(protractors).toBeGreaterThan(50);
  expect(arcs).toBeGreaterThan(50);
});

/** An angle within half a turn of zero, degrees. */
const lessTurn = (deg: number): number => ((((deg + 180) % 360) + 360) % 360) - 180;

/** Balls made ready once: marks do not depend on their cores. */
const ready = new Map<boolean, BallProblem>();
function readyBall(hasMassBias: boolean): BallProblem {
  const known =
    ready.get(hasMassBias) ?? ballProblem(hasMassBias ? asymmetric : plainBall, measured, 'moment');
  ready.set(hasMassBias, known);
  return known;
}

/** What of a ball's problem its CG and the bowler's PAP change. */
function marked({ pinToCgIn, ...ball }: typeof plainBall, bowler: Bowler) {
  const { published, pinToMarker } = readyBall((ball as { coreShape?: string }).coreShape === 'asymmetric');
  const arc = (inches: number): number => from(inches, INCH) / published.radius;
  return {
    pap_B: ballPoint(arc(bowler.pap.overIn), arc(bowler.pap.upIn)),
    pinToMarker: pinToMarker === Math.PI / 2 ? pinToMarker : arc(pinToCgIn as number),
  };
}
