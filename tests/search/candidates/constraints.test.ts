import { describe, expect, test } from 'vitest';
import { from, INCH, OUNCE, POUND } from '../../../src/base/units.js';
import { markClearanceIn } from '../../../src/search/candidates/candidates.js';
import {
  type Bounds,
  objections,
  rejectByMarks,
  rejectByOutcome,
  staticFindings,
} from '../../../src/search/candidates/constraints.js';
import type { Outcome } from '../../../src/simulate/simulator.js';
import { madeUpOutcome, madeUpSetting } from '../../support/made-up-setting.js';
import { layoutAt } from '../../support/outcomes.js';

const bounds: Bounds = madeUpSetting(() => ({})).setting;
const { ball, practice } = bounds;
const rules: Bounds['rules'] = {
  ...bounds.rules,
  title: 'made-up rules',
  staticWeight: { aboveLb: 10, mostOz: 3 },
};
const held: Bounds = { ...bounds, rules };

const sound = madeUpOutcome({});
const ounces = (weights: Partial<Outcome['statics']>): Outcome => ({
  ...sound,
  statics: {
    ...sound.statics,
    ...Object.fromEntries(Object.entries(weights).map(([k, oz]) => [k, from(oz, OUNCE)])),
  },
});

describe('staticFindings', () => {
  test('names each weight over the limit, either way, and none at it', () => {
    expect(staticFindings(ounces({ top: 2.99, side: -2.99 }), ball, rules)).toEqual([]);
    const found = staticFindings(ounces({ top: -3.01, finger: 3.5, side: 1 }), ball, rules);
    const over = (weight: string, oz: number) => ({
      code: 'static-weight-exceeds',
      params: { weight, ounces: expect.closeTo(oz, 10), mostOz: 3 },
    });
    expect(found).toEqual([over('top', -3.01), over('finger', 3.5)]);
    expect(staticFindings(ounces({ side: 3.01 }), ball, rules)).toHaveLength(1);
  });

  test('has nothing to say of a ball as light as the rule leaves free, nor of one without mass', () => {
    const heavy = ounces({ top: 9 });
    const weighing = (lb: number) => ({ ...ball, published: { ...ball.published, mass: from(lb, POUND) } });
    expect(staticFindings(heavy, weighing(9.99), rules)).toEqual([]);
    expect(staticFindings(heavy, weighing(10), rules)).toEqual([]);
    expect(staticFindings(heavy, weighing(10.01), rules)).toHaveLength(1);
    const massless = { ...heavy, inertia: { ...heavy.inertia, mass: 0 } };
    expect(staticFindings(massless, ball, rules)).toEqual([]);
  });
});

describe('rejectByMarks', () => {
  const layout = layoutAt(60, 4, 40);
  const { pin, marker } = markClearanceIn(layout, ball);
  const asking = (change: Partial<typeof practice>) =>
    rejectByMarks(layout, ball, { ...practice, ...change });
  const none = { leastPinToHoleIn: pin - 0.01, leastMarkerToHoleIn: marker - 0.01 };

  test('bars a pin or a marker nearer to a hole than practice has it, the pin first', () => {
    expect(asking(none)).toBeNull();
    expect(asking({ ...none, leastPinToHoleIn: pin })).toBeNull();
    expect(asking({ ...none, leastMarkerToHoleIn: marker })).toBeNull();
    expect(asking({ ...none, leastPinToHoleIn: pin + 0.01 })?.code).toBe('pin-near-hole');
    expect(asking({ ...none, leastMarkerToHoleIn: marker + 0.01 })?.code).toBe('marker-near-hole');
    expect(asking({ leastPinToHoleIn: 20, leastMarkerToHoleIn: 20 })?.code).toBe('pin-near-hole');
  });
});

describe('rejectByOutcome', () => {
  const beside: Outcome = { ...sound, reachesPocket: false };
  const why = (outcome: Outcome, change: Partial<Bounds> = {}) =>
    rejectByOutcome(outcome, { ...held, ...change })?.code;

  test('has nothing against a sound shot at the pocket', () => {
    expect(why(sound)).toBeUndefined();
  });

  test('bars what is over a rule, with the rule’s name', () => {
    expect(rejectByOutcome(ounces({ top: 4 }), held)).toEqual({
      code: 'static-weight-over-limit',
      params: { ruleSet: 'made-up rules' },
    });
  });

  test('bars a shot that does not reach the pins', () => {
    expect(why({ ...sound, shot: 'gutter' })).toBe('ball-goes-into-gutter');
    for (const shot of ['stopped', 'hops', 'invalid'] as const)
      expect(why({ ...sound, shot })).toBe('ball-stops-short');
  });

  test('bars a shot beside the pocket, unless even the usual layout has no line to it', () => {
    expect(why(beside)).toBe('no-line-to-pocket');
    expect(why(beside, { line: { ...held.line, reachesPocket: false } })).toBeUndefined();
  });

  test('bars rings nearer to a hole than practice has them', () => {
    const clear = (inches: number): Outcome => ({ ...sound, ringClearance: from(inches, INCH) });
    expect(why(clear(practice.leastRingToHoleIn + 0.001))).toBeUndefined();
    expect(why(clear(practice.leastRingToHoleIn - 0.001))).toBe('ring-near-hole');
  });

  test('the search’s objections are those by marks and by the shot, in that order', () => {
    const tight = { ...held, practice: { ...practice, leastPinToHoleIn: 20 } };
    const codes = (outcome: Outcome, at: Bounds) =>
      objections(layoutAt(50), outcome, at).map(({ code }) => code);
    expect(codes({ ...sound, shot: 'gutter' }, tight)).toEqual(['pin-near-hole', 'ball-goes-into-gutter']);
    expect(codes(sound, tight)).toEqual(['pin-near-hole']);
    const loose = { ...held, practice: { ...practice, leastPinToHoleIn: -20, leastMarkerToHoleIn: -20 } };
    expect(codes(sound, loose)).toEqual([]);
  });
});
