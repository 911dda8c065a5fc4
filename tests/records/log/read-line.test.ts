import fc from 'fast-check';
import { expect, test } from 'vitest';
import { InputError } from '../../../src/base/errors.js';
import { formatLine, readLine } from '../../../src/records/log/read-line.js';

const line = (text: string) => readLine(text.split(' '));

test.each([
  { typed: '20 14 8 17', is: { laydownBoard: 20, arrowsBoard: 14, breakpointBoard: 8, pinsBoard: 17 } },
  {
    typed: '20,5 14½ 8.5 17-18',
    is: { laydownBoard: 20.5, arrowsBoard: 14.5, breakpointBoard: 8.5, pinsBoard: 17.5 },
  },
  { typed: '20 - – g', is: { laydownBoard: 20, gutter: true } },
  { typed: '- 14 ? Gutter', is: { arrowsBoard: 14, gutter: true } },
  { typed: '- - - -', is: {} },
])('readLine: $typed', ({ typed, is }) => expect(line(typed)).toEqual(is));

test.each([
  {
    typed: '20 14 8',
    says: 'the shot must be four boards: laydown, arrows, breakpoint, pins; got 3: 20 14 8.',
  },
  { typed: '20 14 8 17 3', says: 'got 5' },
  { typed: '20 41 8 17', says: 'the board at the arrows must be 0 to 40 (board); got "41".' },
  { typed: 'g 14 8 17', says: 'the laydown board must be a number' },
  { typed: '20 14 8 1o', says: 'the board at the pins must be a number' },
  { typed: '20 10-20 8 17', says: 'the board at the arrows must be a number' },
])('readLine: $typed is refused', ({ typed, says }) => expect(() => line(typed)).toThrow(says));

test('readLine: names all faults of a line at once', () => {
  expect(() => line('99 x 8 17')).toThrow(/laydown board[\s\S]*board at the arrows/);
});

const board = fc.option(
  fc.integer({ min: 0, max: 80 }).map((halves) => halves / 2),
  { nil: undefined },
);

test('a shot is the line that it is written as', () => {
  fc.assert(
    fc.property(board, board, board, board, fc.boolean(), (laydown, arrows, breakpoint, pins, isGutter) => {
      const shot = {
        ...(laydown === undefined ? {} : { laydownBoard: laydown }),
        ...(arrows === undefined ? {} : { arrowsBoard: arrows }),
        ...(breakpoint === undefined ? {} : { breakpointBoard: breakpoint }),
        ...(isGutter ? { gutter: true as const } : pins === undefined ? {} : { pinsBoard: pins }),
      };
      expect(line(formatLine(shot))).toEqual(shot);
    }),
  );
});

test('whatever is typed is read within the lane, or refused with what to do', () => {
  fc.assert(
    fc.property(fc.array(fc.string({ unit: 'binary', maxLength: 12 }), { maxLength: 6 }), (words) => {
      try {
        for (const value of Object.values(readLine(words)))
          expect(value === true || (Number(value) >= 0 && Number(value) <= 40)).toBe(true);
      } catch (error) {
        expect(error).toBeInstanceOf(InputError);
        expect((error as InputError).faults.every(({ hint }) => hint !== undefined)).toBe(true);
      }
    }),
    { numRuns: 500 },
  );
});
