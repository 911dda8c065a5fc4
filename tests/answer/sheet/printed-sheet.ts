import fc from 'fast-check';
import { expect } from 'vitest';
import { faceAnswer } from '../../../src/answer/parts/face-answer.js';
import { gripMarks } from '../../../src/answer/sheet/grip-marks.js';
import { markingPlan } from '../../../src/answer/sheet/marking-plan.js';
import { SIXTEENTH } from '../../../src/base/tape-reading.js';
import { DEGREE, from, INCH, to } from '../../../src/base/units.js';
import { ballPoint } from '../../../src/math/ball-point.js';
import { cross, dot, type Vec3 } from '../../../src/math/vec3.js';
import { type BallProblem, ballProblem } from '../../../src/prepare/ball-problem.js';
import { placedGrip } from '../../../src/prepare/grip-holes.js';
import type { SheetAnswer } from '../../../src/records/answers/sheet-answer.js';
import type { Bowler } from '../../../src/records/schemas/bowler.js';
import { type GripRecord, usualGrip } from '../../../src/records/schemas/grip.js';
import type { LayoutNumbers } from '../../../src/records/text/layout-text.js';
import type { Block } from '../../../src/report/sheet/blocks.js';
import { holeMarksBlock, holesBlock } from '../../../src/report/sheet/holes-block.js';
import { mirrorBlock } from '../../../src/report/sheet/mirror-block.js';
import { stepsBlock } from '../../../src/report/sheet/steps-block.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { d3Arc } from '../../oracles/great-circle.js';
import {
  courseTo,
  inchesOf,
  markedByHand,
  type PrintedWay,
  readWay,
  seenSide,
} from '../../oracles/marked-by-hand.js';
import { within } from '../../support/arbitraries.js';
import { averageBowler, plainBall } from '../../support/problems.js';

/*
 * What holds of every sheet as it is printed: hundreds are tried with each run of the tests, thousands in `npm run check:slow`, which
 * says the worst of them.
 */

const noPsa = {
  overIn: 0,
  upIn: 0,
  fromPapIn: 0,
  fromMarkIn: null,
  fromPinIn: 0,
  fromGripCentreIn: 0,
  certain: false,
};
const asymmetric = { ...plainBall, coreShape: 'asymmetric', intermediateDifferentialIn: 0.015 } as const;

const sixteenths = (least: number, most: number) =>
  fc.integer({ min: 16 * least, max: 16 * most }).map((n) => n / 16);
const sixtyFourths = (least: number, most: number) =>
  fc.integer({ min: 64 * least, max: 64 * most }).map((n) => n / 64);

/** Balls made ready once: marks do not depend on their cores. */
const ready = new Map<boolean, BallProblem>();
function readyBall(hasMassBias: boolean): BallProblem {
  const known =
    ready.get(hasMassBias) ?? ballProblem(hasMassBias ? asymmetric : plainBall, averageBowler, 'moment');
  ready.set(hasMassBias, known);
  return known;
}

/** What of a sheet its steps are printed from, with the places of all marks on the real ball. */
function sheetOf(layout: LayoutNumbers, bowler: Bowler, pinToCgIn: number, hasMassBias: boolean) {
  const known = readyBall(hasMassBias);
  const { radius } = known.published;
  const arc = (inches: number): number => from(inches, INCH) / radius;
  const ball: BallProblem = {
    ...known,
    pap_B: ballPoint(arc(bowler.pap.overIn), arc(bowler.pap.upIn)),
    pinToMarker: hasMassBias ? known.pinToMarker : arc(pinToCgIn),
    holes: bowler.grip ? placedGrip(bowler.grip, radius, 'grip') : known.holes,
  };
  const face = faceAnswer(layout, noPsa, bowler.hand, ball);
  const answer = {
    bowler,
    face,
    grip: bowler.grip ?? null,
    gripMarks: bowler.grip ? gripMarks(bowler.grip, ball) : null,
    layout,
    marking: markingPlan(layout, bowler, ball, SIXTEENTH),
  } as unknown as SheetAnswer;
  const onBall = (u: Vec3): Vec3 => (bowler.hand === 'right' ? u : [-u[0], u[1], u[2]]);
  const marks = new Map<string, Vec3>([
    ['pin', onBall(face.pin)],
    [face.markerName, onBall(face.marker)],
    ['PAP', onBall(face.pap)],
    ['grip centre', [0, 0, 1]],
    ['VAL on the midline', onBall(ballPoint(arc(bowler.pap.overIn), 0))],
  ]);
  return { answer, marks, onBall, radiusIn: to(radius, INCH) };
}

