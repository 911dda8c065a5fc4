import fc from 'fast-check';
import { readLine } from '../../../src/records/log/read-line.js';
import { readReading } from '../../../src/records/log/read-reading.js';
import { readReadingErrors } from '../../../src/records/log/read-reading-errors.js';
import { readingSchema } from '../../../src/records/log/readings.js';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { WISHES } from '../../../src/records/schemas/reaction-numbers.js';
import { READING_IDS } from '../../../src/records/schemas/shot-log.js';
import { wantSchema } from '../../../src/records/schemas/want.js';
import { parseDistances } from '../../../src/records/text/distances-text.js';
import { parseLayout } from '../../../src/records/text/layout-text.js';
import { checkedId, idFrom, isId } from '../../../src/records/text/record-id.js';
import { readLayout } from '../../../src/records/text/written-layout.js';
import { anyText } from '../spoiled-text.js';
import { target } from '../target.js';

/* What a person types. */

const NUMBERS = [
  '17',
  '17½',
  '4 7/8',
  '17,5',
  '17-18',
  '28 km/h',
  '16.5 mph',
  '40 ft',
  '12.2 m',
  'about 9',
  '3 +/- 1',
];
const LAYOUTS = [
  ...['70 x 4 1/2 x 30', '70° × 114 mm × 30°', '70 mb x 4 1/2 x 30', '70 cg x 4.5 by 30', '70/4 1/2/30'],
  ...['4 1/2 x 3 3/8 x 2', '4½ x 3⅜ x 2 below', '114 x 86 x 51 mm'],
];
const LINES = ['20 14 8 17', '20 14 - g', '17½ 12.5 8 17-18', '- - - -'];
const WANTED = ['4', 'late', '41 ft', '12 boards', '0.3 deg/ft', 'less'];
const ERRORS = ['arrows=1,pins=0.5', 'usual', 'laydown=1/2, at-50=1', 'breakpoint-ft=2 m'];
const IDS = ['first', 'average-right', 'my ball 2', 'Ünal’s ball', 'con', 'a'.repeat(60)];

export const TYPED = [
  target({
    name: 'numbers',
    what: 'readings of a shot as typed, in any unit',
    inputs: 200_000,
    arbitrary: fc.record({ text: anyText(NUMBERS), id: fc.constantFrom(...READING_IDS) }),
    take: ({ text, id }) => readReading(text, id, readingSchema(id)),
  }),
  target({
    name: 'layouts',
    what: 'layouts in both notations',
    inputs: 200_000,
    arbitrary: fc.record({ text: anyText(LAYOUTS), reader: fc.nat(5) }),
    take: ({ text, reader }) =>
      reader === 0 ? parseLayout(text) : reader === 1 ? parseDistances(text) : readLayout(text),
  }),
  target({
    name: 'wishes',
    what: 'steps, words and numbers of a wanted reaction',
    inputs: 60_000,
    arbitrary: fc.record({ text: anyText(WANTED), wish: fc.constantFrom(...WISHES) }),
    take: ({ text, wish }) => parseRecord(wantSchema, { [wish]: text }, 'command line'),
  }),
  target({
    name: 'shot lines',
    what: 'one line of four boards',
    inputs: 100_000,
    arbitrary: anyText(LINES),
    take: (text) => readLine(text.split(' ')),
  }),
  target({
    name: 'reading errors',
    what: 'how far readings may be off',
    inputs: 60_000,
    arbitrary: anyText(ERRORS),
    take: (text) => readReadingErrors(text, '--error', () => undefined),
  }),
  target({
    name: 'names',
    what: 'ids of kept records, given or made of a name',
    inputs: 40_000,
    arbitrary: fc.record({ text: anyText(IDS), isName: fc.boolean() }),
    take: ({ text, isName }) => {
      if (!isName) return checkedId(text);
      const id = idFrom(text);
      if (!isId(id)) throw new Error(`the id ${JSON.stringify(id)} is made of ${JSON.stringify(text)}`);
      return id;
    },
  }),
];
