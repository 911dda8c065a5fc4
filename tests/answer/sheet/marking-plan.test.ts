import { describe, expect, test } from 'vitest';
import { markingPlan } from '../../../src/answer/sheet/marking-plan.js';
import { MILLIMETRE_IN, SIXTEENTH } from '../../../src/base/tape-reading.js';
import { ballProblem } from '../../../src/prepare/ball-problem.js';
import type { Ball } from '../../../src/records/schemas/ball.js';
import type { Bowler } from '../../../src/records/schemas/bowler.js';
import { parseLayout } from '../../../src/records/text/layout-text.js';
import { averageBowler, plainBall } from '../../support/problems.js';

const planOf = (
  text: string,
  bowler: Partial<Bowler> = {},
  ball: Partial<Ball> = {},
  tapeStepIn = SIXTEENTH,
) => {
  const of = { ...averageBowler, ...bowler } as Bowler;
  return markingPlan(
    parseLayout(text),
    of,
    ballProblem({ ...plainBall, ...ball } as Ball, of, 'moment'),
    tapeStepIn,
  );
};

describe('markingPlan', () => {
  test('the held example: pin away, CG mark toward you, the PAP of a right-hander with the pin above lies to the right', () => {
    const [pap] = planOf('70 x 4 1/2 x 30').steps;
    expect(pap).toMatchObject({ mark: 'PAP', draw: ['pin-to-pap'] });
    for (const way of pap!.ways)
      expect(way).toMatchObject({ hold: { away: 'pin', toward: 'CG mark' }, side: 'right' });
    expect(pap!.ways[1]).toMatchObject({
      kind: 'turn',
      at: 'pin',
      from: 'CG mark',
      deg: 70,
      inches: 4.5,
      way: 'on',
    });
  });

  test('lengths are given to what the tape is read to: sixteenths, or whole millimetres', () => {
    const lengths = (tapeStepIn: number): number[] =>
      planOf('70 x 4 1/2 x 30', {}, {}, tapeStepIn).steps.flatMap(({ ways }) =>
        ways.flatMap((way) =>
          way.kind === 'arcs' ? way.arcs.map(({ inches }) => inches) : 'inches' in way ? [way.inches] : [],
        ),
      );
    const [trade, metric] = [lengths(SIXTEENTH), lengths(MILLIMETRE_IN)];
    expect(trade.length).toBeGreaterThan(5);
    for (const inches of trade) expect((16 * inches) % 1).toBe(0);
    for (const [i, inches] of metric.entries()) {
      expect(25.4 * inches).toBeCloseTo(Math.round(25.4 * inches), 9);
      expect(Math.abs(inches - trade[i]!)).toBeLessThan(1 / 32 + 0.5 / 25.4 + 1e-9);
    }
    expect(metric).not.toEqual(trade);
  });

  test('a left-hander’s ball has the same numbers on the other side', () => {
    const [right, left] = (['right', 'left'] as const).map((hand) => planOf('70 x 4 1/2 x 30', { hand }));
    const other = { left: 'right', right: 'left' } as const;
    expect(left!.steps.map(({ ways }) => ways.map((way) => ('side' in way ? way.side : null)))).toEqual(
      right!.steps.map(({ ways }) => ways.map((way) => ('side' in way && way.side ? other[way.side] : null))),
    );
    expect(left!.readBack).toEqual(right!.readBack);
  });

  test('arcs come first where they cross at 30° or more, second from 15°, and are left out below', () => {
    for (let drilling = 5; drilling <= 175; drilling += 10) {
      for (const { ways } of planOf(`${drilling} x 4 1/2 x 40`).steps)
        ways.forEach((way, i) => {
          if (way.kind !== 'arcs') return;
          expect(way.crossingDeg).toBeGreaterThanOrEqual(15);
          expect(way.crossingDeg >= 30).toBe(i === 0);
        });
    }
  });

  test('the grip centre whose arcs cross flat is found by the layout’s own angle: VAL first, then square to it', () => {
    const { steps, error } = planOf('50 x 1 1/2 x 75', { pap: { overIn: 5, upIn: 0.5 } });
    expect(steps.map(({ mark }) => mark)).toEqual(['PAP', 'VAL on the midline', 'grip centre']);
    expect(steps[1]!.ways[0]).toMatchObject({
      kind: 'turn',
      at: 'PAP',
      from: 'pin',
      deg: 75,
      way: 'down',
      inches: 0.5,
    });
    expect(steps[2]!.ways[0]).toMatchObject({ kind: 'turn', deg: 90, inches: 5, side: 'left' });
    expect(Math.abs(error.valAngleDeg!)).toBeLessThan(1);
  });

  test('a pin on the PAP is said to be the same point, and no angle is made up', () => {
    const { steps, readBack } = planOf('50 x 0 x 35');
    expect(steps[0]!.ways).toEqual([{ kind: 'same-point', as: 'pin', offIn: 0 }]);
    expect(readBack).toMatchObject({ drillingAngleDeg: null, valAngleDeg: null, pinToPapIn: 0 });
  });

  test('with the CG on the pin the PAP may lie in any direction from it', () => {
    const { given, steps, readBack, error } = planOf('50 x 4 x 35', {}, { pinToCgIn: 0 });
    expect(given).toEqual(['pin']);
    expect(steps[0]!.ways[0]).toMatchObject({ kind: 'any-direction', from: 'pin', inches: 4 });
    expect([readBack.drillingAngleDeg, error.drillingAngleDeg]).toEqual([null, null]);
    expect(Math.abs(readBack.valAngleDeg! - 35)).toBeLessThan(1);
  });

  test('a PAP on the midline needs no further mark for the midline, and every line is drawn once', () => {
    const { steps } = planOf('60 x 4 x 40', { pap: { overIn: 5, upIn: 0 } });
    expect(steps.map(({ mark }) => mark)).not.toContain('VAL on the midline');
    expect(steps.flatMap(({ draw }) => draw).sort()).toEqual(['centre-line', 'midline', 'pin-to-pap', 'val']);
  });
});