const rowsOf = ({ parts }: Block): readonly (readonly string[])[] =>
  parts.flatMap((part) => (part.kind === 'table' ? part.rows : []));

/** The steps as printed: the ways of each mark. */
function printedSteps(answer: SheetAnswer): { mark: string; ways: PrintedWay[] }[] {
  return stepsBlock(answer, UNITS.trade).parts.flatMap((part) =>
    part.kind === 'steps' ? part.steps.map(({ mark, ways }) => ({ mark, ways: ways.map(readWay) })) : [],
  );
}

/** Marks a ball from what is printed, each step by the way asked for where it has that many. */
function marked(sheet: ReturnType<typeof sheetOf>, which: number): Map<string, Vec3> {
  const { answer, marks, radiusIn } = sheet;
  const placed = new Map(answer.marking.given.map((name) => [name, marks.get(name)!]));
  for (const { mark, ways } of printedSteps(answer)) {
    const way = ways[Math.min(which, ways.length - 1)]!;
    const { at, upper } = markedByHand(
      way,
      way.hold ?? ways[0]!.hold,
      (name) => placed.get(name) ?? missing(name),
      radiusIn,
    );
    placed.set(mark, at);
    if (upper) placed.set('upper end of the VAL', upper);
  }
  return placed;
}

const missing = (name: string): never => {
  throw new Error(`${name} is not yet on the ball`);
};

/** Angle at the PAP from the upper VAL to the grip centre: cos = tan(up) / tan(arc) in the right triangle at the midline (Todhunter, art. 62). */
const valToGrip = (arc: number, up: number): number =>
  Math.PI - Math.acos(Math.max(-1, Math.min(1, Math.tan(up) / Math.tan(arc))));

/** An angle within half a turn of zero, degrees. */
const lessTurn = (deg: number): number => ((((deg + 180) % 360) + 360) % 360) - 180;

/** Typed as angles, in whole degrees; as distances, any. */
const degrees = fc.oneof(fc.integer({ min: 0, max: 180 }), within(0, 180));
const layouts = fc.record({
  drillingAngleDeg: degrees,
  pinToPapIn: fc.oneof(sixteenths(0.5, 6.5), within(0.5, 6.5)),
  valAngleDeg: degrees,
});
const paps = fc.record({ overIn: sixteenths(3, 6.5), upIn: sixteenths(-1.5, 1.5) });
const hands = fc.constantFrom<Bowler['hand']>('right', 'left');

