import { describe, expect, test } from 'vitest';
import { drilledAnswer } from '../../../src/answer/drilled-answer.js';
import { mapAnswer } from '../../../src/answer/map/map-answer.js';
import { numbersOf } from '../../../src/prepare/mark-of.js';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import { mapAnswerSchema } from '../../../src/records/answers/map-answer.js';
import { withSentences } from '../../../src/report/wording/with-sentences.js';
import { averageBowler, plainBall } from '../../support/problems.js';

const map = (over: Parameters<typeof mapAnswer>[1], ball = plainBall) =>
  mapAnswer({ bowler: averageBowler, ball, around: MIDDLE_LAYOUT }, over);

describe('mapAnswer', () => {
  const plain = map('drilling-angle');
  const lobed = map('drilling-angle', { ...plainBall, coreShape: 'lobed' });

  test('keeps its schema, and each row is what `drilled` says of that layout', () => {
    expect(mapAnswerSchema.parse(withSentences(plain))).toEqual(withSentences(plain));
    const row = plain.rows[3];
    const alone = drilledAnswer(
      { bowler: averageBowler, ball: plainBall, layout: numbersOf(row.layout) },
      { ounce: 'moment' },
    );
    expect(row.drilled).toEqual(alone.drilled);
    expect(row.bands).toEqual(alone.bands);
  });

  test('the mark hardly matters for a plain core and does for a lobed one (common practice, no source)', () => {
    expect(plain.reach.matters).toBe(false);
    expect(lobed.reach.matters).toBe(true);
  });

  test('one threshold for all balls and numbers: what moves less hardly matters, what moves as much or more does', () => {
    const maps = [
      plain,
      lobed,
      map('pin-to-pap'),
      map('buffer'),
      map('drilling-angle', { ...plainBall, differentialIn: 0.02 }),
    ];
    expect(new Set(maps.map(({ reach }) => reach.mattersFrom.in)).size).toBe(1);
    for (const { reach } of maps) {
      const { asymmetry, ...inches } = reach.numbers;
      expect(asymmetry.matters).toBeNull();
      for (const { least, most, matters } of Object.values(inches))
        expect(matters).toBe(most - least >= reach.mattersFrom.in);
      expect(reach.matters).toBe(Object.values(inches).some(({ matters }) => matters));
    }
    expect(new Set(maps.map(({ reach }) => reach.matters)).size).toBe(2);
  });

  test('a core with four equal noses has the same numbers again a quarter turn on, but for the shift to its CG', () => {
    const at = (angle: number) => lobed.rows.find(({ layout }) => layout.drillingAngleDeg === angle);
    for (const angle of [0, 20, 40, 70]) {
      const [here, there] = [at(angle), at(angle + 90)];
      const differ = Math.abs(
        (here?.drilled.intermediateDifferentialIn ?? 0) - (there?.drilled.intermediateDifferentialIn ?? 1),
      );
      expect(differ).toBeLessThan(0.003);
    }
  });

  test('only the number asked for moves, over its range; buffers stop at pin-to-PAP', () => {
    const rows = map('buffer').rows.map(({ layout }) => layout);
    expect(new Set(rows.map((l) => l.drillingAngleDeg))).toEqual(new Set([50]));
    expect(new Set(rows.map((l) => l.pinToPapIn))).toEqual(new Set([4.5]));
    expect(rows.map((l) => l.pinBufferIn)).toEqual(rows.map((_, i) => expect.closeTo(i / 4, 9)));
    expect(rows[rows.length - 1].pinBufferIn).toBeLessThanOrEqual(4.5);
    const pins = map('pin-to-pap').rows.map(({ layout }) => layout.pinToPapIn);
    expect([pins[0], pins[pins.length - 1]]).toEqual([0, 6.75]);
  });

  test('reach and asymmetry are those of the rows; scales are the same for all balls', () => {
    const { numbers } = lobed.reach;
    const all = lobed.rows.map(({ drilled }) => drilled.intermediateDifferentialIn);
    expect([numbers.intermediateDifferentialIn.least, numbers.intermediateDifferentialIn.most]).toEqual([
      Math.min(...all),
      Math.max(...all),
    ]);
    for (const { asymmetry, drilled } of lobed.rows) {
      expect(asymmetry.low).toBeLessThanOrEqual(asymmetry.middle);
      expect(asymmetry.middle).toBeLessThanOrEqual(asymmetry.high);
      // the median of quotients lies near the quotient of medians
      expect(asymmetry.middle).toBeCloseTo(drilled.intermediateDifferentialIn / drilled.differentialIn, 1);
    }
    expect(lobed.scales).toEqual(plain.scales);
    expect(lobed.scales.rgIn).toEqual({ least: 2.46, most: 2.8 }); // as made, by the rule set
  });

  test('balls beside it are drilled alike: one that is the ball itself moves as the ball does, but for fewer cores', () => {
    const beside = [{ kind: 'plain' as const, ball: plainBall }];
    const map = mapAnswer(
      { bowler: averageBowler, ball: plainBall, around: MIDDLE_LAYOUT },
      'buffer',
      undefined,
      beside,
    );
    const own = map.reach.numbers.differentialIn;
    const [{ numbers }] = map.beside;
    expect(Math.abs(numbers.differentialIn.least - own.least)).toBeLessThan(own.bandWidth);
    expect(Math.abs(numbers.differentialIn.most - own.most)).toBeLessThan(own.bandWidth);
  });
});
