import { expect, test } from 'vitest';
import { DEGREE, FOOT, from, INCH, MPH, OUNCE, POUND, RPM, to } from '../../src/base/units.js';
import { expectNear } from '../support/expect-near.js';

test.each([
  { name: '60 ft', got: from(60, FOOT), want: 18.288, source: 'international foot, 0.3048 m exactly' },
  {
    name: '15 lb',
    got: from(15, POUND),
    want: 6.80388555,
    source: 'avoirdupois pound, 0.45359237 kg exactly',
  },
  { name: '16 oz', got: from(16, OUNCE), want: 0.45359237, source: 'sixteen ounces a pound' },
  { name: '10 mph', got: from(10, MPH), want: 4.4704, source: 'statute mile, 1609.344 m exactly' },
  { name: '30 rpm', got: from(30, RPM), want: Math.PI, source: 'half a turn a second' },
  { name: '180 degrees', got: from(180, DEGREE), want: Math.PI, source: 'definition' },
])('units: $name in SI ($source)', ({ got, want }) => expectNear(got, want, 4e-15 * Math.abs(want)));

test('to undoes from', () => {
  for (const unit of [INCH, POUND, RPM, DEGREE]) expect(to(from(4.375, unit), unit)).toBeCloseTo(4.375, 14);
});
