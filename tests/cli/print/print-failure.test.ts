import { expect, test } from 'vitest';
import { Cancelled, InputError, MOST_FAULTS } from '../../../src/base/errors.js';
import { printFailure } from '../../../src/cli/print/print-failure.js';
import { InputErrors } from '../../../src/cli/terminal/collect-faults.js';
import { Refusal, type RefusalStatement } from '../../../src/records/refusals/refusal.js';
import { fakeTerminal } from '../../support/fake-terminal.js';

const pap = { field: 'pap.overIn', rule: 'must be 2 to 7.5 in', got: '45', hint: 'Was it typed in tenths?' };
const rg = { field: 'rgIn', rule: 'must be 2.4 to 2.8 in', got: '25.4' };

test('printFailure: an input error names its source, then each fault on one line with its remedy; exit 2', () => {
  const terminal = fakeTerminal();
  const code = printFailure(new InputError('record', [pap, rg], 'me.json'), terminal);
  expect(code).toBe(2);
  expect(terminal.written.err()).toBe(
    'me.json\n' +
      '  pap.overIn must be 2 to 7.5 in; got 45. Was it typed in tenths?\n' +
      '  rgIn must be 2.4 to 2.8 in; got 25.4.\n',
  );
  expect(terminal.written.out()).toBe('');
});

test('printFailure: of very many faults the first are named and the others counted', () => {
  const terminal = fakeTerminal();
  const many = Array.from({ length: 300_010 }, (_, i) => ({ ...rg, field: `field${i}` }));
  expect(printFailure(new InputError('record', many, 'me.json'), terminal)).toBe(2);
  const lines = terminal.written.err().trimEnd().split('\n');
  expect(lines).toHaveLength(1 + MOST_FAULTS + 1);
  expect(lines.at(-1)).toBe(`  and ${(300_010 - MOST_FAULTS).toLocaleString('en')} more`);
});

test('printFailure: signs that cannot be seen do not reach the terminal, wherever they stand', () => {
  const terminal = fakeTerminal();
  const evil = 'a\u001b[31mb\u009bc\u202ed\u200be\ufffff\ud800g';
  const fault = { field: evil, rule: evil, got: evil, hint: evil };
  printFailure(new InputError('record', fault, evil), terminal);
  expect(terminal.written.err().replaceAll('\n', '')).toMatch(/^[\x20-\x7e\ufffd]+$/);
  expect(terminal.written.err()).toContain('a [31mb cde');
});

test('printFailure: several errors are grouped by source, those of flags under the command line', () => {
  const terminal = fakeTerminal();
  const errors = [
    new InputError('flag', { ...rg, field: '--top' }),
    new InputError('record', pap, 'me.json'),
    new InputError('flag', { ...rg, field: '--seed' }),
  ];
  expect(printFailure(new InputErrors(errors), terminal)).toBe(2);
  const lines = terminal.written.err().trimEnd().split('\n');
  expect(lines.map((line) => line.trim().split(' ')[0])).toEqual([
    'command',
    '--top',
    '--seed',
    'me.json',
    'pap.overIn',
  ]);
});

const vent = (over: Partial<{ field: string; overIn: number }> = {}): RefusalStatement => ({
  code: 'vent-impossible',
  params: {
    field: 'bowler.grip.vents[0]',
    why: 'mouth-in-hole',
    into: 'thumb',
    overIn: 0.2,
    upIn: -2.7,
    meetsAtIn: null,
    ...over,
  },
});

test.each([
  { units: undefined, got: 'from 0.2 in over, -2.7 in up' },
  { units: 'trade', got: 'from 0.2 in over, -2.7 in up' },
  { units: 'metric', got: 'from 5.1 mm over, -68.6 mm up' },
  { units: 'feet', got: 'from 0.2 in over, -2.7 in up' }, // the flag itself is at fault, and said so
  { units: 'constructor', got: 'from 0.2 in over, -2.7 in up' },
])('printFailure: what is refused is told in the units of --units $units; exit 2', ({ units, got }) => {
  const terminal = fakeTerminal();
  expect(printFailure(new Refusal([vent()], 'me.json'), terminal, units)).toBe(2);
  expect(terminal.written.err()).toMatch(/^me\.json\n {2}bowler\.grip\.vents\[0\] must open beside/);
  expect(terminal.written.err()).toContain(got);
  expect(terminal.written.out()).toBe('');
});

test('printFailure: refusals are grouped, counted, shortened and made visible as all faults are', () => {
  const terminal = fakeTerminal();
  const evil = vent({ field: `a\u001b[31m\u202e${'x'.repeat(10_000)}` });
  const errors = [
    new InputError('flag', { ...rg, field: '--top' }),
    new Refusal(Array.from({ length: MOST_FAULTS + 7 }, () => evil)),
  ];
  expect(printFailure(new InputErrors(errors), terminal)).toBe(2);
  const lines = terminal.written.err().trimEnd().split('\n');
  expect(lines.slice(0, 2)).toEqual(['command line', expect.stringMatching(/^ {2}--top /)]);
  expect(lines).toHaveLength(2 + MOST_FAULTS + 1);
  expect(lines.at(-1)).toBe('  and 7 more');
  expect(lines.join('')).toMatch(/^[\x20-\x7e’]+$/);
  expect(Math.max(...lines.map(({ length }) => length))).toBeLessThan(1000);
});

test('printFailure: who leaves hears nothing; exit 130', () => {
  const terminal = fakeTerminal();
  expect(printFailure(new Cancelled(), terminal)).toBe(130);
  expect(terminal.written.err() + terminal.written.out()).toBe('');
});

test.each([
  { code: 'ENOSPC', says: '/x/kim.json: write failed, as the disk is full. Make room' },
  { code: 'EROFS', says: 'the disk cannot be written to' },
  { code: 'EMFILE', says: 'too many files are open' },
  { code: 'EWHATEVER', says: 'the system reports EWHATEVER. Try again.' },
])(
  'printFailure: what the system refuses ($code) is no bug of ours: one line, no stack; exit 74',
  ({ code, says }) => {
    const terminal = fakeTerminal();
    const error = Object.assign(new Error(code), { code, syscall: 'write', path: '/x/kim.json' });
    expect(printFailure(error, terminal)).toBe(74);
    expect(terminal.written.err()).toContain(says);
    expect(terminal.written.err()).toMatch(/^[^\n]+\n$/);
  },
);

test.each([new TypeError('x is not a function'), 'thrown text'])(
  'printFailure: anything else is our bug, with what is known of it and how to report it; exit 70 (%s)',
  (error) => {
    const terminal = fakeTerminal();
    expect(printFailure(error, terminal)).toBe(70);
    expect(terminal.written.err()).toContain(error instanceof Error ? (error.stack as string) : error);
    expect(terminal.written.err()).toContain('Please report it');
    expect(terminal.written.out()).toBe('');
  },
);
