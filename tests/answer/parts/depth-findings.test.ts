import { expect, test } from 'vitest';
import { depthFindings } from '../../../src/answer/parts/depth-findings.js';
import { boreSolid } from '../../../src/ball/drill/bore-solid.js';
import { from, INCH } from '../../../src/base/units.js';
import type { Hole } from '../../../src/layout/hole.js';
import { IDENTITY } from '../../../src/math/mat3.js';
import { scale, unit, type Vec3 } from '../../../src/math/vec3.js';
import { ballProblem } from '../../../src/prepare/ball-problem.js';
import { averageBowler, plainBall } from '../../support/problems.js';
import { said } from '../../support/said.js';

const SMALL = { cores: 4, rays: { ranking: { radii: 2, angles: 6 }, report: { radii: 2, angles: 6 } } };
const base = ballProblem(plainBall, averageBowler, 'moment', undefined, SMALL);
const { radius } = base.published;
const inch = (value: number): number => from(value, INCH);

/** The point so many inches along the surface from the grip centre toward the PAP's side. */
const at = (arcIn: number): Vec3 => [Math.sin(inch(arcIn) / radius), 0, Math.cos(inch(arcIn) / radius)];

/** Straight in, flat at the bottom. */
const bore = (name: Hole['name'], arcIn: number, diameterIn: number, depthIn: number): Hole => ({
  name,
  mouth_B: at(arcIn),
  axis_B: scale(-1, at(arcIn)),
  open: { radius: inch(diameterIn) / 2, depth: inch(depthIn) },
  sleeve: null,
  tip: 'flat',
});

const findings = (hole: Hole, old: Hole | null, pin_B: Vec3 = [0, 1, 0]) =>
  depthFindings(
    { R_BC: IDENTITY, pap_B: at(5), pin_B, marker_B: [0, -1, 0] },
    {
      ...base,
      holes: [hole],
      oldMouths: old
        ? [
            {
              name: old.name,
              drilling: 2,
              mouth_C: old.mouth_B,
              radius: old.open.radius,
              bores_C: [boreSolid(old, old.open, radius)],
            },
          ]
        : [],
    },
  );

test('of a hole drilled again where a plug of its size is, nothing is said', () => {
  const hole = bore('thumb', 0, 1, 2);
  expect(findings(hole, hole)).toEqual([]);
});

test('a narrow plug in the middle of a wider, deeper hole is its share of the cylinders', () => {
  const [finding] = findings(bore('thumb', 0, 1, 2), bore('ring', 0, 0.5, 1));
  const { share } = (finding!.params as { holes: { share: number }[] }).holes[0]!;
  // (1/2)² of the section over half the depth, 1/8, to what 24 radii of rays tell apart
  expect(share).toBeGreaterThan(0.115);
  expect(share).toBeLessThan(0.135);
  expect(said([finding!])).toMatch(/thumb through old ring \(drilling 2\) 1[23] %/);
});

test('two holes straight to the centre, 0.3 in apart at the surface, come to meet where their axes are a diameter apart', () => {
  const centres = 1.3;
  const [finding] = findings(bore('thumb', 0, 1, 3), bore('ring', centres, 1, 3));
  const { fromIn, share } = (finding!.params as { holes: { fromIn: number; share: number }[] }).holes[0]!;
  // from a point t down one axis to the other, both through the centre: (R − t) sin(angle) = 1 in
  const R = radius / INCH_IN_M;
  expect(fromIn).toBeCloseTo(R - 1 / Math.sin(centres / R), 3);
  expect(share).toBeLessThan(0.2);
});

test('two short ones stay apart, and the wall at their bottoms is told', () => {
  const [finding] = findings(bore('thumb', 0, 1, 0.5), bore('ring', 1.4, 1, 0.5));
  expect(finding?.code).toBe('thin-webs-below');
  expect(said([finding!])).toMatch(
    /less than 1\/4 in of ball.*between the thumb hole and the old ring hole of drilling 2/,
  );
});

test('far from any plug nothing is said', () => {
  expect(findings(bore('thumb', 0, 1, 2), bore('ring', 4, 1, 2))).toEqual([]);
});

test('a hole that leaves the pin at the surface and leans under it meets it below; one that cuts it at the surface is another’s to say', () => {
  const leaning: Hole = { ...bore('ring', 0, 1, 2.5), axis_B: unit([0.2, 0, -1]) };
  const [finding] = findings(leaning, null, at(0.55));
  expect(finding?.code).toBe('pin-met-below');
  expect(findings(leaning, null, at(0.3))).toEqual([]);
  expect(findings(leaning, null, at(1.5))).toEqual([]);
});

const INCH_IN_M = from(1, INCH);
