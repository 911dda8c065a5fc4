import { describe, expect, test } from 'vitest';
import { fromKeys } from '../../src/base/from-keys.js';
import { NOTICEABLE } from '../../src/explain/noticeable.js';
import { type ReasonFacts, reasons } from '../../src/explain/reasons.js';
import type { CausesAnswer, CausesOf, TargetAnswer } from '../../src/records/answers/answer.js';
import { CAUSES, type Cause } from '../../src/records/answers/statements/ids.js';
import { SHARED_IDS } from '../../src/records/schemas/reaction-numbers.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { sayAll } from '../../src/report/wording/say.js';
import { reaction, recommendAnswer } from '../support/recommend-answer.js';

const { shares: madeUp } = recommendAnswer.layouts[0]!;
const { drilled } = recommendAnswer.middle;

const NO_SHARES = { total: 0, drillingAngle: 0, pinToPap: 0, valAngle: 0 };
/** Nothing is shared out. */
const shares = fromKeys(Object.keys(madeUp) as readonly (keyof typeof madeUp)[], () => NO_SHARES);

/** A difference all of which one cause makes, and that goes with it. */
const allBy = (cause: Cause | null, total: number): CausesOf => ({
  total,
  ...fromKeys(CAUSES, (each) => (each === cause ? total : 0)),
  without: fromKeys(CAUSES, (each) => (each === cause ? 0 : total)),
});

const NO_CAUSES: CausesAnswer = {
  score: allBy(null, 0),
  ...fromKeys(SHARED_IDS, () => allBy(null, 0)),
  atUsualFinish: null,
  byDrillingAngle: null,
};

const hookStart: TargetAnswer = {
  wish: 'hookStart',
  step: 4,
  reading: 'hookStartFt',
  value: 38.6,
  attainable: { low: 34, high: 40 },
};
const totalHook: TargetAnswer = {
  wish: 'totalHook',
  step: 2,
  reading: 'totalHookBoards',
  value: 12,
  attainable: { low: 8, high: 18 },
};

const FLARE_START = { perTurnIn: 0.3, share: 0.6 };

/** A layout that does as the usual middle one does, but for what is given. */
const facts = (given: Partial<ReasonFacts> = {}): ReasonFacts => ({
  families: ['plain'],
  hasMark: true,
  undrilled: { differentialIn: drilled.differentialIn, intermediateDifferentialIn: 0 },
  drilled,
  reaction,
  flareStart: FLARE_START,
  middle: { drilled, reaction, flareStart: FLARE_START },
  shares,
  causes: NO_CAUSES,
  targets: [],
  pinToPapIn: 5,
  next: null,
  score: 80,
  ...given,
});

/** The one reason in which all of these stand. */
function reasonWith(given: Partial<ReasonFacts>, ...all: readonly RegExp[]): string {
  const lines = sayAll(reasons(facts(given)), UNITS.trade);
  const found = lines.filter((line) => all.every((each) => each.test(line)));
  expect(found, lines.join('\n')).toHaveLength(1);
  return found[0]!;
}

const FLARES = /the ball flares/;

