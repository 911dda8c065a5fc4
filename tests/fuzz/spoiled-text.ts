import fc from 'fast-check';
import { within } from '../support/arbitraries.js';

/** Signs and words that readers may stumble over. */
const NASTY = [
  ...[
    '',
    ' ',
    '\t',
    '\n',
    '\r\n',
    '\0',
    '\u001b[31m',
    '\u202e',
    '\u2028',
    '\ufeff',
    '\uffff',
    '\ud800',
    '\u0301',
    '😀',
  ],
  ...[
    '-',
    '+',
    '±',
    '–',
    '~',
    '/',
    '\\',
    '.',
    ',',
    ';',
    ':',
    '"',
    "'",
    '`',
    '$',
    '%',
    '=',
    '?',
    '*',
    '(',
    ')',
    '[',
    '{',
    '}',
  ],
  ...[
    '0',
    '1',
    '7',
    '17½',
    '4 7/8',
    '1/0',
    '0/0',
    '-0',
    '1e999',
    '-1e999',
    '1e-999',
    '0x10',
    '9'.repeat(40),
    '1_000',
    '1,000.5',
  ],
  ...['NaN', 'Infinity', 'null', 'true', 'undefined', '__proto__', 'constructor', 'toString'],
  ...[
    'mm',
    'in',
    ' ft',
    'km/h',
    ' mph',
    'lb',
    ' oz',
    '°',
    'deg',
    'x',
    ' × ',
    'by',
    'up',
    'down',
    'below',
    'about ',
    'g',
    'late',
  ],
  ...[
    '=HYPERLINK("x")',
    '../../x',
    'con',
    ' '.repeat(300),
    'x'.repeat(500),
    '[['.repeat(60),
    '1/'.repeat(60),
  ],
];

const edit = fc.record({
  kind: fc.nat(5),
  at: within(0, 1),
  to: within(0, 1),
  piece: fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(...NASTY) },
    fc.string({ unit: 'binary', maxLength: 6 }),
  ),
});

/** A sound text, or what is left of one after a few edits: pieces put in, taken out, doubled, moved, another text's end. */
export const spoiledText = (sound: readonly string[], mostEdits = 4): fc.Arbitrary<string> =>
  fc
    .tuple(
      fc.constantFrom(...sound),
      fc.constantFrom(...sound),
      fc.noBias(fc.array(edit, { minLength: 1, maxLength: mostEdits })),
    )
    .map(([text, other, edits]) =>
      edits.reduce((from, { kind, at, to, piece }) => {
        const [a, b] = [at, to].map((share) => Math.floor(share * from.length)).sort((p, q) => p - q);
        const [head, middle, tail] = [from.slice(0, a), from.slice(a, b), from.slice(b)];
        if (kind === 0) return head + tail;
        if (kind === 1) return head + middle + middle + tail;
        if (kind === 2) return head + other.slice(Math.floor(at * other.length));
        if (kind === 3) return tail + middle + head;
        if (kind === 4) return from.slice(0, a) + piece + from.slice(a + 1);
        return head + piece + middle + tail;
      }, text),
    );

/** As `spoiledText`, now and then any text at all. */
export const anyText = (sound: readonly string[]): fc.Arbitrary<string> =>
  fc.oneof(
    { weight: 12, arbitrary: spoiledText(sound) },
    { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 60 }) },
    { weight: 1, arbitrary: fc.constantFrom(...NASTY) },
  );

/** The bytes of a sound file with some changed, and perhaps cut short. */
export const spoiledBytes = (sound: readonly Uint8Array[]): fc.Arbitrary<Uint8Array> =>
  fc
    .tuple(
      fc.constantFrom(...sound),
      fc.array(fc.tuple(within(0, 1), fc.nat(255)), { maxLength: 8 }),
      fc.option(within(0, 1.2), { freq: 3 }),
    )
    .map(([bytes, changes, share]) => {
      const copy = Uint8Array.from(share === null ? bytes : bytes.slice(0, Math.ceil(share * bytes.length)));
      for (const [at, byte] of changes)
        if (copy.length > 0) copy[Math.floor(at * copy.length) % copy.length] = byte;
      return copy;
    });
