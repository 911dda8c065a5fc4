import { expect, test } from 'vitest';
import { wishedChanges } from '../../../src/answer/adjust/wished-changes.js';
import { outcomeOf, SCATTER } from '../../support/outcomes.js';
import { refusalOf } from '../../support/refusal-of.js';

const NOMINAL = outcomeOf({ hookStartFt: 36 });

test('a step where no shot with any layout stays on the lane is refused, with what may be asked instead', () => {
  const asked = { hookStart: { text: 'late', asked: { is: 'step', step: 4 } } } as const;
  const { codes, worded } = refusalOf(() => wishedChanges(asked, {}, NOMINAL, [], SCATTER));
  expect(codes).toEqual(['no-step']);
  expect(worded.message).toContain('hookStart must be "later", "earlier" or a number in ft; got "late"');
});

test('there a number, or more or less, is wanted all the same', () => {
  const more = { hookStart: { text: '3 ft later', asked: { is: 'more', by: 3 } } } as const;
  expect(wishedChanges(more, {}, NOMINAL, [], SCATTER)).toMatchObject([{ wish: 'hookStart', change: 3 }]);
  const number = { hookStart: { text: '41 ft', asked: { is: 'number', number: 41 } } } as const;
  const told = { hookStartFt: { value: 38, from: 'told', deviation: null } } as const;
  expect(wishedChanges(number, told, NOMINAL, [], SCATTER)).toMatchObject([{ change: 3, wanted: 41 }]);
});
