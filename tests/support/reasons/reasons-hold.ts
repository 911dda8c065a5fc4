import { mean } from 'simple-statistics';
import { expect } from 'vitest';
import { NOTICEABLE, NOTICEABLE_POINTS } from '../../../src/explain/noticeable.js';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import type { Reason } from '../../../src/records/answers/statements/reasons.js';
import {
  REACTION_NUMBERS,
  SHARED_IDS,
  type SharedId,
  type WishedId,
} from '../../../src/records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../../../src/records/text/layout-text.js';
import { type MixedNumbers, ownMixtures } from './own-mixture.js';
import type { ReasonCase } from './random-case.js';

/** Balls mixed and rolled anew, and those whose line ends farther than a tenth of a board from the pocket. */
export interface Checked {
  rolled: number;
  offPocket: number;
}

/** Numbers that are rolled anew. */
type Id = SharedId | 'score';

type Of<C extends Reason['code']> = Extract<Reason, { code: C }>['params'];

/** Holds every sentence of a case against numbers: those of the answer by sign, causes against balls that are mixed and rolled anew. */
export function reasonsHold({ setting, targets, layout, facts, said }: ReasonCase, checked: Checked): void {
  const { mixed, statics } = ownMixtures(setting, targets);
  const { reaction, middle, causes, shares } = facts;

  /** The difference of two balls, laid down on the same board: the first less the second. */
  const apart = (a: MixedNumbers, b: MixedNumbers) => {
    for (const { fromPocketBoards } of [a, b]) {
      checked.rolled += 1;
      if (fromPocketBoards > 0.1) checked.offPocket += 1;
    }
    expect(a.laydownX).toBe(b.laydownX);
    return (id: Id): number => a[id] - b[id];
  };
  const pure = (of: LayoutNumbers, given: { carriesOil?: boolean; grit?: number } = {}) =>
    mixed({ centreOf: of, inertiaOf: of, ...given });

  /** The difference that is left, by the test's own mixture, with a cause taken away. */
  const leftWithout: Record<Of<'cause-of-difference'>['cause'], () => ReturnType<typeof apart>> = {
    centre: () => apart(mixed({ centreOf: MIDDLE_LAYOUT, inertiaOf: layout }), pure(MIDDLE_LAYOUT)),
    flare: () => apart(pure(layout, { carriesOil: false }), pure(MIDDLE_LAYOUT, { carriesOil: false })),
    inertia: () => apart(mixed({ centreOf: layout, inertiaOf: MIDDLE_LAYOUT }), pure(MIDDLE_LAYOUT)),
  };
  const differs = (reading: WishedId): number => reaction[reading] - middle.reaction[reading];
  const isFound = (difference: (id: Id) => number, id: Id, stated: number): void =>
    expect(difference(id)).toBeCloseTo(stated, 6);

  /** What stands in a sentence about a wished number's difference: the greater or the lesser, by its sign. */
  const wordOf = (reading: WishedId, total: number): string => {
    const { more, less } = REACTION_NUMBERS[reading].compared;
    return ` ${total > 0 ? more : less} than with the usual middle layout`;
  };

  const holds: { readonly [C in Reason['code']]: (params: Of<C>, sentence: string) => void } = {
    'meets-wish': ({ reading, step, found, wanted, usual }) => {
      const target = facts.targets.find((each) => each.reading === reading)!;
      expect({ step, wanted }).toEqual({ step: target.step, wanted: target.value });
      expect({ found, usual }).toEqual({ found: reaction[reading], usual: middle.reaction[reading] });
    },
    'cause-of-difference': ({ reading, total, cause, byCause, without }, sentence) => {
      expect(total).toBeCloseTo(differs(reading), 9);
      expect(Math.abs(total)).toBeGreaterThanOrEqual(NOTICEABLE[reading]);
      expect(sentence).toContain(wordOf(reading, total));
      expect(byCause / total).toBeGreaterThan(0.5);
      expect(without / total).toBeLessThanOrEqual(0.5);
      isFound(leftWithout[cause](), reading, without);
      isFound(apart(pure(layout), pure(MIDDLE_LAYOUT)), reading, total);
    },
    'difference-by-finish': ({ reading, total, left, usualGrit, grit }) => {
      expect(total).toBeCloseTo(differs(reading), 9);
      expect(grit).toBe(setting.problem.grit);
      expect(left / total).toBeLessThanOrEqual(0.5);
      const other = { grit: usualGrit };
      isFound(apart(pure(layout, other), pure(MIDDLE_LAYOUT, other)), reading, left);
    },
    'flare-and-differential': (
      { undrilledIn, drilledIn, flareIn, usualFlareIn, start, grips, peakIn },
      sentence,
    ) => {
      const than = flareIn - usualFlareIn;
      expect(than).toBeCloseTo(reaction.flareIn - middle.reaction.flareIn, 9);
      expect(/ in more than with the usual/.test(sentence)).toBe(than >= 0.05);
      expect(/ in less than with the usual/.test(sentence)).toBe(than <= -0.05);
      const [, from, to] = /differential from (\S+) to (\S+) in;/.exec(sentence) ?? [];
      const shownChange = from === undefined ? 0 : Number(to) - Number(from);
      expect(Math.abs(shownChange - (drilledIn - undrilledIn))).toBeLessThan(0.0011);
      if (start) expect(Math.sign(start.perTurnIn - start.usualPerTurnIn)).toBe(Math.sign(than));
      if (peakIn !== null) {
        expect(Math.abs(layout.pinToPapIn - peakIn)).toBeLessThanOrEqual(0.5);
        expect(than).toBeGreaterThanOrEqual(0);
      }
      expect(/grips more/.test(sentence)).toBe(grips?.how === 'more');
      expect(/grips less/.test(sentence)).toBe(grips?.how === 'less');
      if (!grips) return;
      // more flare starts the hook earlier, less later, by flare's own share
      expect(Math.sign(grips.hookStartFt)).toBe(-Math.sign(than));
      expect(Math.abs(grips.hookStartFt)).toBeGreaterThanOrEqual(NOTICEABLE.hookStartFt);
      isFound(flareShare, 'hookStartFt', grips.hookStartFt);
    },
    'intermediate-without-mark': () => expect(setting.ball.marker).toBe(null),
    'intermediate-of-many-cores': () => expect(facts.families.length).toBeGreaterThan(1),
    'intermediate-of-plain-core': ({ markMatters }, sentence) => {
      expect(/hardly matters/.test(sentence)).toBe(!markMatters);
      if (markMatters) return;
      expect(Math.abs(shares.score.drillingAngle)).toBeLessThan(NOTICEABLE_POINTS);
      for (const id of SHARED_IDS) expect(Math.abs(shares[id].drillingAngle)).toBeLessThan(NOTICEABLE[id]);
      if (causes?.byDrillingAngle)
        isFound(apart(pure(layout), pure(before)), 'score', causes.byDrillingAngle.score);
    },
    'intermediate-of-lobed-core': ({ byDrillingAngleIn }) =>
      expect(byDrillingAngleIn).toBe(shares.intermediateDifferentialIn.drillingAngle),
    'intermediate-of-own-core': ({ byDrillingAngleIn }) =>
      expect(byDrillingAngleIn).toBe(shares.intermediateDifferentialIn.drillingAngle),
    'intermediate-of-asymmetric-core': ({ byDrillingAngleIn }) =>
      expect(byDrillingAngleIn).toBe(shares.intermediateDifferentialIn.drillingAngle),
    'shares-of-score': ({ total, drillingAngle, pinToPap, valAngle, byCause }) => {
      expect((drillingAngle ?? 0) + pinToPap + valAngle).toBeCloseTo(total, 6);
      if (byCause) expect(byCause.centre + byCause.flare + byCause.inertia).toBeCloseTo(total, 6);
      if (byCause) isFound(apart(pure(layout), pure(MIDDLE_LAYOUT)), 'score', total);
    },
    'drilling-angle-moves-centre': ({ points, withCentreHeld, sideOz, fingerOz, topOz }) => {
      expect(Math.abs(points)).toBeGreaterThanOrEqual(NOTICEABLE_POINTS);
      expect(withCentreHeld / points).toBeLessThanOrEqual(0.5);
      isFound(apart(pure(layout), pure(before)), 'score', points);
      const held = mixed({ centreOf: before, inertiaOf: layout });
      isFound(apart(held, pure(before)), 'score', withCentreHeld);
      const [from, to] = [statics(before), statics(layout)];
      for (const [i, ounces] of [sideOz, fingerOz, topOz].entries())
        expect(ounces).toBeCloseTo(to[i]! - from[i]!, 6);
    },
    'next-layout': ({ behind, mostOf }, sentence) => {
      expect(behind).toBeCloseTo(facts.score - facts.next!.score, 9);
      expect(/ lower over/.test(sentence)).toBe(behind >= 0);
      if (!mostOf) return;
      const { value } = facts.targets.find(({ reading }) => reading === mostOf.reading)!;
      expect(Math.abs(mostOf.next - value)).toBeGreaterThan(Math.abs(mostOf.found - value));
      expect(Math.abs(mostOf.next - mostOf.found)).toBeGreaterThanOrEqual(NOTICEABLE[mostOf.reading]);
    },
  };

  /** The layout with the usual drilling angle. */
  const before = { ...layout, drillingAngleDeg: MIDDLE_LAYOUT.drillingAngleDeg };

  /** Flare's part of the hook start: the inertia's change with oil less that without, the mean over both centres of mass. */
  function flareShare(id: Id): number {
    const byInertia = (carriesOil: boolean): number[] =>
      [MIDDLE_LAYOUT, layout].map((centreOf) =>
        apart(
          mixed({ centreOf, inertiaOf: layout, carriesOil }),
          mixed({ centreOf, inertiaOf: MIDDLE_LAYOUT, carriesOil }),
        )(id),
      );
    return mean(byInertia(true)) - mean(byInertia(false));
  }

  for (const { reason, sentence } of said)
    (holds[reason.code] as (params: Reason['params'], sentence: string) => void)(reason.params, sentence);
}
