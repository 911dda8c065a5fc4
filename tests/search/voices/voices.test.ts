import { describe, expect, test } from 'vitest';
import { BOARD } from '../../../src/base/constants.js';
import { FOOT, from, INCH } from '../../../src/base/units.js';
import { BELIEFS } from '../../../src/records/shared/beliefs.js';
import type { LayoutNumbers } from '../../../src/records/text/layout-text.js';
import { score } from '../../../src/search/scoring/score.js';
import { targetsOf } from '../../../src/search/scoring/target.js';
import { type BeliefSizes, beliefEffects } from '../../../src/search/voices/belief-effects.js';
import type { LayoutQuantities } from '../../../src/search/voices/layout-quantities.js';
import { physicsVoice } from '../../../src/search/voices/physics-voice.js';
import { practiceScore } from '../../../src/search/voices/practice-voice.js';
import { NOMINAL } from '../../../src/search/voices/voice.js';
import { weighedVoice } from '../../../src/search/voices/weighed-voice.js';
import { layoutAt, outcomeOf } from '../../support/outcomes.js';

/** As if drilling changed nothing: quantities are the layout's own numbers. */
const quantitiesOf = ({ drillingAngleDeg, pinToPapIn, valAngleDeg }: LayoutNumbers): LayoutQuantities => ({
  drillingAngleDeg,
  pinToPapIn,
  valAngleDeg,
  markToPapIn: 4,
  differentialIn: 0.035 + (drillingAngleDeg - 50) / 10_000,
  intermediateDifferentialIn: 0.01,
  rgIn: 2.54,
  finishGrit: 2000,
});
const USUAL = layoutAt(50);
const effectsOf = (layout: LayoutNumbers) => beliefEffects(quantitiesOf(layout), quantitiesOf(USUAL));
const NONE: BeliefSizes = BELIEFS.map(() => 0);
const only = (id: string, size = 1): BeliefSizes => BELIEFS.map((belief) => (belief.id === id ? size : 0));

const want = { hookStart: 5, sharpness: 3 } as const;
const attained = [20, 35, 50, 65, 80].map((angle, i) => ({
  layout: layoutAt(angle),
  outcome: outcomeOf({ hookStartFt: 37 + i / 5, sharpnessDegPerFt: 0.38 + i / 100 }),
}));
const byPhysics = targetsOf(
  want,
  attained.map(({ outcome }) => outcome),
);
const shot = outcomeOf({ hookStartFt: 37.4, sharpnessDegPerFt: 0.39 });

describe('physicsVoice', () => {
  test('passes shots on as they are, and aims for what it was given in every world', () => {
    const voice = physicsVoice(byPhysics);
    const effects = voice.effectsOf(USUAL);
    expect(voice.outcome(effects, 3, shot)).toBe(shot);
    expect(voice.reached(effects, 3, shot)).toBe(shot);
    for (const world of [NOMINAL, 0, 9]) expect(voice.targetsIn(world)).toBe(byPhysics);
  });
});

describe('weighedVoice', () => {
  const drawn = [NONE, only('drilling-angle-later'), only('differential-flares-more', 0.5), NONE];
  const expected = only('drilling-angle-later', 0.25);
  const voice = weighedVoice(want, attained, effectsOf, drawn, expected);
  const far = layoutAt(80);

  test('in a world in which no belief holds it is exactly physics: numbers, targets and scores', () => {
    for (const { layout, outcome } of attained) {
      const effects = voice.effectsOf(layout);
      for (const world of [0, 3]) {
        expect(voice.outcome(effects, world, outcome)).toEqual(outcome);
        const { shot: ended, reaction } = voice.reached(effects, world, outcome);
        expect(ended).toBe(outcome.shot);
        for (const key of ['hookStart', 'sharpness', 'totalHook', 'entryAngle'] as const)
          expect(reaction[key]).toBe(outcome.reaction[key]);
        expect(voice.targetsIn(world)).toEqual(byPhysics);
        expect(score(voice.outcome(effects, world, outcome), voice.targetsIn(world))).toBe(
          score(outcome, byPhysics),
        );
      }
    }
  });

  test('one belief in full size moves its number by the amount worked out by hand, and no other', () => {
    const { reaction, ...rest } = voice.outcome(voice.effectsOf(far), 1, shot);
    const { hookStart, ...others } = reaction;
    const { hookStart: before, ...same } = shot.reaction;
    expect(hookStart - before).toBeCloseTo(from(1.15 / 2, FOOT), 12); // 30 of 60°
    expect(others).toEqual(same);
    const { reaction: _, ...untouched } = shot;
    expect(rest).toEqual(untouched);
    expect(voice.reached(voice.effectsOf(far), 1, shot).reaction.hookStart).toBe(hookStart);
  });

  test('flare moves too, which no score looks at', () => {
    const { reaction } = voice.outcome(voice.effectsOf(far), 2, shot);
    // 0.003 of 0.030 in, half the size
    expect(reaction.flare - shot.reaction.flare).toBeCloseTo(from(0.2 * 0.1 * 0.5, INCH), 12);
    expect({ ...reaction, flare: 0 }).toEqual({ ...shot.reaction, flare: 0 });
  });

  test('the usual layout is moved in no world', () => {
    for (const world of [NOMINAL, 0, 1, 2, 3])
      expect(voice.outcome(voice.effectsOf(USUAL), world, shot)).toEqual(shot);
  });

  test('in the nominal world a belief counts by its chance and the middle of its sizes', () => {
    const { reaction } = voice.outcome(voice.effectsOf(far), NOMINAL, shot);
    expect(reaction.hookStart - shot.reaction.hookStart).toBeCloseTo(from(0.25 * (1.15 / 2), FOOT), 12);
  });

  test('a wish aims for what layouts attain with the beliefs of that world', () => {
    const laterFt = [-1.15 / 2, -1.15 / 4, 0, 1.15 / 4, 1.15 / 2];
    const moved = attained.map((_, i) =>
      outcomeOf({ hookStartFt: 37 + i / 5 + laterFt[i], sharpnessDegPerFt: 0.38 + i / 100 }),
    );
    for (const [i, target] of targetsOf(want, moved).entries()) {
      const aimed = voice.targetsIn(1)[i];
      expect(aimed).toMatchObject({ wish: target.wish, step: target.step });
      for (const key of ['value', 'low', 'high'] as const) expect(aimed[key]).toBeCloseTo(target[key], 12);
    }
    // the latest of all by physics is not the latest of that world
    expect(voice.targetsIn(1)[0].value).toBeGreaterThan(byPhysics[0].value);
    expect(voice.targetsIn(2)).toEqual(byPhysics); // flare is not wished for
  });

  test('a ball that does not reach the pins stays where it is', () => {
    const lost = outcomeOf({ shot: 'gutter' });
    expect(voice.outcome(voice.effectsOf(far), 1, lost).shot).toBe('gutter');
  });
});

