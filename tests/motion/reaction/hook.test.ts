import { describe, expect, test } from 'vitest';
import { GRAVITY, LANE_LENGTH } from '../../../src/base/constants.js';
import { DEGREE, FOOT } from '../../../src/base/units.js';
import { ZERO } from '../../../src/math/vec3.js';
import type { Surface } from '../../../src/motion/lane/surface.js';
import { cornerOf, type Hook, hookOf, LEAST_TURN, SHARP_OVER } from '../../../src/motion/reaction/hook.js';
import { emptySamples } from '../../../src/motion/shot/samples.js';
import { rollShot, type Shot } from '../../../src/motion/shot/shot.js';
import { drilledBall, expectWithin, isotropicBall, last, usualRelease } from '../../support/bodies.js';
import { twoZoneLane, uniformLane } from '../../support/dry-lanes.js';

const R = 0.1085;
const SPEED = 8;
const SOURCE = 'closed form: a = −μ g ŝ, constant while a ball with equal moments slides';

/**
 * A ball that slips straight across the lane all the way: rolled down the lane as fast as it goes, and spun to the left
 * (or to the right) so fast that friction does not stop it before the pins. Its speed down the lane stays, so
 * y = v t, and its departure from the launch line is μ g t²/2.
 */
function sideways(surface: Surface, { angle = 0, side = 70 } = {}, length = LANE_LENGTH): Shot {
  const down = SPEED * Math.cos(angle);
  const [wx, wy] = [-down / R, -side];
  const spin = Math.hypot(wx, wy);
  return rollShot(
    isotropicBall(0.065, R),
    { speed: SPEED, spin, axisTilt: 0, axisRotation: Math.atan2(-wy, -wx), pap_B: [1, 0, 0] },
    { x: 0, angle },
    surface,
    { step: 0.002, freshSurface: null, length, halfWidth: Number.POSITIVE_INFINITY },
  );
}

/** Its last turn, m, linear between samples: in 1.4 ms the spin changes by less than a thousandth of itself. */
function lastTurn({ y, phase }: Shot): number {
  const from = last(phase) - 2 * Math.PI;
  const i = phase.findIndex((turned) => turned > from);
  return last(y) - y[i] + ((phase[i] - from) / (phase[i] - phase[i - 1])) * (y[i] - y[i - 1]);
}

/** A turn of it at the release, m. */
const TURN = (2 * Math.PI * SPEED) / Math.hypot(SPEED / R, 70);

/**
 * The last turn begins between samples, 48 a turn, on a chord that cuts a 48²th of turn² / 8 of the curvature. That turns the
 * line into the pins by that over a turn, and moves the corner by the length of the lane behind it (10 m) as many times as
 * that is of all turning, which on a parabola is the curvature times 18 m; so 3e-5 of a turn, 0.45 m, at most.
 */
const CORNER = 2e-5;

/**
 * Where the tangent of a parabola at 0 meets the line through its end L and a place w before: both lie as far from the
 * corner as b L²/2 and b (L − w/2) say, whatever the parabola's bend b; half way for a short w.
 */
function parabolaCorner(shot: Shot): number {
  const [end, turn] = [last(shot.y), lastTurn(shot)];
  return (end * (end - turn)) / (2 * end - turn);
}

/**
 * Tangent of the heading at which it comes to roll in the end, positive leftward, whatever the friction: of its slip, which is
 * all across, κ = α/(1 + α) is lost, with α = (RG/R)² (any mechanics textbook).
 */
function rollSlope({ angle = 0, side = 70 } = {}): number {
  const alpha = (0.065 / R) ** 2;
  const across = SPEED * Math.sin(angle);
  return -(across - (alpha / (1 + alpha)) * (across + R * side)) / (SPEED * Math.cos(angle));
}

/**
 * Where a hook starts of which a part is still to come at the end of the lane: the mean place of all bending, that part counted
 * at the end.
 *
 * @param corner  of what has been bent
 * @param slope   tangent of the heading there, and of the heading in the end
 */
function withWhatIsToCome(corner: number, end: number, slope: number, last: number, launch = 0): number {
  return end - ((end - corner) * (slope + launch)) / (last + launch);
}