describe('reasons: flare beside that of the usual middle layout', () => {
  const flaring = (flareIn: number, soonerFt = 0): string =>
    reasonWith(
      {
        reaction: { ...reaction, flareIn },
        middle: { drilled, reaction: { ...reaction, flareIn: 4 }, flareStart: FLARE_START },
        causes: { ...NO_CAUSES, hookStartFt: allBy('flare', -soonerFt) },
      },
      FLARES,
    );

  test('0.6 in above it is more, 0.6 in below it is less', () => {
    expect(flaring(4.6)).toMatch(/4\.6 in, 0\.6 in more than/);
    expect(flaring(3.4)).toMatch(/3\.4 in, 0\.6 in less than/);
  });

  test('4 hundredths of an inch are no difference, 6 are one', () => {
    expect(flaring(4.04)).toMatch(/as much as/);
    expect(flaring(3.96)).toMatch(/as much as/);
    expect(flaring(4.06)).toMatch(/more than/);
    expect(flaring(3.94)).toMatch(/less than/);
  });

  test('the first turn of the axis is told where it goes with a noticeable difference', () => {
    const startOf = (flareIn: number, perTurnIn: number): string =>
      reasonWith(
        {
          reaction: { ...reaction, flareIn },
          flareStart: { ...FLARE_START, perTurnIn },
          middle: { drilled, reaction: { ...reaction, flareIn: 4 }, flareStart: FLARE_START },
        },
        FLARES,
      );
    expect(startOf(4.6, 0.35)).toContain('moves the axis by 0.35 in, with the usual layout by 0.30 in.');
    expect(startOf(3.4, 0.25)).toContain('moves the axis by 0.25 in, with the usual layout by 0.30 in.');
    for (const [flareIn, perTurnIn] of [
      [4.6, 0.25], // more flare from a smaller first turn
      [3.4, 0.35],
      [4.04, 0.35], // no more flare
    ] as const)
      expect(startOf(flareIn, perTurnIn)).not.toContain('first turn');
  });

  test('grips more or less only where flare’s own part of the hook start is sooner with more of it, or later with less', () => {
    expect(flaring(4.6, 0.2)).toMatch(/More flare brings more clean cover/);
    expect(flaring(3.4, -0.2)).toMatch(/Less flare rolls more of each turn/);
    expect(flaring(4.6, 0.2)).toMatch(/moves hook start by -0\.2 ft/);
    for (const [flareIn, soonerFt] of [
      [4.6, -0.2], // more, and yet later
      [3.4, 0.2], // less, and yet sooner
      [4.6, 0.14], // too little to ask for its cause: under 0.15 ft
      [3.4, -0.14],
      [4.04, 0.2], // no more flare
    ] as const)
      expect(flaring(flareIn, soonerFt)).not.toMatch(/clean cover|own oil/);
  });
});

describe('reasons: total differential', () => {
  const keptBy = (kept: number): string =>
    reasonWith(
      { undrilled: { differentialIn: drilled.differentialIn - kept, intermediateDifferentialIn: 0 } },
      FLARES,
    );
  test('it is said from where to where, and that it is kept where both read alike', () => {
    const shown = (value: number): string => value.toFixed(3);
    const { differentialIn } = drilled;
    expect(keptBy(0.002)).toContain(`from ${shown(differentialIn - 0.002)} to ${shown(differentialIn)} in`);
    expect(keptBy(-0.002)).toContain(`from ${shown(differentialIn + 0.002)} to ${shown(differentialIn)} in`);
    expect(keptBy(0)).toContain(`keeps the total differential at ${shown(differentialIn)} in`);
  });
});

test.each([
  [2.85, false],
  [2.9, true],
  [3.375, true],
  [3.85, true],
  [3.9, false],
])('reasons: a pin %s in from the PAP lies where flare is greatest: %s', (pinToPapIn, isNear) => {
  expect(/3 3\/8/.test(reasonWith({ pinToPapIn }, FLARES))).toBe(isNear);
});

test('reasons: a pin near 3 3/8 in never lies where flare is greatest beside less flare than usual', () => {
  const near = (flareIn: number): string =>
    reasonWith(
      {
        pinToPapIn: 3.375,
        reaction: { ...reaction, flareIn },
        middle: { drilled, reaction: { ...reaction, flareIn: 4 }, flareStart: FLARE_START },
      },
      FLARES,
    );
  expect(near(4.6)).toMatch(/3 3\/8/);
  expect(near(3.4)).not.toMatch(/3 3\/8/);
});

