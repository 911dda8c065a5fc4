import { describe, expect, test } from 'vitest';
import { layoutOnBall } from '../../src/prepare/layout-on-ball.js';
import { demoBalls } from '../../src/records/read/shelf.js';
import type { PublishedBall } from '../../src/records/schemas/ball.js';
import { readLayout } from '../../src/records/text/written-layout.js';
import { refusalOf } from '../support/refusal-of.js';

const ball = (id: string): PublishedBall =>
  demoBalls().find((each) => each.id === id)?.record as PublishedBall;
const symmetric = ball('plain-medium');
const asymmetric = ball('asymmetric-mild');

const RADIUS_IN = 27 / (2 * Math.PI);
const deg = (rad: number): number => (rad * 180) / Math.PI;
const { sin, cos, asin, acos } = Math;

describe('layoutOnBall', () => {
  test('angles stay as they were written', () => {
    expect(layoutOnBall(readLayout('70 x 4 1/2 x 30'), symmetric)).toEqual({
      drillingAngleDeg: 70,
      pinToPapIn: 4.5,
      valAngleDeg: 30,
    });
  });

  // Todhunter & Leathem, Spherical Trigonometry, art. 37 (law of cosines) and art. 62 (right triangles)
  test.each([
    { of: 'a mass-bias mark', on: asymmetric, arc: Math.PI / 2 },
    { of: 'a CG mark', on: symmetric, arc: symmetric.pinToCgIn / RADIUS_IN },
  ])('distances to $of become the angles of the spherical triangles', ({ on, arc }) => {
    const [p, m, b] = [4.5, 4, 2].map((inches) => inches / RADIUS_IN) as [number, number, number];
    const got = layoutOnBall(readLayout('4 1/2 x 4 x 2'), on);
    expect(got.valAngleDeg).toBeCloseTo(deg(asin(sin(b) / sin(p))), 9);
    expect(got.drillingAngleDeg).toBeCloseTo(
      deg(acos((cos(m) - cos(p) * cos(arc)) / (sin(p) * sin(arc)))),
      9,
    );
    const below = layoutOnBall(readLayout('4 1/2 x 4 x 2 below'), on);
    expect(below.valAngleDeg).toBeCloseTo(180 - got.valAngleDeg, 9);
  });

  test.each([symmetric, asymmetric])(
    'a pin buffer beside a drilling angle becomes the VAL angle: $name',
    (on) => {
      const [p, b] = [4.5, 2].map((inches) => inches / RADIUS_IN) as [number, number];
      const valAngleDeg = deg(asin(sin(b) / sin(p)));
      const above = layoutOnBall(readLayout('70 x 4 1/2 x 2 in'), on);
      expect(above).toMatchObject({ drillingAngleDeg: 70, pinToPapIn: 4.5 });
      expect(above.valAngleDeg).toBeCloseTo(valAngleDeg, 9);
      const below = layoutOnBall(readLayout('70 x 4 1/2 x 2 in below'), on);
      expect(below.valAngleDeg).toBeCloseTo(180 - valAngleDeg, 9);
      const tooLong = refusalOf(() => layoutOnBall(readLayout('70 x 2 x 3 in'), on));
      expect(tooLong.worded.message).toContain('got 2 x 3 in, where the pin buffer');
    },
  );

  test('arcs that do not go together are refused with a reason', () => {
    const { codes, worded } = refusalOf(() => layoutOnBall(readLayout('2 x 3 x 4'), asymmetric));
    expect(codes).toEqual(['arcs-clash']);
    expect(worded.message).toContain('the pin buffer');
  });

  test('a drilling angle to the other mark is refused, to its own taken', () => {
    const to = (mark: string, on: PublishedBall) => () =>
      layoutOnBall(readLayout(`70 ${mark} x 4 1/2 x 30`), on);
    expect(to('cg', symmetric)().drillingAngleDeg).toBe(70);
    expect(to('mb', asymmetric)().drillingAngleDeg).toBe(70);
    expect(refusalOf(to('cg', asymmetric)).worded.message).toContain(
      'must be measured to the mass-bias mark',
    );
    expect(refusalOf(to('mb', symmetric)).worded.message).toContain('has no mass-bias mark');
  });
});