/** Marks placed from its sentences, by either way of each step, have the layout within 1/16 in and 1°, for hands of both sides; gives back the worst. */
export function layoutHolds(numRuns: number) {
  let [protractors, arcs, worstIn, worstDeg] = [0, 0, 0, 0];
  fc.assert(
    fc.property(
      layouts,
      paps,
      fc.oneof(within(0.5, 1), within(1, 5)),
      fc.boolean(),
      hands,
      (layout, pap, pinToCgIn, hasMassBias, hand) => {
        const sheet = sheetOf(layout, { ...averageBowler, pap, hand }, pinToCgIn, hasMassBias);
        for (const { ways } of printedSteps(sheet.answer))
          for (const { turn } of ways) {
            protractors += turn ? 1 : 0;
            arcs += turn ? 0 : 1;
          }
        for (const which of [0, 1]) {
          const placed = marked(sheet, which);
          const at = (name: string): Vec3 => sheet.onBall(placed.get(name)!); // a mirror is its own inverse
          const [pin, marker, found, grip] = [
            'pin',
            sheet.answer.marking.given[1]!,
            'PAP',
            'grip centre',
          ].map(at) as [Vec3, Vec3, Vec3, Vec3];
          const offIn = Math.abs(sheet.radiusIn * d3Arc(pin, found) - layout.pinToPapIn);
          const drilling = (courseTo(pin, marker) - courseTo(pin, found)) / DEGREE;
          const toGrip = valToGrip(d3Arc(found, grip), pap.upIn / sheet.radiusIn);
          const val = (toGrip + courseTo(found, grip) - courseTo(found, pin)) / DEGREE;
          const offDeg = [drilling - layout.drillingAngleDeg, val - layout.valAngleDeg].map((deg) =>
            Math.abs(lessTurn(deg)),
          );
          expect(offIn).toBeLessThanOrEqual(1 / 16);
          expect(Math.max(...offDeg), `${JSON.stringify(layout)} way ${which}`).toBeLessThanOrEqual(1);
          worstIn = Math.max(worstIn, offIn);
          worstDeg = Math.max(worstDeg, ...offDeg);
        }
      },
    ),
    { numRuns },
  );
  expect(protractors).toBeGreaterThan(100);
  expect(arcs).toBeGreaterThan(100);
  return { protractors, arcs, worstIn, worstDeg };
}

/** No direction is mirrored: left and right are as the eye sees the true marks, both hands, pin above and below; gives back how many were looked at. */
export function directionsHold(numRuns: number) {
  let seen = 0;
  fc.assert(
    fc.property(
      layouts,
      paps,
      within(1, 5),
      fc.boolean(),
      hands,
      (layout, pap, pinToCgIn, hasMassBias, hand) => {
        const { answer, marks } = sheetOf(layout, { ...averageBowler, pap, hand }, pinToCgIn, hasMassBias);
        const up: Vec3 = [0, 1, 0];
        const papAt = marks.get('PAP')!;
        // a point up the VAL, which is the great circle through the PAP and the pole of the midline
        const upper = [0, 1, 2].map((i) => papAt[i]! + 0.4 * up[i]!) as unknown as Vec3;
        const at = (name: string): Vec3 => (name === 'upper end of the VAL' ? upper : marks.get(name)!);
        for (const { mark, ways } of printedSteps(answer))
          for (const way of ways) {
            const hold = way.hold ?? ways[0]!.hold;
            if (!hold?.side) continue;
            const point = way.val ? upper : at(mark);
            const [away, toward] = [at(hold.away), at(hold.toward)];
            // a mark on the line itself is on neither side
            if (Math.abs(dot(cross(away, toward), point)) < 0.02) continue;
            expect(seenSide(away, toward, point), `${mark}: ${JSON.stringify(layout)} ${hand}`).toBe(
              hold.side,
            );
            seen += 1;
          }
        const [said] = mirrorBlock(answer).parts as [{ kind: 'text'; text: string }];
        const [, papSide] = /PAP lies (RIGHT|LEFT) of the centre line/.exec(said.text)!;
        expect(papSide).toBe(papAt[0] > 0 ? 'RIGHT' : 'LEFT');
        const pin = marks.get('pin')!;
        const pinSaid =
          /the pin (RIGHT|LEFT)? ?(?:of|on) the centre line and (above|below|on) the midline/.exec(
            said.text,
          )!;
        if (pinSaid[1]) expect(pinSaid[1]).toBe(pin[0] > 0 ? 'RIGHT' : 'LEFT');
        if (pinSaid[2] !== 'on') expect(pinSaid[2]).toBe(pin[1] > 0 ? 'above' : 'below');
      },
    ),
    { numRuns },
  );
  expect(seen).toBeGreaterThan(3 * numRuns);
  return { seen };
}