describe('reasons: what makes most of a difference', () => {
  const about = (hookStartFt: CausesOf, given: Partial<ReasonFacts> = {}): string[] =>
    sayAll(
      reasons(facts({ targets: [hookStart], causes: { ...NO_CAUSES, hookStartFt }, ...given })),
      UNITS.trade,
    ).filter((line) => /of that/.test(line));
  const part = (total: number, centre: number, without: number): CausesOf => ({
    ...allBy(null, total),
    centre,
    without: { centre: without, flare: total, inertia: total },
  });

  test('is named with its size and with what would be left', () => {
    const [line] = about(part(-0.6, -0.5, -0.1));
    expect(line).toMatch(
      /0\.6 ft earlier than.*Most of that, 0\.5 ft.*centre of mass.*static weight.*0\.1 ft earlier/,
    );
    expect(about(allBy('flare', 0.6))[0]).toMatch(
      /0\.6 ft later than.*All of that comes from.*own oil.*no different/,
    );
    expect(about(allBy('inertia', 0.6))[0]).toMatch(/RG and differentials/);
  });
  test('must be more than half of the difference, and at least half must go without it', () => {
    expect(about(part(0.6, 0.31, 0.29))).toHaveLength(1);
    expect(about(part(0.6, 0.29, 0.29))).toEqual([]);
    expect(about(part(0.6, 0.31, 0.31))).toEqual([]);
    expect(about(part(0.6, 0.8, -0.3))[0]).toMatch(
      /0\.6 ft later.*More than all of that, 0\.8 ft,.*0\.3 ft earlier/,
    );
    expect(about(part(0.6, -0.8, -0.3))).toEqual([]); // it works against the difference
  });
  test('is not asked for where the difference is under 0.15 ft, 0.01 deg/ft, 0.3 boards, or in what was not wished for', () => {
    expect(about(allBy('centre', 0.14))).toEqual([]);
    expect(about(allBy('centre', 0.16))).toHaveLength(1);
    const hook = (boards: number, targets: readonly TargetAnswer[]): string[] =>
      about(allBy(null, 0), {
        targets,
        causes: { ...NO_CAUSES, totalHookBoards: allBy('centre', boards) },
      });
    expect(hook(0.29, [totalHook])).toEqual([]);
    expect(hook(0.31, [totalHook])).toHaveLength(1);
    expect(hook(0.31, [hookStart])).toEqual([]);
    expect(hook(0.31, [])).toHaveLength(1); // no wish: hook start and total hook
  });
  test('least sizes are passed in', () => {
    const causes = { ...NO_CAUSES, hookStartFt: allBy('centre', 0.6) };
    const codes = (hookStartFt: number): string[] =>
      reasons(facts({ targets: [hookStart], causes }), { ...NOTICEABLE, hookStartFt }).map(
        ({ code }) => code,
      );
    expect(codes(0.59)).toContain('cause-of-difference');
    expect(codes(0.61)).not.toContain('cause-of-difference');
  });
  test('the finish is named where most of the difference goes with the usual one', () => {
    const said = (left: number): string[] =>
      sayAll(
        reasons(
          facts({
            targets: [hookStart],
            causes: {
              ...NO_CAUSES,
              hookStartFt: allBy('centre', 0.6),
              atUsualFinish: {
                grit: 500,
                usualGrit: 2000,
                ...fromKeys(SHARED_IDS, () => 0),
                hookStartFt: left,
              },
            },
          }),
        ),
        UNITS.trade,
      ).filter((line) => /finish/.test(line));
    expect(said(0.2)).toHaveLength(1);
    expect(said(0.2)[0]).toMatch(
      /2000 grit instead of 500, it would be 0\.2 ft later instead of 0\.6 ft later/,
    );
    expect(said(0.31)).toEqual([]);
  });
});

describe('reasons: the drilling angle', () => {
  const turned = (score: number, withCentreHeld: number): Partial<ReasonFacts> => ({
    causes: {
      ...NO_CAUSES,
      byDrillingAngle: { score, withCentreHeld, movesOz: { top: 0.1, side: -0.4, finger: 0.3 } },
    },
  });
  const said = (given: Partial<ReasonFacts>): string => sayAll(reasons(facts(given)), UNITS.trade).join('\n');

  test('works through static weight where at least half of its two points or more goes with the centre of mass held', () => {
    expect(said(turned(6, 2.9))).toMatch(
      /\+6\.0 points; if the centre of mass stays where it was, \+2\.9\..*side weight by -0\.4 oz/,
    );
    expect(said(turned(-6, 1))).toMatch(/through static weight/);
    expect(said(turned(6, 3.1))).not.toMatch(/through static weight/);
    expect(said(turned(1.9, 0))).not.toMatch(/through static weight/);
  });
  test('on a plain core the mark hardly matters only where the drilling angle changes neither score nor shot', () => {
    const HARDLY = /hardly matters/;
    const byAngle = { ...NO_SHARES, drillingAngle: 2.1 };
    expect(said({})).toMatch(HARDLY);
    for (const given of [
      turned(6, 2.9),
      { shares: { ...shares, score: byAngle } },
      { shares: { ...shares, totalHookBoards: { ...NO_SHARES, drillingAngle: -0.31 } } },
    ]) {
      expect(said(given)).not.toMatch(HARDLY);
      expect(said(given)).toMatch(/moves the centre of mass/);
    }
  });
});

