import fc from 'fast-check';
import { expect, test } from 'vitest';
import { isUndone, orderRemedies, recommended } from '../../../src/answer/adjust/order-remedies.js';
import { REMEDY_KINDS } from '../../../src/records/answers/statements/adjustments.js';

const remedy = fc.record({
  kind: fc.constantFrom(...REMEDY_KINDS),
  miss: fc.double({ min: 0, max: 5, noNaN: true }),
  verdict: fc.constantFrom('helps', 'no-help', 'unseen'),
});
const remedies = fc.uniqueArray(remedy, { selector: ({ miss }) => miss, maxLength: 20 });

test('the order does not depend on the order in which remedies were tried, and loses none', () => {
  fc.assert(
    fc.property(remedies, fc.infiniteStream(fc.double({ min: 0, max: 1, noNaN: true })), (all, luck) => {
      const keyed = all.map((each) => ({ each, key: luck.next().value as number }));
      const shuffled = keyed.sort((a, b) => a.key - b.key).map(({ each }) => each);
      expect(orderRemedies(shuffled)).toEqual(orderRemedies(all));
      expect(new Set(orderRemedies(all))).toEqual(new Set(all));
    }),
  );
});

test('what helps comes first, and of that what can be undone; none that clearly leaves more stands before one that leaves less', () => {
  fc.assert(
    fc.property(remedies, (all) => {
      const ordered = orderRemedies(all);
      for (const [i, before] of ordered.entries())
        for (const after of ordered.slice(i + 1)) {
          if (before.verdict !== 'helps') expect(after.verdict).not.toBe('helps');
          const isAlike = (before.verdict === 'helps') === (after.verdict === 'helps');
          if (isAlike && !isUndone(before.kind)) expect(isUndone(after.kind)).toBe(false);
          if (isAlike && isUndone(before.kind) === isUndone(after.kind))
            expect(before.miss).toBeLessThan(after.miss + 0.5);
        }
    }),
  );
});

test('recommended is one of each kind at most, each helps, and the drill is last', () => {
  fc.assert(
    fc.property(remedies, (all) => {
      const best = recommended(orderRemedies(all));
      expect(new Set(best.map(({ kind }) => kind)).size).toBe(best.length);
      expect(best.every(({ verdict }) => verdict === 'helps')).toBe(true);
      expect(best.slice(0, -1).every(({ kind }) => isUndone(kind))).toBe(true);
      const helping = new Set(all.filter(({ verdict }) => verdict === 'helps').map(({ kind }) => kind));
      expect(new Set(best.map(({ kind }) => kind))).toEqual(helping);
    }),
  );
});
