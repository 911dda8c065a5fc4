import { describe, expect, test } from 'vitest';
import { rollAnswer } from '../../../src/answer/roll-answer.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { say } from '../../../src/report/wording/say.js';
import { SMALL_BUDGET } from '../../support/small-budget.js';

const shelf = demoShelf();
const find = <T>(list: readonly { id: string; record: T }[], id: string): T =>
  list.find((each) => each.id === id)!.record;

describe('an oil ring too near to a hole', () => {
  test('names the nearest hole and how near it comes', () => {
    const inputs = {
      // a track this near to the grip runs over its holes
      bowler: { ...find(shelf.bowlers, 'average-right'), axisTiltDeg: 2, pap: { overIn: 6.2, upIn: 0 } },
      ball: find(shelf.balls, 'plain-high'),
      lane: find(shelf.lanes, 'house-easy'),
    };
    let seen = 0;
    for (const pinToPapIn of [3, 4.5]) {
      const layout = { drillingAngleDeg: 50, pinToPapIn, valAngleDeg: 35 };
      const { objections, reaction } = rollAnswer({ ...inputs, layout }, SMALL_BUDGET);
      expect(objections.map(({ code }) => code)).not.toContain('ring-near-hole');
      for (const objection of objections)
        if (objection.code === 'ring-at-hole') {
          seen += 1;
          expect(objection.params.clearanceIn).toBeCloseTo(reaction.ringClearanceIn, 6);
          expect(objection.params.clearanceIn).toBeLessThan(objection.params.leastIn);
          expect(objection.params.hole).toMatch(/^(thumb|middle|ring)$/);
        }
    }
    expect(seen).toBeGreaterThan(0);
  });

  test('is worded with the hole and the distance', () => {
    const params = { hole: 'thumb', clearanceIn: 0.08, leastIn: 0.125 };
    expect(say({ code: 'ring-at-hole', params }, UNITS.trade)).toBe(
      'an oil ring would come within 0.08 in of the thumb hole; 0.13 in is the least that is kept clear',
    );
    expect(say({ code: 'ring-at-hole', params: { ...params, clearanceIn: -0.2 } }, UNITS.trade)).toBe(
      'an oil ring would run over the thumb hole, 0.20 in inside its edge',
    );
  });
});
