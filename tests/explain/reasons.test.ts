import { describe, expect, test } from 'vitest';
import { type ReasonFacts, reasons } from '../../src/explain/reasons.js';
import type { TargetAnswer } from '../../src/records/answers/answer.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { sayAll } from '../../src/report/wording/say.js';
import { reaction, recommendAnswer } from '../support/recommend-answer.js';

const { shares } = recommendAnswer.layouts[0]!;
const { drilled } = recommendAnswer.middle;
const NO_CENTRE = { hookStartFt: 0, totalHookBoards: 0 };

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

/** A layout that does as the usual middle one does, but for what is given. */
const facts = (given: Partial<ReasonFacts> = {}): ReasonFacts => ({
  families: ['plain'],
  hasMark: true,
  undrilled: { differentialIn: drilled.differentialIn, intermediateDifferentialIn: 0 },
  drilled,
  reaction,
  middle: { drilled, reaction },
  shares,
  centre: { asDrilled: NO_CENTRE, balanced: NO_CENTRE },
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

const FLARES = /flare/i;

describe('reasons: flare beside that of the usual middle layout', () => {
  const flaring = (flareIn: number, soonerFt = 0): string =>
    reasonWith(
      {
        reaction: { ...reaction, flareIn },
        middle: { drilled, reaction: { ...reaction, flareIn: 4 } },
        centre: { asDrilled: NO_CENTRE, balanced: { hookStartFt: -soonerFt, totalHookBoards: 0 } },
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

  test('is named as a cause only where the balanced ball hooks sooner with more of it, or later with less', () => {
    expect(flaring(4.6, 0.2)).toMatch(/More flare brings more clean cover/);
    expect(flaring(3.4, -0.2)).toMatch(/Less flare rolls more of each turn/);
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
  test('two thousandths more are added, two less are taken, under half of one it is kept', () => {
    expect(keptBy(0.002)).toMatch(/adds 0\.002 in/);
    expect(keptBy(-0.002)).toMatch(/takes 0\.002 in/);
    expect(keptBy(0.0004)).toMatch(/keeps/);
    expect(keptBy(-0.0004)).toMatch(/keeps/);
    expect(keptBy(0.0006)).not.toMatch(/keeps/);
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

describe('reasons: the offset of the centre of mass', () => {
  const about = (asDrilled: number, balanced: number): string[] =>
    sayAll(
      reasons(
        facts({
          centre: {
            asDrilled: { hookStartFt: asDrilled, totalHookBoards: 0 },
            balanced: { hookStartFt: balanced, totalHookBoards: 0 },
          },
        }),
      ),
      UNITS.trade,
    ).filter((line) => /cent(re|er).?of.?mass/i.test(line));

  test('is the cause where less than half of a difference is left without it, and both are told', () => {
    const [line] = about(-0.6, -0.2);
    expect(line).toMatch(/-0\.6/);
    expect(line).toMatch(/-0\.2/);
    expect(about(0.6, 0.29)).toHaveLength(1);
    expect(about(0.6, -0.3)).toHaveLength(1); // it even turns round
    expect(about(0.6, 0.31)).toEqual([]);
  });
  test('is not asked for where the difference is under 0.15 ft', () => {
    expect(about(0.14, 0)).toEqual([]);
    expect(about(0.16, 0)).toHaveLength(1);
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
  });
});

test('reasons: a wish stands beside what it asks for here and what the usual middle layout gives', () => {
  const line = reasonWith(
    { targets: [hookStart], middle: { drilled, reaction: { ...reaction, hookStartFt: 35.8 } } },
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
