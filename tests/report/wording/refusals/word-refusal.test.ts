import { describe, expect, test } from 'vitest';
import type { InputError } from '../../../../src/base/errors.js';
import type { RefusalStatement, Refusals } from '../../../../src/records/refusals/refusal.js';
import { UNITS, type UnitSystem } from '../../../../src/report/text/display-units.js';
import { formatRefusal } from '../../../../src/report/wording/refusals/word-refusal.js';
import { METRIC_BUT_PUBLISHED } from '../../../support/metric-units.js';
import { BALL, SAMPLES } from './refusal-samples.js';

const STATEMENTS = Object.entries(SAMPLES).flatMap(([code, samples]) =>
  samples.map((params) => ({ code, params }) as RefusalStatement),
);

const said = (statement: RefusalStatement, system: UnitSystem): InputError =>
  formatRefusal({ statements: [statement] }, UNITS[system]);

/** What is said of the first sample of a code, or of another of its samples. */
const of = (code: keyof Refusals, system: UnitSystem, i = 0): string =>
  said({ code, params: SAMPLES[code][i] } as RefusalStatement, system).message;

/** Quantities in the trade's units, but for layouts, which are always written in inches. */
const TRADE_UNIT = /(?<! x )(?<![\d.])[\d.]+ (in|ft|lb|oz|mph)\b/;

describe('formatRefusal', () => {
  test.each(['trade', 'metric'] as const)('every refusal has whole words in %s units', (system) => {
    expect(STATEMENTS.length).toBeGreaterThan(Object.keys(SAMPLES).length);
    for (const statement of STATEMENTS) {
      const { code, message, faults, more } = said(statement, system);
      expect(code).toBe(statement.code);
      expect([faults.length, more]).toEqual([1, 0]);
      expect(message, code).not.toMatch(/undefined|NaN|\[object| {2}|\.\./);
      expect(message, code).toMatch(/^\S+( \S+)* must .+; got .+\. \S.+[.?]$/);
    }
  });

  test('in metric nothing but a layout and a person’s own name has a unit of the trade', () => {
    for (const statement of STATEMENTS)
      expect(
        formatRefusal({ statements: [statement] }, METRIC_BUT_PUBLISHED).message.replaceAll(BALL, ''),
        statement.code,
      ).not.toMatch(TRADE_UNIT);
    expect(of('no-such-core', 'trade')).toMatch(TRADE_UNIT); // else nothing was looked for
  });

  test('a person’s own name stays as it is', () => {
    for (const code of ['arcs-clash', 'other-mark', 'no-drilling-angle'] as const)
      for (const system of ['trade', 'metric'] as const) expect(of(code, system)).toContain(BALL);
  });

  test('more refusals than are named are counted', () => {
    const statements = Array.from({ length: 50 }, () => STATEMENTS[0]!);
    expect(formatRefusal({ statements, source: 'core.json' }, UNITS.trade)).toMatchObject({
      more: 30,
      source: 'core.json',
    });
  });
});

// inch 25.4 mm, pound 0.45359237 kg, ounce a sixteenth of it (1959 agreement)
test.each<{ code: keyof Refusals; sample?: number; trade: string; metric: string }>([
  { code: 'no-such-core', trade: 'got 2.4 in, with which', metric: 'got 2.4 in, with which' },
  {
    code: 'no-such-core',
    trade:
      'kept: RG 2.46 in; or differential 0.048 in; or intermediate differential 0.012 in; or weight 15.5 lb; or top weight 3.25 oz; or pin to CG 3.50 in. The RG has the least to change',
    metric:
      'kept: RG 2.46 in; or differential 0.048 in; or intermediate differential 0.012 in; or weight 7.03 kg; or top weight 92 g; or pin to CG 88.9 mm. The RG has the least to change',
  },
  {
    code: 'no-such-core',
    sample: 2,
    trade:
      "ball.weightLb must go with the ball's other numbers in a plain or lobed core; got 8 lb, with which",
    metric: 'got 3.63 kg, with which',
  },
  {
    code: 'spans-too-short',
    trade: 'got spans 0.5 and 0.625 in, bridge 1 in.',
    metric: 'got spans 12.7 and 15.9 mm, bridge 25.4 mm.',
  },
  {
    code: 'vent-impossible',
    sample: 1,
    trade: 'a vent into "thumb" from 0.2 in over, -2.7 in up, 0.5 in deep',
    metric: 'a vent into "thumb" from 5.1 mm over, -68.6 mm up, 12.7 mm deep',
  },
  {
    code: 'part-density',
    trade: 'got 9.00 g/cc: cover 3.2 lb and core 9.5 lb, which leave 1.3 lb for the filler: 0.20 g/cc.',
    metric: 'got 9.00 g/cc: cover 1.46 kg and core 4.31 kg, which leave 0.59 kg for the filler: 0.20 g/cc.',
  },
  {
    code: 'no-filler',
    trade: 'makes a ball of 15.0 lb to 21.5 lb.',
    metric: 'makes a ball of 6.79 kg to 9.75 kg.',
  },
  { code: 'arcs-clash', trade: 'got 2 x 3 x 4 in, where', metric: 'got 2 x 3 x 4 in, where' },
  {
    code: 'arcs-clash',
    sample: 2,
    trade: 'the pin buffer (70.0°) exceeds pin-to-PAP (40.0°)',
    metric: 'the pin buffer (70.0°) exceeds pin-to-PAP (40.0°)',
  },
  {
    code: 'arcs-clash',
    sample: 3,
    trade: 'no marker 90.0° from the pin lies 30.0° from the PAP',
    metric: 'no marker 90.0° from the pin lies 30.0° from the PAP',
  },
  { code: 'part-outside', trade: 'within 88.8 mm of', metric: 'within 88.8 mm of' }, // the core file's unit
])('formatRefusal: $code says "$metric"', ({ code, sample = 0, trade, metric }) => {
  expect(of(code, 'trade', sample)).toContain(trade);
  expect(of(code, 'metric', sample)).toContain(metric);
});
