import { expect, test } from 'vitest';
import { sphereMoments } from '../../../src/ball/drill/ball-body.js';
import { boreSolid, rayStart } from '../../../src/ball/drill/bore-solid.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { addMoments, fromMoments, type Moments } from '../../../src/ball/mass/mass-properties.js';
import { INCH, OUNCE } from '../../../src/base/units.js';
import type { Hole } from '../../../src/layout/hole.js';
import { RADIUS, usualHoles } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';
import { takenOut } from '../../support/taken-out.js';
import { insideBore } from './inside-bore.js';

/** A flat-ended hole from the top of a ball straight down. */
const straightHole = (radius: number, depth: number): Hole => ({
  name: 'thumb',
  mouth_B: [0, 0, 1],
  axis_B: [0, 0, -1],
  open: { radius, depth },
  sleeve: null,
  tip: 'flat',
});

const RULE = { radii: 24, angles: 48 };

test('a through hole of a = 0.25 leaves V 3.802292509, I_z 1.663502973, I_x 1.544681332 of a unit ball (closed form)', () => {
  const hole = takenOut(excavate([straightHole(0.25, 3)], 1, RULE));
  const left = fromMoments(addMoments(sphereMoments(1, 1), hole, -1));
  expectNear(left.mass, 3.802292509, 1e-9);
  expectNear(left.p_BoBcm_B, [0, 0, 0], 1e-15);
  expectNear([left.I_Bcm_B[2][2], left.I_Bcm_B[0][0]], [1.663502973, 1.544681332], 1e-9);
});

test('a cap of h = 1 off a ball of R = 4.25 is a hole as wide as the cap (closed form)', () => {
  const capRadius = Math.sqrt(2 * 4.25 - 1);
  const cap = takenOut(excavate([straightHole(capRadius, 1)], 4.25, RULE));
  const { mass, p_BoBcm_B, I_Bcm_B } = fromMoments(cap);
  expectNear(mass, 12.3045712266, 1e-10);
  expectNear(p_BoBcm_B[2], 3.59042553, 1e-8);
  expectNear([I_Bcm_B[2][2] / mass, I_Bcm_B[0][0] / mass], [2.55744681, 1.33517429], 1e-8);
});

test('a flat hole 1 in × 3 in of 1.18 g/cc is 2.356 in³, 45.6 g, 1.61 oz with the air above its rim', () => {
  // depth is measured at the axis; between there and the ball's curve are π r² R − 2π/3 (R³ − (R²−r²)^1.5)
  const [r, R] = [INCH / 2, RADIUS];
  const air = Math.PI * r * r * R - ((2 * Math.PI) / 3) * (R ** 3 - (R * R - r * r) ** 1.5);
  const volume = takenOut(excavate([straightHole(r, 3 * INCH)], R, RULE)).mass + air;
  expectNear(volume / INCH ** 3, (3 * Math.PI) / 4, 1e-12);
  expect((volume * 1180 * 1000).toFixed(1)).toBe('45.6');
  expect(((volume * 1180) / OUNCE).toFixed(2)).toBe('1.61');
});

test.each([
  {
    tip: 'cone' as const,
    want: (r: number) => (Math.PI * r ** 3) / (3 * Math.tan((59 * Math.PI) / 180)),
    tol: 1e-6,
  },
  { tip: 'round' as const, want: (r: number) => (2 / 3) * Math.PI * r ** 3, tol: 1e-6 },
])('a $tip tip adds its own volume below a flat end (closed form)', ({ tip, want, tol }) => {
  const r = 0.0127;
  const volume = (hole: Hole): number => takenOut(excavate([hole], RADIUS, { radii: 100, angles: 1 })).mass;
  const flat = straightHole(r, 0.06);
  // √ of the rule's variable at the axis (cone) or the wall (round) makes its error fall as radii⁻³
  expectNear((volume({ ...flat, tip }) - volume(flat)) / want(r), 1, tol);
});

test('a hole of no depth takes nothing', () =>
  expect(excavate([straightHole(0.0127, 0)], RADIUS, RULE).stretches).toEqual([]));

test('a slug as heavy as the ball leaves what the open hole alone would', () => {
  const open = usualHoles()[0];
  const density = 1180;
  const sleeve = { ...(open.sleeve as NonNullable<Hole['sleeve']>), density };
  const lined = excavate([{ ...open, sleeve }], RADIUS, RULE);
  const bare = takenOut(excavate([{ ...open, sleeve: null }], RADIUS, RULE));
  const net = addMoments(lined.putBack, takenOut(lined), -density);
  expectNear(net.mass, -density * bare.mass, 2e-7);
  expectNear(
    net.second,
    bare.second.map((row) => row.map((x) => -density * x)),
    2e-9,
  );
});

test('a hole deeper than its slug’s bore goes on into the ball, and is taken once', () => {
  const [thumb] = usualHoles();
  const deep = (depth: number): Hole => ({ ...thumb, tip: 'flat', open: { ...thumb.open, depth } });
  const volume = (depth: number): number => takenOut(excavate([deep(depth)], RADIUS, RULE)).mass;
  const bore = (thumb.sleeve as NonNullable<Hole['sleeve']>).bore.depth;
  const { radius } = thumb.open;
  expectNear(volume(bore + 0.01) - volume(bore), Math.PI * radius ** 2 * 0.01, 1e-15);
});

test('crossBore: a ray down the axis of a bore runs to the bottom of its tip', () => {
  const [thumb] = usualHoles();
  for (const tip of ['flat', 'cone', 'round'] as const) {
    const bore = boreSolid(thumb, thumb.open, RADIUS, tip);
    const { radius, depth } = bore;
    const below = { flat: 0, cone: radius / Math.tan((59 * Math.PI) / 180), round: radius }[tip];
    expectNear(insideBore(bore, rayStart(bore, 0, 0), bore.d).leave, depth + below, 1e-15);
  }
});

test('the order of the holes changes nothing but which rays stand for shared matter', () => {
  const rule = { radii: 24, angles: 96 };
  const total = (holes: readonly Hole[]): Moments => {
    const dug = excavate(holes, RADIUS, rule);
    return addMoments(dug.putBack, takenOut(dug), -900);
  };
  const [thumb, middle, ring] = usualHoles();
  const want = total([thumb, middle, ring]);
  for (const holes of [
    [thumb, ring, middle],
    [ring, thumb, middle],
    [middle, ring, thumb],
  ]) {
    const got = total(holes);
    expectNear(got.mass / want.mass, 1, 2e-5);
    expectNear(got.first, want.first, 2e-5 * Math.hypot(...want.first));
    expectNear(got.second, want.second, 2e-5 * Math.abs(want.mass) * RADIUS ** 2);
  }
});
