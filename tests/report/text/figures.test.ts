import { expect, test } from 'vitest';
import { angle, band, decimals, signed } from '../../../src/report/text/figures.js';
import { pageOf } from '../../support/page.js';

test('decimals and signed: a number that rounds to zero carries no sign', () => {
  expect(decimals(-0.04, 1)).toBe('0.0');
  expect(signed(-0.04, 1)).toBe('0.0');
  expect(signed(0.04, 1)).toBe('0.0');
});

test('signed: a difference says its direction', () => {
  expect([signed(1.26, 1), signed(-1.26, 1)]).toEqual(['+1.3', '-1.3']);
});

test('angle and band: ASCII pages get words and hyphens', () => {
  expect(angle(70, pageOf(80))).toBe('70°');
  expect(angle(70, pageOf(80, { ascii: true }))).toBe('70 deg');
  expect(band({ low: 1, high: 2 }, (x) => decimals(x, 1), pageOf(80, { ascii: true }))).toBe('1.0 - 2.0');
});