describe('a ball with equal moments that comes to roll, and runs straight on (any mechanics textbook)', () => {
  const shotTo = (length: number): Shot =>
    rollShot(
      isotropicBall(0.065, R),
      { speed: SPEED, spin: 40, axisTilt: 0.2, axisRotation: 0.8, pap_B: [1, 0, 0] },
      { x: 0, angle: 0.03 },
      uniformLane(0.1),
      { step: 0.002, freshSurface: null, length, halfWidth: Number.POSITIVE_INFINITY },
    );
  const long = shotTo(LANE_LENGTH);
  const rolls = long.y[long.rollStart];
  const { start } = hookOf(long);

  test.each([1e-6, 0.01, 0.1, 0.3, 1, 2])(
    'a lane that ends %s m behind where it begins to roll: its hook starts at the same place',
    (by) => {
      const shot = shotTo(rolls + by);
      expect(shot.rollStart).toBeGreaterThan(0);
      expectWithin(hookOf(shot).start, start, 1e-6);
    },
  );

  test('the nearer the lane ends before that, the nearer it starts to there: nothing jumps where slip ends', () => {
    const off = [0.4, 0.2, 0.1, 0.05, 1e-6].map((by) => {
      const shot = shotTo(rolls - by);
      expect(shot.rollStart).toBe(-1);
      return Math.abs(hookOf(shot).start - start);
    });
    expect([...off].sort((a, b) => b - a)).toEqual(off);
    expect(off.at(-1)).toBeLessThan(1e-5);
  });
});

test('a drilled ball sways once a turn, but wherever its lane ends, sliding or rolling, its hook starts at nearly the same place', () => {
  const shotTo = (length: number): Shot =>
    rollShot(drilledBall, usualRelease, { x: 0, angle: 0.03 }, uniformLane(0.1), {
      step: 0.002,
      freshSurface: null,
      length,
      halfWidth: Number.POSITIVE_INFINITY,
    });
  const long = shotTo(LANE_LENGTH);
  const rolls = long.y[long.rollStart];
  const more = 0.01;
  const starts = Array.from({ length: 180 }, (_, i) => hookOf(shotTo(rolls + (i - 60) * more)).start);
  // never by more than the lane is longer
  for (let i = 1; i < starts.length; i++) expectWithin(starts[i] as number, starts[i - 1] as number, more);
});

describe(`a ball that slips straight across the lane (${SOURCE})`, () => {
  const mu = 0.05;
  const bend = (mu * GRAVITY) / SPEED ** 2; // of the tangent of its heading, 1/m

  test.each([
    { name: 'straight down the lane', angle: 0 },
    { name: 'sent 4° to the right', angle: 4 * DEGREE },
    { name: 'sent 2° to the left', angle: -2 * DEGREE },
  ])(
    '$name: the hook is all μ g t²/2, and starts at the mean place of bending, what is still to come at the pins',
    ({ angle }) => {
      const shot = sideways(uniformLane(mu), { angle });
      expect(shot.outcome).toBe('pins');
      expect(shot.rollStart).toBe(-1);
      const { start, total, entryAngle } = hookOf(shot);
      const time = LANE_LENGTH / (SPEED * Math.cos(angle));
      expectWithin(total, (mu * GRAVITY * time ** 2) / 2, 1e-9);
      const [slope, launch] = [Math.tan(entryAngle), Math.tan(angle)];
      const want = withWhatIsToCome(parabolaCorner(shot), LANE_LENGTH, slope, rollSlope({ angle }), launch);
      expectWithin(start, want, CORNER);
    },
  );

  test('its heading changes most over the first ten feet', () => {
    const { sharpness } = hookOf(sideways(uniformLane(mu)));
    // one sample past them at the latest, 0.011 m of which the heading there changes by 4e-6 less
    expectWithin(sharpness, Math.atan(bend * SHARP_OVER) / SHARP_OVER, 2e-6);
  });

  test('its entry angle is its heading half a turn before the pins', () => {
    const shot = sideways(uniformLane(mu));
    // a turn of 0.45 m begins on a chord of 0.011 m, which cuts 0.011² / 8 of the bend
    expectWithin(hookOf(shot).entryAngle, Math.atan(bend * (LANE_LENGTH - lastTurn(shot) / 2)), 4e-5 * bend);
  });

  test.each([0, 0.01, 0.5, 1, 4])(
    'that has turned by %s degrees and would turn by fourteen starts to hook the later, the less it has',
    (degrees) => {
      const bend = (degrees * LEAST_TURN) / (LANE_LENGTH - TURN / 2);
      const shot = sideways(uniformLane((bend * SPEED ** 2) / GRAVITY));
      const slope = bend * (LANE_LENGTH - lastTurn(shot) / 2);
      const want = withWhatIsToCome(parabolaCorner(shot), LANE_LENGTH, slope, rollSlope());
      expectWithin(hookOf(shot).start, want, CORNER);
    },
  );

  test('the faster it is sent, the later it starts to hook', () => {
    const starts = [7, 8, 9, 10].map((speed) => {
      const [wx, wy] = [-speed / R, -70];
      const release = {
        speed,
        spin: Math.hypot(wx, wy),
        axisTilt: 0,
        axisRotation: Math.atan2(70, speed / R),
      };
      const shot = rollShot(
        isotropicBall(0.065, R),
        { ...release, pap_B: [1, 0, 0] },
        { x: 0, angle: 0 },
        uniformLane(mu),
        { step: 0.002, freshSurface: null, halfWidth: Number.POSITIVE_INFINITY },
      );
      expect(shot.rollStart).toBe(-1);
      return hookOf(shot).start;
    });
    for (let i = 1; i < starts.length; i++)
      expect(starts[i]).toBeGreaterThan((starts[i - 1] as number) + 0.2);
  });

  test('a hook to the right is negative, starts at the end and has no sharpness', () => {
    const shot = sideways(uniformLane(mu), { side: -70 });
    const { start, total, sharpness, entryAngle } = hookOf(shot);
    expectWithin(total, -(mu * GRAVITY * (LANE_LENGTH / SPEED) ** 2) / 2, 1e-9);
    expect(start).toBe(LANE_LENGTH);
    expect(sharpness).toBe(0);
    expectWithin(entryAngle, -Math.atan(bend * (LANE_LENGTH - lastTurn(shot) / 2)), 4e-5 * bend);
  });

  test('that stops after eight feet: its headings lie less than ten feet apart, and all their change counts', () => {
    const end = 8 * FOOT;
    const shot = sideways(uniformLane(0.2), {}, end);
    const { start, total, sharpness } = hookOf(shot);
    const sharp = (0.2 * GRAVITY) / SPEED ** 2;
    expectWithin(total, (sharp * end ** 2) / 2, 1e-9);
    const slope = sharp * (end - lastTurn(shot) / 2);
    expectWithin(start, withWhatIsToCome(parabolaCorner(shot), end, slope, rollSlope()), CORNER);
    const middle = end - TURN / 2;
    expectWithin(sharpness, Math.atan(sharp * middle) / middle, 1e-4 * sharp); // the turn grows by a hundredth
  });
});