/** Holes marked from it have spans, bridge and pitches within 1/64 in of the fit, both hands; gives back the worst. */
export function gripHolds(numRuns: number) {
  const finger = fc.record({
    diameterIn: sixtyFourths(0.625, 1.125),
    forwardPitchIn: sixtyFourths(-0.75, 0.75),
    lateralPitchIn: sixtyFourths(-0.75, 0.75),
  });
  const R = to(readyBall(false).published.radius, INCH);
  let [grips, worstSpanIn, worstBridgeIn] = [0, 0, 0];
  fc.assert(
    fc.property(
      within(3, 5),
      within(-0.5, 0.5),
      within(0.125, 0.75),
      finger,
      finger,
      finger,
      hands,
      (span, more, bridgeIn, thumb, middle, ring, hand) => {
        const depths = { depthIn: 2, sleeve: null };
        const grip: GripRecord = {
          ...usualGrip(true),
          spanMiddleIn: span,
          spanRingIn: span + more,
          bridgeIn,
          thumb: { ...thumb, ...depths },
          middle: { ...middle, ...depths },
          ring: { ...ring, ...depths },
        };
        const sheet = sheetOf(
          { drillingAngleDeg: 50, pinToPapIn: 4, valAngleDeg: 40 },
          { ...averageBowler, hand, grip },
          3,
          false,
        );
        const right = hand === 'right' ? 1 : -1;
        const signed = (text: string, plus: string): number => {
          if (text === 'on it') return 0;
          const [, inches, way] = /^([\d /.]+) (\w+)$/.exec(text)!;
          return (way === plus ? 1 : -1) * inchesOf(inches!);
        };
        const mouths = new Map(
          rowsOf(holeMarksBlock(sheet.answer, UNITS.trade)).map(([hole, along, across]) => {
            const [a, c] = [signed(along!, 'up') / R, signed(across!, 'right') / R];
            return [hole!, [Math.sin(c), Math.cos(c) * Math.sin(a), Math.cos(c) * Math.cos(a)] as Vec3];
          }),
        );
        const edge = (diameterIn: number): number => R * Math.asin(diameterIn / 2 / R);
        const spanOf = (name: 'middle' | 'ring', order: typeof middle): number =>
          R * d3Arc(mouths.get('thumb')!, mouths.get(name)!) -
          edge(thumb.diameterIn) -
          edge(order.diameterIn);
        const tolerance = 1 / 64 + 1e-9;
        const spanOffIn = Math.max(
          Math.abs(spanOf('middle', middle) - grip.spanMiddleIn),
          Math.abs(spanOf('ring', ring) - grip.spanRingIn),
        );
        expect(spanOffIn).toBeLessThanOrEqual(tolerance);
        const acrossOf = (name: string): number => R * Math.asin(mouths.get(name)![0]);
        const bridge =
          right * (acrossOf('ring') - acrossOf('middle')) - edge(middle.diameterIn) - edge(ring.diameterIn);
        expect(Math.abs(bridge - bridgeIn)).toBeLessThanOrEqual(tolerance);
        worstSpanIn = Math.max(worstSpanIn, spanOffIn);
        worstBridgeIn = Math.max(worstBridgeIn, Math.abs(bridge - bridgeIn));
        // thumb on the centre line below, fingers above, the ring finger's hole on the PAP's side
        expect(mouths.get('thumb')![1]).toBeLessThan(0);
        expect(right * mouths.get('ring')![0]).toBeGreaterThan(0);
        for (const [name, , , , , palm, side] of rowsOf(holesBlock(sheet.answer, UNITS.trade))) {
          const order = { thumb, middle, ring }[name as 'thumb'];
          const pitch = (text: string, plus: string): number =>
            text === '0' ? 0 : (text.includes(` ${plus}`) ? 1 : -1) * inchesOf(/^[\d /.]+/.exec(text)![0]);
          expect(Math.abs(pitch(palm!, 'forward') - order.forwardPitchIn)).toBeLessThan(1e-3);
          expect(Math.abs(right * pitch(side!, 'right') - order.lateralPitchIn)).toBeLessThan(1e-3);
          if (side !== '0')
            expect(side).toContain(order.lateralPitchIn > 0 ? 'to PAP side' : 'away from PAP');
        }
        grips += 1;
      },
    ),
    { numRuns },
  );
  expect(grips).toBe(numRuns);
  return { grips, worstSpanIn, worstBridgeIn };
}
