import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addShot } from '../../../src/records/log/add-shot.js';
import { formatShotList, readShotList } from '../../../src/records/log/shot-list.js';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { drilledLayoutSchema } from '../../../src/records/schemas/drilled-layout.js';
import type { LoggedShot, Night } from '../../../src/records/schemas/shot-log.js';

const record = (nights: readonly Night[]) =>
  parseRecord(
    drilledLayoutSchema,
    { schema: 'flarewise/layout/2', name: 'x', bowler: 'kim', ball: 'new', layout: '45 x 4 x 35', nights },
    'x',
  );

const read = (text: string) => readShotList(text, 'first', 'shots.csv');

describe('readShotList', () => {
  test.each([
    { name: 'commas', text: 'lane,pinsBoard\ndry,17.5' },
    { name: 'semicolons and decimal commas', text: 'lane;pinsBoard\r\ndry;17,5\r\n' },
    { name: 'tabs and a byte order mark', text: '\uFEFFlane\tpinsBoard\ndry\t17½' },
  ])('takes $name', ({ text }) =>
    expect(read(text)).toEqual([{ row: 2, head: { lane: 'dry' }, shot: { pinsBoard: 17.5 } }]),
  );

  test('takes the words of a line as heads, in capitals or not, so that a breakpoint is a board and no distance', () => {
    const [{ head, shot }] = read(
      'Night;LANE;Target;laydown;ArrowsBoard;Breakpoint;pins\n2026-03-31;dry;14;20;14;8;17,5',
    );
    expect(head).toEqual({ on: '2026-03-31', lane: 'dry', targetBoard: 14 });
    expect(shot).toEqual({ laydownBoard: 20, arrowsBoard: 14, breakpointBoard: 8, pinsBoard: 17.5 });
  });

  test('counts rows as a spreadsheet does, empty ones too', () =>
    expect(read('lane,pinsBoard\n\n,\ndry,17\n,\n').map(({ row }) => row)).toEqual([4]));

  test('takes numbers with their units, yes and no, dashes, a gutter ball at the pins', () => {
    const heads =
      'on,lane,games,targetBoard,breakpointBoard,pinsBoard,displaySpeedMph,arrowsAgainstTarget,readingErrors';
    const [{ head, shot }] = read(`${heads}\n2026-03-31,dry,3,14,-,g,28 km/h,no,"arrows=1,pins=2"`);
    expect(head).toEqual({
      on: '2026-03-31',
      lane: 'dry',
      games: 3,
      targetBoard: 14,
      readingErrors: { arrowsAgainstTargetBoards: 1, pinsBoards: 2 },
    });
    expect(shot).toEqual({
      gutter: true,
      arrowsAgainstTarget: false,
      displaySpeedMph: expect.closeTo(28 / 1.609344, 12),
    });
  });

  test.each([
    { text: 'lane,pinBoard\ndry,17', says: 'Did you mean pinsBoard?' },
    { text: 'pinsBoard\n17', says: 'column lane must be there' },
    { text: 'lane,pinsBoard\ndry,99', says: 'row 2: pinsBoard must be 0 to 40' },
    { text: 'lane,pinsBoard\ndry,17\n,17', says: 'row 3: lane must be a text' },
    { text: 'layout,lane,pinsBoard\nother,dry,17', says: 'row 2: layout must be first, or left out' },
    { text: 'lane,on\ndry,31.3.2026', says: 'row 2: on must be a day' },
    { text: 'lane,gutter\ndry,maybe', says: 'row 2: gutter must be true' },
    { text: 'lane,readingErrors\ndry,arows=1', says: 'Did you mean arrows?' },
    { text: 'lane,pinsBoard', says: 'must have a row for each shot' },
  ])('refuses $text', ({ text, says }) => expect(() => read(text)).toThrow(says));
});

const board = fc.integer({ min: 0, max: 400 }).map((tenths) => tenths / 10);
const field = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const given = <T extends object>(value: T): T =>
  Object.fromEntries(Object.entries(value).filter(([, each]) => each !== undefined)) as T;

const shots: fc.Arbitrary<LoggedShot> = fc
  .record({
    laydownBoard: field(board),
    arrowsBoard: field(board),
    breakpointBoard: field(board),
    breakpointFt: field(fc.double({ min: 0.001, max: 60, noNaN: true })),
    boardAt50Ft: field(board),
    displaySpeedMph: field(fc.double({ min: 5, max: 40, noNaN: true })),
    flareIn: field(fc.integer({ min: 0, max: 36 }).map((quarters) => quarters / 4)),
    end: fc.oneof(
      board.map((pinsBoard) => ({ pinsBoard })),
      fc.constant({ gutter: true as const }),
      fc.constant({}),
    ),
    arrowsAgainstTarget: field(fc.boolean()),
    ringOverHole: field(fc.constantFrom('thumb' as const, 'middle' as const, 'ring' as const)),
    hookStartFt: field(fc.integer({ min: 0, max: 60 })),
    confirmed: field(fc.constant(true as const)),
    note: field(fc.stringMatching(/^[a-z=+"';,-][a-z =+"';,0-9-]{0,20}[a-z]$/)),
  })
  .map(({ end, ...shot }) => given({ ...shot, ...end }) as LoggedShot);

const heads = fc
  .record({
    on: field(fc.constantFrom('2026-03-31', '2026-04-07')),
    lane: fc.constantFrom('dry', 'long', 'Lane 7; "left"'),
    games: field(fc.integer({ min: 0, max: 30 })),
    targetBoard: field(board),
    patternFt: field(fc.constantFrom(38, 41.5)),
    readingErrors: field(fc.constantFrom({ pinsBoards: 0.75 }, { laydownBoards: 1, flareIn: 0.1 })),
  })
  .map((head) => given(head) as Omit<Night, 'shots'>);

test('a log that goes out as a list and comes in again is the same, night by night', () => {
  fc.assert(
    fc.property(fc.array(fc.tuple(heads, shots), { minLength: 1, maxLength: 8 }), (typed) => {
      const nights = typed.reduce<readonly Night[]>((all, [head, shot]) => addShot(all, head, shot), []);
      const text = formatShotList([{ id: 'first', record: record(nights) }]);
      const again = read(text).reduce<readonly Night[]>(
        (all, { head, shot }) => addShot(all, head, shot),
        [],
      );
      expect(again).toEqual(nights);
    }),
    { numRuns: 300 },
  );
});