describe(`a ball that slips across two friction zones (${SOURCE})`, () => {
  const [oiled, dry, from] = [0.01, 0.06, 10];
  const hook = (): Hook => hookOf(sideways(twoZoneLane(oiled, dry, from)));
  const bends = [oiled, dry].map((mu) => (mu * GRAVITY) / SPEED ** 2) as [number, number];
  /** Tangent of the turn from the launch line. */
  const turnAt = (y: number): number => bends[0] * Math.min(y, from) + bends[1] * Math.max(0, y - from);
  const headingAt = (y: number): number => Math.atan(turnAt(y));
  const departureAt = (y: number): number =>
    (bends[0] * y ** 2) / 2 + ((bends[1] - bends[0]) * Math.max(0, y - from) ** 2) / 2;

  test('the hook starts at the mean place of all bending, what is still to come counted at the pins', () => {
    expectWithin(hook().total, departureAt(LANE_LENGTH), 1e-9);
    const done = bends[0] * from * (from / 2) + bends[1] * (LANE_LENGTH - from) * ((LANE_LENGTH + from) / 2);
    const toCome = rollSlope() - turnAt(LANE_LENGTH);
    expectWithin(hook().start, (done + toCome * LANE_LENGTH) / rollSlope(), CORNER);
  });

  test('it is sharpest over the ten feet behind the first, from half a turn on', () => {
    const first = from + TURN / 2;
    // where a turn takes in the change of friction, its heading bends from one rate to the other: third order in a turn
    expectWithin(hook().sharpness, (headingAt(first + SHARP_OVER) - headingAt(first)) / SHARP_OVER, 2e-5);
  });
});

/** A path by its departure to the left of the lane's middle (m), at even distances and turning evenly. */
function pathOf(leftAt: (y: number) => number, end: number, turn = 0.6, gap = 0.005): Shot {
  const count = Math.round(end / gap) + 1;
  const y = Float64Array.from({ length: count }, (_, i) => (i * end) / (count - 1));
  const slope = (at: number): number => (leftAt(at + 1e-6) - leftAt(at - 1e-6)) / 2e-6;
  return {
    ...emptySamples(),
    time: y.map((at) => at / SPEED),
    x: y.map((at) => -leftAt(at)),
    y,
    vx: y.map((at) => -SPEED * slope(at)),
    vy: y.map(() => SPEED),
    phase: y.map((at) => (2 * Math.PI * at) / turn),
    outcome: 'gutter',
    launch: { x: -leftAt(0), angle: -Math.atan(slope(0)) },
    steps: count,
    rollStart: -1,
    endAxis_W: ZERO,
    rollHeading: Math.atan(slope(end - 1e-6)), // nothing is still to come
  };
}

