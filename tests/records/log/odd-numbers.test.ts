import { expect, test } from 'vitest';
import { oddHead } from '../../../src/records/log/odd-head.js';
import { nightRemarks } from '../../../src/records/log/odd-night.js';
import { oddNumbers } from '../../../src/records/log/odd-numbers.js';

const release = { mph: 17.5, deviation: 0.6 };

test.each([
  { what: 'usual', shot: { displaySpeedMph: 16.2, breakpointFt: 41 }, release, codes: [] },
  { what: 'as fast as the release, within its scatter', shot: { displaySpeedMph: 18.5 }, release, codes: [] },
  { what: 'km/h for mph', shot: { displaySpeedMph: 26 }, release, codes: ['display-too-fast'] },
  {
    what: 'km/h for mph, of an unknown bowler',
    shot: { displaySpeedMph: 26 },
    release: null,
    codes: ['display-too-fast'],
  },
  { what: 'mph for km/h', shot: { displaySpeedMph: 16.2 / 1.609 }, release, codes: ['display-too-slow'] },
  { what: 'a slow bowler, unknown', shot: { displaySpeedMph: 11 }, release: null, codes: [] },
  { what: 'metres for feet', shot: { breakpointFt: 12.5 }, release, codes: ['breakpoint-near'] },
])('oddNumbers: $what', ({ shot, release, codes }) => {
  expect(oddNumbers(shot, release).map(({ code }) => code)).toEqual(codes);
});

test('oddNumbers: says what the speed would be in the other unit, where that fits the bowler', () => {
  const meant = (displaySpeedMph: number) => oddNumbers({ displaySpeedMph }, release)[0].params;
  expect(meant(26)).toMatchObject({ meantMph: expect.closeTo(26 / 1.609344, 9), releaseMph: 17.5 });
  expect(meant(35)).toMatchObject({ meantMph: null });
  expect(meant(10)).toMatchObject({ meantMph: expect.closeTo(10 * 1.609344, 9) });
});

const lanes = [{ id: 'house-easy', patternFt: 40 }];

test.each([
  { what: 'a lane that is kept', given: { lane: 'house-easy' }, codes: [] },
  { what: 'a lane misspelt', given: { lane: 'hous-easy' }, codes: ['lane-misspelt'] },
  { what: 'a lane by a name of its own', given: { lane: 'Tuesday league' }, codes: [] },
  {
    what: 'another pattern than the record says',
    given: { lane: 'house-easy', patternFt: 44 },
    codes: ['pattern-not-of-lane'],
  },
  { what: 'a foot more than the record says', given: { lane: 'house-easy', patternFt: 41 }, codes: [] },
])('oddHead: $what', ({ given, codes }) => {
  expect(oddHead(given, given, lanes).map(({ code }) => code)).toEqual(codes);
});

test('nightRemarks: breakpoints that do not go with the pattern are told once three are known', () => {
  const night = (feet: readonly number[], patternFt?: number) => ({
    lane: 'house-easy',
    ...(patternFt === undefined ? {} : { patternFt }),
    shots: feet.map((breakpointFt) => ({ breakpointFt })),
  });
  const codes = (...args: Parameters<typeof night>) =>
    nightRemarks(night(...args), 1, 32).map(({ code }) => code);
  expect(codes([47, 46, 48])).toEqual(['breakpoint-not-of-pattern']);
  expect(codes([47, 46])).toEqual([]);
  expect(codes([40, 38, 42])).toEqual([]);
  expect(codes([47, 46, 48], 44)).toEqual([]); // what the bowler says of the oil counts before the record
});