describe('reasons: the next layout', () => {
  const next = (score: number, given: Partial<typeof reaction>): string =>
    reasonWith(
      {
        targets: [hookStart, totalHook],
        reaction: { ...reaction, hookStartFt: 38.6, totalHookBoards: 12 },
        next: {
          text: '50 x 4 x 40',
          score,
          reaction: { ...reaction, hookStartFt: 38.6, totalHookBoards: 12, ...given },
        },
      },
      /50 x 4 x 40/,
    );
  test('scores lower or higher, by the difference', () => {
    expect(next(77.5, {})).toMatch(/2\.5 lower/);
    expect(next(81.2, {})).toMatch(/1\.2 higher/);
  });
  test('is worst in the wish that it misses by the greater share of what is attainable', () => {
    // 0.9 of 6 ft are 0.15; 1.3 of 10 boards 0.13, and 1.7 are 0.17
    expect(next(77.5, { hookStartFt: 37.7, totalHookBoards: 13.3 })).toMatch(/hook ?start.*37\.7.*38\.6/i);
    expect(next(77.5, { hookStartFt: 37.7, totalHookBoards: 13.7 })).toMatch(/total ?hook.*13\.7.*12/i);
    expect(next(77.5, {})).not.toMatch(/hook ?start|total ?hook/i);
    // no number is named that two layouts share as far as anyone would notice
    expect(next(77.5, { hookStartFt: 38.5 })).not.toMatch(/hook ?start/i);
    expect(next(77.5, { hookStartFt: 38.4 })).toMatch(/hook ?start/i);
  });
});

test('reasons: a wish stands beside what it asks for here and what the usual middle layout gives', () => {
  const line = reasonWith(
    {
      targets: [hookStart],
      middle: { drilled, reaction: { ...reaction, hookStartFt: 35.8 }, flareStart: FLARE_START },
    },
    /hook ?start/i,
    /wish/,
  );
  expect(line).toMatch(/38\.2.*38\.6.*35\.8/);
});

test('reasons: shares of the score are told by the number of the layout that brings them', () => {
  const score = { total: 9, pinToPap: 5.1, valAngle: -1.3, drillingAngle: 5.2 };
  const said = { shares: { ...shares, score } };
  expect(reasonWith(said, /points/)).toMatch(/9\.0.*pin-to-PAP.*5\.1.*VAL.*-1\.3.*drilling angle.*5\.2/);
  expect(reasonWith({ ...said, hasMark: false }, /points/)).not.toMatch(/drilling angle/);
});

test('reasons: the same points are told by cause', () => {
  const score = { ...allBy(null, 9), centre: 7.2, flare: 2.1, inertia: -0.3 };
  const shared = { shares: { ...shares, score: { total: 9, drillingAngle: 4, pinToPap: 3, valAngle: 2 } } };
  expect(reasonWith({ ...shared, causes: { ...NO_CAUSES, score } }, /points/)).toMatch(
    /by cause.*centre of mass \+7\.2.*flare \+2\.1.*-0\.3/,
  );
  expect(reasonWith({ ...shared, causes: null }, /points/)).not.toMatch(/by cause/);
});

test('reasons: the usual layout shares out no points with itself', () => {
  expect(reasons(facts()).map(({ code }) => code)).not.toContain('shares-of-score');
});
