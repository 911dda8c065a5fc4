import { describe, expect, test } from 'vitest';
import { drilledAnswer } from '../../src/answer/drilled-answer.js';
import { mapAnswer } from '../../src/answer/map/map-answer.js';
import { bodyMoments } from '../../src/ball/drill/ball-body.js';
import { inertiaNumbers } from '../../src/ball/drill/drilled-numbers.js';
import { fromMoments } from '../../src/ball/mass/mass-properties.js';
import { INCH, to } from '../../src/base/units.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { type Ball, ballSchemaFor } from '../../src/records/schemas/ball.js';
import { parseLayout } from '../../src/records/text/layout-text.js';
import { expectNear } from '../support/expect-near.js';
import { averageBowler, plainBall } from '../support/problems.js';
import { said } from '../support/said.js';

const lobed = (given: { lobes?: number; lobeFromMarkDeg?: number } = {}): Ball =>
  ({ ...plainBall, coreShape: 'lobed', ...given }) as Ball;

/** Drilled intermediate differential, in. */
const drilled = (ball: Ball, drillingAngleDeg: number, bowler = averageBowler): number =>
  drilledAnswer(
    { bowler, ball, layout: { ...parseLayout('50 x 4 1/2 x 35'), drillingAngleDeg } },
    { ounce: 'moment' },
  ).drilled.intermediateDifferentialIn;

describe.each([3, 4, 5, 6])('a lobed core of %i noses', (lobes) => {
  test('is symmetric by its numbers before it is drilled, whichever way it is turned', () => {
    for (const lobeFromMarkDeg of [0, 17, 180 / lobes]) {
      const { bodies } = ballProblem(lobed({ lobes, lobeFromMarkDeg }), averageBowler, 'moment');
      expect(bodies.length).toBe(64);
      for (const body of bodies) {
        expect(body.core.length).toBe(1 + lobes);
        const numbers = inertiaNumbers(fromMoments(bodyMoments(body)));
        expectNear(to(numbers.lowRg, INCH), 2.53, 1e-9);
        expectNear(to(numbers.differential, INCH), 0.041, 1e-9);
        expect(to(numbers.intermediateDifferential, INCH)).toBeLessThan(0.0015); // what top weight leaves
      }
    }
  });

  test('has a nose where its record says: the mark’s direction turned clockwise by the angle', () => {
    const at = 20;
    const { bodies } = ballProblem(lobed({ lobes, lobeFromMarkDeg: at }), averageBowler, 'moment');
    for (const body of bodies) {
      const trunk = body.core[0].c;
      const noses = body.core.slice(1).map(({ c }) => Math.atan2(c[1] - trunk[1], c[0] - trunk[0]));
      // in C, x is toward the mark and y lies counterclockwise of it, seen from outside through the pin
      const off = noses.map((angle) => Math.abs(Math.sin((angle + (at * Math.PI) / 180) / 2)));
      expect(Math.min(...off)).toBeLessThan(1e-9);
    }
  });
});

test('a core turned by half the spacing of its noses drills at one angle as the other does half a spacing on', () => {
  // but for the CG, which stays by its mark: some 0.0015 in
  for (const angle of [25, 70])
    expectNear(drilled(lobed({ lobeFromMarkDeg: 45 }), angle), drilled(lobed(), angle + 45), 0.002);
  const [small, large] = [25, 70];
  expect(drilled(lobed(), large)).toBeGreaterThan(drilled(lobed(), small) + 0.003);
  expect(drilled(lobed({ lobeFromMarkDeg: 45 }), large)).toBeLessThan(
    drilled(lobed({ lobeFromMarkDeg: 45 }), small) - 0.003,
  );
});

test('a left-hander’s ball with its noses the other way round is the mirror image', () => {
  const left = { ...averageBowler, hand: 'left' } as const;
  const turned = (lobeFromMarkDeg: number): Ball => lobed({ lobeFromMarkDeg });
  expect(drilled(turned(-20), 70, left)).toBe(drilled(turned(20), 70));
});

describe('what is not known of the noses is said', () => {
  const assumed = (ball: Ball): string =>
    said(mapAnswer({ bowler: averageBowler, ball, around: MIDDLE_LAYOUT }, 'drilling-angle').assumptions);
  const { coreShape: _, ...unshaped } = { ...plainBall, coreShape: undefined };

  test.each([
    {
      name: 'nothing given',
      ball: lobed(),
      says: /4 noses, one of them toward the CG mark.*45°.*lobes and lobeFromMarkDeg/,
    },
    { name: 'the shape not known', ball: unshaped as Ball, says: /4 noses, one of them toward the CG mark/ },
    {
      name: 'their number given',
      ball: lobed({ lobes: 3 }),
      says: /3 noses, one of them.*60°.*set lobeFromMarkDeg/,
    },
    {
      name: 'their direction given',
      ball: lobed({ lobeFromMarkDeg: 0 }),
      says: /assumed to have 4 noses; set lobes/,
    },
  ])('$name', ({ ball, says }) => expect(assumed(ball)).toMatch(says));

  test('and nothing is said when both are given, or the core is plain', () => {
    expect(assumed(lobed({ lobes: 4, lobeFromMarkDeg: 0 }))).not.toMatch(/nose/);
    expect(assumed(plainBall)).not.toMatch(/nose/);
  });
});

test.each([
  { name: 'two noses', given: { coreShape: 'lobed', lobes: 2 }, fault: /must be 3 to 6/ },
  { name: 'half a nose', given: { coreShape: 'lobed', lobes: 4.5 }, fault: /whole number/ },
  {
    name: 'noses on a plain core',
    given: { coreShape: 'plain', lobes: 4 },
    fault: /unless coreShape is "lobed"/,
  },
  {
    name: 'noses on a core of unknown shape',
    given: { coreShape: undefined, lobes: 4 },
    fault: /unless coreShape is "lobed"/,
  },
])('a ball record with $name is refused', ({ given, fault }) => {
  const record = { ...plainBall, ...given };
  const { error } = ballSchemaFor(record).safeParse(record);
  expect(error?.issues.map(({ message }) => message).join()).toMatch(fault);
});
