import { expect, test } from 'vitest';
import { oddDay } from '../../../src/records/log/odd-day.js';

const today = '2026-03-31';
const shots = [{ pinsBoard: 17 }];

test.each([
  { what: 'today', on: '2026-03-31', codes: [] },
  { what: 'tomorrow', on: '2026-04-01', codes: ['night-to-come'] },
  { what: 'next year', on: '2027-01-02', codes: ['night-to-come'] },
  { what: 'the day it was drilled', on: '2026-01-15', codes: [] },
  { what: 'the day before it was drilled', on: '2026-01-14', codes: ['night-before-drilling'] },
  { what: 'a day to come that was kept before', on: '2026-12-24', codes: [] },
  { what: 'no day', on: undefined, codes: [] },
])('oddDay: $what', ({ on, codes }) => {
  const log = { drilledOn: '2026-01-15', nights: [{ on: '2026-12-24', lane: 'dry', shots }] };
  expect(oddDay(on, log, today).map(({ code }) => code)).toEqual(codes);
});

test('oddDay: of a ball whose drilling has no day, no day is too early', () => {
  expect(oddDay('1999-01-01', { nights: [] }, today)).toEqual([]);
});
