import { describe, expect, test } from 'vitest';
import { laneAnswer } from '../../src/answer/lane-answer.js';
import { laneAnswerSchema } from '../../src/records/answers/lane-answer.js';
import { type Lane, laneSchema } from '../../src/records/schemas/lane.js';
import { withSentences } from '../../src/report/wording/with-sentences.js';
import { patternOf } from '../../src/simulate/shot-problem.js';
import { NOMINAL_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';
import { houseLane } from '../support/problems.js';
import { said } from '../support/said.js';

const even: Lane = {
  ...houseLane,
  zones: [{ fromFt: 0, toFt: 40, fromBoard: 0, toBoard: 39, units: 20 }],
};
const steep: Lane = {
  ...even,
  zones: [
    { fromFt: 0, toFt: 40, fromBoard: 0, toBoard: 39, units: 5 },
    { fromFt: 0, toFt: 40, fromBoard: 10, toBoard: 29, units: 50 },
  ],
};
const lopsided: Lane = {
  ...even,
  zones: [...even.zones, { fromFt: 0, toFt: 40, fromBoard: 30, toBoard: 39, units: 60 }],
};

describe('a lane, read', () => {
  test('an even film: its amount is film times area, its middle and outside are alike', () => {
    const { oil, says } = laneAnswer(even, 'right');
    // 20 units on 41.5 in × 40 ft; the fade at the end averages out
    expect(oil.total / (20 * (41.5 / 12) * 40)).toBeCloseTo(1, 3);
    expect(oil.middleToOwn).toBeCloseTo(1, 10);
    expect(oil.endsByFoot[0].share).toBeCloseTo(15 / 40, 2);
    expect(said(says)).toMatch(/forgives no miss/);
    expect(said(says)).toContain('Both sides are alike.');
  });

  test('a film ten times as thick in the middle is called forgiving', () => {
    const { oil, says } = laneAnswer(steep, 'right');
    expect(oil.middleToOwn).toBeCloseTo(10, 6);
    expect(said(says)).toMatch(/10\.0 times.*forgiving/);
  });

  test('boards count from the own side: a lopsided lane tells right from left', () => {
    const right = laneAnswer(lopsided, 'right');
    const left = laneAnswer(lopsided, 'left');
    expect(right.film[20].units[0]).toBe(20);
    expect(left.film[20].units[0]).toBe(60);
    expect([...left.film[20].units].reverse()).toEqual(right.film[20].units);
    expect(left.oil.meanUnits.own).toBeCloseTo(right.oil.meanUnits.far, 10);
    expect(said(right.says)).toMatch(/outside boards on the right carry 20 units, on the left 60/);
  });

  test('dry boards have the dry friction, heavy oil the oiled one', () => {
    const { friction } = laneAnswer({ ...steep, frictionDry: 0.21, frictionOiled: 0.03 }, 'right');
    const at = (ft: number, board: number) =>
      friction.find(({ distanceFt }) => distanceFt === ft)?.boards.find((b) => b.board === board)?.friction;
    expect(at(55, 20)).toBeCloseTo(0.21, 12);
    // exp(−50/scale) of the drop is left
    expect(at(15, 20)).toBeCloseTo(0.03 + 0.18 * Math.exp(-50 / NOMINAL_SURFACE.filmScale), 8);
  });

  test('games: what balls took up was carried off or carried down, and it stands among the assumptions', () => {
    const { wear, oil, says, assumptions } = laneAnswer({ ...even, games: 24 }, 'right');
    expect(wear!.takenFromTrack).toBeCloseTo(1 - (1 - NOMINAL_SURFACE.burnPerGame) ** 24, 12);
    expect(wear!.carriedDown + wear!.carriedOff).toBeCloseTo(wear!.takenOfAll, 12);
    const fresh = laneAnswer(even, 'right').oil.total;
    expect(oil.total / fresh).toBeCloseTo(1 - wear!.carriedOff, 3);
    expect(said(says)).toMatch(/24 games/);
    expect(said(assumptions)).toMatch(/Wear: 24 games.*no measured law/);
    expect(said(laneAnswer(even, 'right').assumptions)).not.toMatch(/Wear/);
  });

  test('games on the other side leave this one fresh', () => {
    const own = laneAnswer({ ...even, games: 24, wornSide: 'left' }, 'right');
    expect(own.film[20].units.slice(0, 15)).toEqual(laneAnswer(even, 'right').film[20].units.slice(0, 15));
    const mirrored = laneAnswer({ ...even, games: 24 }, 'left');
    expect(own.film).toEqual(mirrored.film);
  });

  test('0 games are the same lane as none said, to the last bit', () => {
    expect(patternOf({ ...even, games: 0 }, 'right')).toEqual(patternOf(even, 'right'));
    const { lane: _said, ...read } = laneAnswer({ ...even, games: 0 }, 'right');
    const { lane: _unsaid, ...unread } = laneAnswer(even, 'right');
    expect(read).toEqual(unread);
  });

  test('the answer keeps its schema', () => {
    for (const lane of [even, steep, { ...lopsided, games: 9 }])
      for (const hand of ['right', 'left'] as const) {
        const answer = laneAnswer(lane, hand);
        expect(laneAnswerSchema.parse(withSentences(answer))).toEqual(withSentences(answer));
      }
  });
});

describe('lane files', () => {
  const faultsOf = (lane: unknown) =>
    (laneSchema.safeParse(lane).error?.issues ?? []).map(({ path }) => path.join('.'));

  test('a zone beyond the lane, negative friction and a pattern longer than a lane are all told at once', () => {
    const faults = faultsOf({
      ...even,
      patternFt: 70,
      frictionDry: -0.2,
      games: -3,
      zones: [{ fromFt: -1, toFt: 61, fromBoard: -2, toBoard: 40, units: -5 }],
    });
    for (const field of [
      'patternFt',
      'frictionDry',
      'games',
      'zones.0.fromFt',
      'zones.0.toFt',
      'zones.0.fromBoard',
      'zones.0.toBoard',
      'zones.0.units',
    ])
      expect(faults).toContain(field);
  });

  test('friction beyond what a ball may have, a length the zones do not fill, and no zone at all are faults', () => {
    expect(faultsOf({ ...even, frictionDry: 0.41 })).toEqual(['frictionDry']);
    expect(faultsOf({ ...even, frictionDry: 0.4 })).toEqual([]);
    expect(faultsOf({ ...even, frictionOiled: 0.004 })).toEqual(['frictionOiled']);
    expect(faultsOf({ ...even, frictionOiled: 0.005 })).toEqual([]);
    expect(faultsOf({ ...even, patternFt: 44 })).toEqual(['patternFt']);
    expect(faultsOf({ ...even, zones: [] })).toContain('zones');
  });

  test('a bare lane is one zone without oil', () => {
    const bare = { ...even, zones: [{ fromFt: 0, toFt: 40, fromBoard: 0, toBoard: 39, units: 0 }] };
    expect(faultsOf(bare)).toEqual([]);
    const answer = laneAnswer(bare as Lane, 'right');
    expect(answer.oil.total).toBe(0);
    expect(answer.oil.middleToOwn).toBeNull();
    expect(laneAnswerSchema.parse(withSentences(answer))).toEqual(withSentences(answer));
  });
});