describe('practice alone, when physics knows no difference', () => {
  const grid = [20, 40, 60, 80].flatMap((angle) =>
    [3.375, 4, 4.75, 5.5].flatMap((pin) => [20, 45, 70].map((val) => layoutAt(angle, pin, val))),
  );
  const full: BeliefSizes = BELIEFS.map(() => 1);
  const usual = outcomeOf();
  const best = (of: (layout: LayoutNumbers) => number): LayoutNumbers[] => {
    const most = Math.max(...grid.map(of));
    return grid.filter((layout) => of(layout) > most - 1e-9);
  };

  test('the layout with most of what is asked for wins: latest hook', () => {
    const of = practiceScore({ hookStart: 5 }, usual, grid, effectsOf, full);
    const winners = best(of);
    // a larger drilling angle and a pin farther from the PAP make it later; the VAL angle has no part in it
    expect(
      winners.some(({ drillingAngleDeg, pinToPapIn }) => drillingAngleDeg === 80 && pinToPapIn === 5.5),
    ).toBe(true);
    for (const { drillingAngleDeg, pinToPapIn } of winners)
      expect(drillingAngleDeg / 60 + pinToPapIn / 2.125).toBeGreaterThan(80 / 60 + 4.75 / 2.125 - 1e-9);
  });

  test('earliest hook: the other end', () => {
    const of = practiceScore({ hookStart: 1 }, usual, grid, effectsOf, full);
    expect(
      best(of).some(({ drillingAngleDeg, pinToPapIn }) => drillingAngleDeg === 20 && pinToPapIn === 3.375),
    ).toBe(true);
    expect(best(of).some(({ drillingAngleDeg }) => drillingAngleDeg >= 60)).toBe(false);
  });

  test('the score falls with each foot that the beliefs lack to the target', () => {
    const of = practiceScore({ hookStart: 5 }, usual, grid, effectsOf, full);
    const laterFt = ({ drillingAngleDeg, pinToPapIn }: LayoutNumbers): number =>
      1.15 * ((drillingAngleDeg - 50) / 60 + (pinToPapIn - 4.5) / 2.125);
    const order = [...grid].sort((a, b) => laterFt(b) - laterFt(a));
    for (const [i, layout] of order.entries())
      if (i > 0) expect(of(layout)).toBeLessThanOrEqual(of(order[i - 1]) + 1e-9);
    expect(of(order[0])).toBeGreaterThan(of(order[order.length - 1]) + 50);
  });

  test('a belief left out decides nothing', () => {
    const noSharpness = practiceScore({ sharpness: 5 }, usual, grid, effectsOf, only('drilling-angle-later'));
    for (const layout of grid) expect(noSharpness(layout)).toBeCloseTo(noSharpness(USUAL), 9);
    const byVal = practiceScore({ sharpness: 5 }, usual, grid, effectsOf, only('val-angle-sharper'));
    expect(best(byVal).every(({ valAngleDeg }) => valAngleDeg === 20)).toBe(true);
  });

  test('units: a board of hook believed is a board', () => {
    const { reaction } = weighedVoice(
      { totalHook: 3 },
      [],
      effectsOf,
      [only('differential-hooks-more')],
      NONE,
    ).outcome(effectsOf(layoutAt(80)), 0, usual);
    expect((reaction.totalHook - usual.reaction.totalHook) / BOARD).toBeCloseTo(0.22, 9); // a tenth of 2.2
  });
});
