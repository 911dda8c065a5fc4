import { describe, expect, test } from 'vitest';
import type { BallBody } from '../../../src/ball/drill/ball-body.js';
import { holeDepths } from '../../../src/ball/drill/hole-depths.js';
import type { Hole } from '../../../src/layout/hole.js';
import { IDENTITY, scaleMat } from '../../../src/math/mat3.js';
import { expectNear } from '../../support/expect-near.js';

/* Lengths in inches here: the geometry has no unit. */
const R = 4.3;
const ball = (core: BallBody['core']): BallBody => ({
  radius: R,
  coverThickness: 0.8,
  coverDensity: 1,
  fillerDensity: 1,
  core,
});
const bore = (depth: number): Hole => ({
  name: 'middle',
  mouth_B: [0, 0, 1],
  axis_B: [0, 0, -1],
  open: { radius: 0.45, depth },
  sleeve: null,
  tip: 'flat',
});
const sphere = (r: number, z: number) => ({
  shape: { kind: 'ball' } as const,
  A: scaleMat(r, IDENTITY),
  c: [0, 0, z] as const,
  density: 2,
  excess: 1,
});

describe('holeDepths', () => {
  test('straight to the centre: the cover’s thickness, and the ball’s radius less the core’s (elementary geometry)', () => {
    const [depths] = holeDepths(ball([sphere(2, 0)]), [bore(3)], IDENTITY);
    expectNear([depths!.cover!, depths!.core!], [0.8, R - 2], 1e-12);
  });

  test('a hole that ends before the core, or in the cover, meets neither', () => {
    expect(holeDepths(ball([sphere(2, 0)]), [bore(2)], IDENTITY)[0]).toMatchObject({ core: null });
    expect(holeDepths(ball([]), [bore(0.7)], IDENTITY)[0]).toMatchObject({ cover: null, core: null });
  });

  test('what is left of the cover below a hole that ends in it; none where it leaves the cover', () => {
    const [shallow, through] = holeDepths(ball([]), [bore(0.5), bore(1)], IDENTITY);
    expectNear(shallow!.coverBelow!, 0.3, 1e-12);
    expect(shallow!.cover).toBeNull();
    expect(through!.coverBelow).toBeNull();
  });

  test('a hole that runs beside the filler never leaves the cover, however deep', () => {
    // its axis passes the centre at R sin 60° = 3.72, outside the filler's 3.5
    const slanted: Hole = { ...bore(4), axis_B: [Math.sin(Math.PI / 3), 0, -Math.cos(Math.PI / 3)] };
    expect(holeDepths(ball([]), [slanted], IDENTITY)[0]!.cover).toBeNull();
  });

  test('a core beside the axis is met by the wall of the bore: the point of the sphere over its rim', () => {
    const aside = { ...sphere(1, 0), c: [1.2, 0, 0] as const };
    const [depths] = holeDepths(ball([aside]), [bore(4.2)], IDENTITY);
    // the line at 0.45 from the axis, 0.75 from the sphere's middle
    expectNear(depths!.core!, R - Math.sqrt(1 - 0.75 ** 2), 1e-12);
  });

  test('the core turns with the layout', () => {
    const above = sphere(1, 1.5);
    expectNear(holeDepths(ball([above]), [bore(4)], IDENTITY)[0]!.core!, R - 2.5, 1e-12);
    const halfTurn = [
      [1, 0, 0],
      [0, -1, 0],
      [0, 0, -1],
    ] as const;
    expect(holeDepths(ball([above]), [bore(4)], halfTurn)[0]!.core).toBeNull();
  });
});
