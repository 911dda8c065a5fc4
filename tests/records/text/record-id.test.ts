import { expect, test } from 'vitest';
import { checkedId, idFrom, isId, numbered } from '../../../src/records/text/record-id.js';

test.each([
  ["Kim's ball, 15 lb", 'kim-s-ball-15-lb'],
  ['Müller Örtel', 'muller-ortel'],
  ['Søren Łukasz Groß', 'soren-lukasz-gross'],
  ['Ægir Đặng Œuvray', 'aegir-dang-oeuvray'],
  ['../../etc/passwd', 'etc-passwd'],
  ['木村', 'record'],
  ['Con', 'con-record'],
  ['x'.repeat(80), 'x'.repeat(50)],
])('idFrom: %j becomes %j', (name, id) => {
  expect(idFrom(name)).toBe(id);
  expect(checkedId(id)).toBe(id);
});

test.each(['../x', 'A', '', 'a b', `${'x'.repeat(62)}`])('checkedId: %j is refused', (id) => {
  expect(() => checkedId(id)).toThrow('small letters, digits and hyphens');
});

test.each(['con', 'nul', 'aux', 'prn', 'com1', 'lpt9', 'CON'])(
  'checkedId: %j, a device on Windows, is refused by that name, with an id that works',
  (id) => {
    expect(() => checkedId(id)).toThrow(
      new RegExp(`Windows keeps for devices.*Such as ${id.toLowerCase()}-record\\.`),
    );
  },
);

test.each(['console', 'com', 'com10', 'a-con'])('checkedId: %j is no device', (id) => {
  expect(checkedId(id)).toBe(id);
});

test.each([51, 60, 61])('checkedId: an id of %i characters is taken as it is', (length) => {
  expect(checkedId('y'.repeat(length))).toHaveLength(length);
});

test.each([
  ['kim', 1, 'kim'],
  ['kim', 12, 'kim-12'],
  ['x'.repeat(61), 100, `${'x'.repeat(57)}-100`],
  [`${'x'.repeat(58)}-yy`, 2, `${'x'.repeat(58)}-2`],
])('numbered: %s with %i is %s', (id, n, expected) => {
  expect(numbered(id, n)).toBe(expected);
  expect(isId(expected)).toBe(true);
});