/** A path that turns by a tangent of 1 from one place to another, evenly: its departure, m. */
const ramp = (y: number, from: number, to: number): number =>
  y <= from ? 0 : y >= to ? y - (from + to) / 2 : (y - from) ** 2 / (2 * (to - from));

describe('paths drawn by hand (plane geometry)', () => {
  test('a sway once a turn is no hook, no bend and no heading', () => {
    const turn = 0.6;
    const { start, sharpness, entryAngle } = hookOf(
      pathOf((y) => 0.004 * (1 - Math.cos((2 * Math.PI * y) / turn)), 30 * turn, turn),
    );
    expectWithin(start, 30 * turn, 1e-9);
    // chords across 0.005 m cut 1.4e-5 of the sway's height, over a turn of 0.6 m
    expectWithin(sharpness, 0, 1e-6);
    expectWithin(entryAngle, 0, 1e-6);
  });

  test.each([
    { corner: 4, turn: 0.1, launch: 0 },
    { corner: 10, turn: 0.1, launch: 0 },
    { corner: 10, turn: 0.02, launch: -0.05 },
    { corner: 10, turn: 0.6, launch: -0.3 },
    { corner: 17, turn: 0.1, launch: 0.02 },
  ])('two straight lines: the hook starts at their corner, $corner m', ({ corner, turn, launch }) => {
    const { start } = hookOf(pathOf((y) => launch * y + turn * Math.max(0, y - corner), LANE_LENGTH));
    // the launch slope is a difference quotient in doubles: 1e-10, on 14 m of lever over the turn
    expectWithin(start, corner, 1e-6);
  });

  test.each([
    { name: 'one bend', bends: [[0.1, 9, 14]], mean: 11.5 },
    { name: 'a slight bend, then a strong one', bends: [[0.02, 1, 9], [0.08, 12, 14]], mean: (0.02 * 5 + 0.08 * 13) / 0.1 }, // biome-ignore format: one a line
    { name: 'a bend to the left, then less to the right', bends: [[0.08, 8, 10], [-0.03, 12, 14]], mean: (0.08 * 9 - 0.03 * 13) / 0.05 }, // biome-ignore format: one a line
  ] as const)('$name: the hook starts at the mean place of bending', ({ bends, mean }) => {
    const { start } = hookOf(
      pathOf((y) => bends.reduce((sum, [turn, from, to]) => sum + turn * ramp(y, from, to), 0), LANE_LENGTH),
    );
    expectWithin(start, mean, 1e-6);
  });

  test('one that turns back so far that its lines meet behind the foul line starts to hook there', () => {
    const startOf = (back: number): number =>
      hookOf(pathOf((y) => 0.04 * ramp(y, 1, 3) - back * ramp(y, 9, 11), LANE_LENGTH)).start;
    // (0.04·2 − back·10) / (0.04 − back) is nought at 0.008
    expectWithin(startOf(0.0079), 0.001 / 0.0321, 1e-6);
    expectWithin(startOf(0.008), 0, 1e-6);
    expect(startOf(0.0081)).toBe(0);
    expect(startOf(0.02)).toBe(0);
    expect(startOf(0.2)).toBe(LANE_LENGTH); // and one that goes to the right in the end, at its end
  });

  test('two bends alike: neither start nor sharpness jumps as the one overtakes the other', () => {
    const at = (share: number): Hook =>
      hookOf(pathOf((y) => 0.04 * (share * ramp(y, 6, 8) + (1 - share) * ramp(y, 13, 15)), LANE_LENGTH));
    const [less, same, more] = [0.499, 0.5, 0.501].map(at) as [Hook, Hook, Hook];
    expectWithin(less.start, 14 - 0.499 * 7, 1e-6);
    expectWithin(same.start, 14 - 0.5 * 7, 1e-6);
    expectWithin(more.start, 14 - 0.501 * 7, 1e-6);
    // no heading changes by more than 0.002·0.04 over the ten feet
    expectWithin(less.sharpness, same.sharpness, (0.002 * 0.04) / SHARP_OVER);
    expectWithin(more.sharpness, same.sharpness, (0.002 * 0.04) / SHARP_OVER);
  });

  test.each([
    { end: 0.3, launch: 0 },
    { end: 0.599, launch: 0 },
    { end: 0.599, launch: -0.05 },
    { end: 0.599, launch: 0.02 },
  ])(
    '$end m, less than a turn, sent off at a slope of $launch: the change from the release to the whole',
    ({ end, launch }) => {
      const { start, total, sharpness, entryAngle } = hookOf(pathOf((y) => launch * y + 0.1 * y ** 2, end));
      expectWithin(total, 0.1 * end ** 2, 1e-9);
      expectWithin(start, end / 2, 1e-6); // a parabola bends evenly
      expectWithin(entryAngle, Math.atan(launch + 0.1 * end), 1e-9);
      const turned = Math.atan(launch + 0.1 * end) - Math.atan(launch);
      expectWithin(sharpness, turned / (end / 2), 1e-6);
    },
  );

  test.each([1.6, 6, Number.POSITIVE_INFINITY])(
    'one turn in %s m: headings are taken over five feet at most',
    (turn) => {
      const { entryAngle } = hookOf(pathOf((y) => 0.01 * y ** 2, LANE_LENGTH, turn));
      // over a stretch a parabola heads as it does in the middle of it; chords of 0.005 m cut 3e-8 of that
      expectWithin(entryAngle, Math.atan(0.02 * (LANE_LENGTH - 2.5 * FOOT)), 1e-7);
    },
  );

  test('ten feet between the first heading and the last: the same from below and from above', () => {
    const end = SHARP_OVER + 0.3; // the last heading lies half a turn before the end
    const [below, above] = [end - 0.002, end + 0.002].map(
      (e) => hookOf(pathOf((y) => 0.01 * y ** 2, e)).sharpness,
    );
    const exact = (a: number, b: number): number => (Math.atan(0.02 * b) - Math.atan(0.02 * a)) / (b - a);
    expectWithin(below as number, exact(0, SHARP_OVER - 0.002), 1e-7);
    expectWithin(above as number, exact(0, SHARP_OVER), 1e-7);
  });

  test('cornerOf: continuous where the least turn takes over and at both ends', () => {
    const hook = 9 * LEAST_TURN; // the least turn from 9 m on
    expectWithin(cornerOf(18, hook, LEAST_TURN), 9, 1e-12);
    for (const by of [-1e-9, 1e-9]) {
      expectWithin(cornerOf(18, hook, LEAST_TURN + by), 9, (9 * 1e-9) / LEAST_TURN);
      expectWithin(cornerOf(18, by, 0.1), 18, 2e-8);
      expectWithin(cornerOf(18, 1.8 + by, 0.1), 0, 2e-8);
    }
    expect(cornerOf(18, -1, -0.1)).toBe(18);
    expect(cornerOf(18, 0, 0)).toBe(18);
  });

  test.each([
    { turnDeg: 0.25, corner: 10 },
    { turnDeg: 0.5, corner: 10 },
    { turnDeg: 0.5, corner: 4 },
    { turnDeg: 0.9, corner: 16 },
  ])(
    'a turn of $turnDeg° counts as one of a degree: its corner, $corner m, moves to the pins',
    ({ turnDeg, corner }) => {
      const turn = Math.tan((turnDeg * Math.PI) / 180);
      const { start } = hookOf(pathOf((y) => turn * Math.max(0, y - corner), LANE_LENGTH));
      // it has left the launch line by turn · (L − corner), and a degree makes that in so much less of the lane
      const want = LANE_LENGTH - ((LANE_LENGTH - corner) * turn) / Math.tan(Math.PI / 180);
      expectWithin(start, want, 1e-6);
    },
  );

  test('turning that is still to come counts at the pins', () => {
    const path = pathOf((y) => 0.1 * Math.max(0, y - 10), LANE_LENGTH);
    // from a tangent of 0.1 on to one of 0.2: as much again
    expectWithin(hookOf({ ...path, rollHeading: Math.atan(0.2) }).start, (10 + LANE_LENGTH) / 2, 1e-6);
  });

  test('nothing rolled has no hook', () => {
    const { time, x, y, vx, vy, phase } = emptySamples();
    const nothing = { ...pathOf(() => 0, 1), time, x, y, vx, vy, phase };
    expect(hookOf(nothing)).toEqual({ start: 0, total: 0, sharpness: 0, entryAngle: 0 });
  });
});
