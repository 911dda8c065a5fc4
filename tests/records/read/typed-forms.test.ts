import { describe, expect, test } from 'vitest';
import { layoutFlag } from '../../../src/cli/flags/flags.js';
import { isFault } from '../../../src/interview/given-value.js';
import { answer, answersOf } from '../../../src/interview/interview.js';
import { parseRecord } from '../../../src/records/read/read-record.js';
import { ballSchemaFor } from '../../../src/records/schemas/ball.js';
import { bowlerSchema } from '../../../src/records/schemas/bowler.js';
import { readWish } from '../../../src/records/schemas/read-wish.js';
import { readLayout } from '../../../src/records/text/written-layout.js';
import { walkTo } from '../../support/interview/walk.js';
import { ball, bowler } from '../../support/plain-records.js';
import { readBowlerList } from '../../support/read-bowler-list.js';

/* What people type is understood wherever it can be typed: in records, lists, layouts, flags and the interview. */

const KMH = 1 / 1.609344; // mph, exact by definition
const KG = 1 / 0.45359237; // lb, exact by definition

const BOWLER_FIELDS = [
  'speedMph',
  'revRateRpm',
  'axisTiltDeg',
  'axisRotationDeg',
  'papOverIn',
  'papUpIn',
] as const;
const BALL_FIELDS = ['weightLb', 'pinToCgIn', 'topWeightOz', 'rgIn', 'surfaceGrit'] as const;

interface Form {
  readonly text: string;
  readonly value: number;
  /** How far off it may be, where that was typed. */
  readonly off?: number;
}
type Forms<Field extends string> = Readonly<Record<Field, readonly Form[]>>;

const OF_BOWLERS: Forms<(typeof BOWLER_FIELDS)[number]> = {
  speedMph: [
    { text: '27,5 km/h', value: 27.5 * KMH },
    { text: '27 kph', value: 27 * KMH },
    { text: '17½', value: 17.5 },
    { text: '16 - 18', value: 17, off: 1 },
  ],
  revRateRpm: [
    { text: '325 rpm', value: 325 },
    { text: '300–340', value: 320, off: 20 },
  ],
  axisTiltDeg: [
    { text: '14°', value: 14 },
    { text: 'about 14', value: 14, off: 2.5 },
  ],
  axisRotationDeg: [
    { text: '~45', value: 45, off: 5 },
    { text: '40-50', value: 45, off: 5 },
    { text: '40 to 50', value: 45, off: 5 },
  ],
  papOverIn: [
    '4½',
    '4 1/2',
    '4-1/2',
    '4,5',
    '4.5',
    '4 1/2 inch',
    '4 1/2”',
    "4 1/2''",
    '4 1/2"',
    '114,3 mm',
  ].map((text) => ({ text, value: 4.5 })),
  papUpIn: [
    ...['up 3/8', '3/8 up', '+3/8', '⅜', '3/8'].map((text) => ({ text, value: 0.375 })),
    ...['−1/4', '-1/4', '1/4 down', 'down ¼'].map((text) => ({ text, value: -0.25 })),
  ],
};

const OF_BALLS: Forms<(typeof BALL_FIELDS)[number]> = {
  weightLb: [
    ...['15', '15 lbs', '15 pound', '15 pounds', '15#'].map((text) => ({ text, value: 15 })),
    { text: '6,8 kg', value: 6.8 * KG },
    { text: '15 lb 4 oz', value: 15.25 },
  ],
  pinToCgIn: ['2¾', '2 3/4', '2 3/4 in', '2,75', '69,85 mm'].map((text) => ({ text, value: 2.75 })),
  topWeightOz: ['2½ oz', '2,5', '2 1/2 ounces'].map((text) => ({ text, value: 2.5 })),
  rgIn: [
    { text: '2,53', value: 2.53 },
    { text: '2.50-2.54', value: 2.52, off: 0.02 },
  ],
  surfaceGrit: ['2000', '2,000', '2000 grit'].map((text) => ({ text, value: 2000 })),
};

const rowsOf = <F extends string>(forms: Forms<F>): (readonly [field: F, text: string, form: Form])[] =>
  (Object.entries(forms) as [F, readonly Form[]][]).flatMap(([field, all]) =>
    all.map((form) => [field, form.text, form] as const),
  );

const numberIn = (record: object, field: string): unknown => {
  const { pap } = record as { pap?: { overIn: number; upIn: number } };
  if (field === 'papOverIn') return pap?.overIn;
  return field === 'papUpIn' ? pap?.upIn : (record as Record<string, unknown>)[field];
};

function expectForm(record: object, field: string, { value, off }: Form): void {
  expect(numberIn(record, field)).toBeCloseTo(value, 9);
  const { uncertainty } = record as { uncertainty?: Record<string, number> };
  if (off === undefined) expect(uncertainty?.[field]).toBeUndefined();
  else expect(uncertainty?.[field]).toBeCloseTo(off, 9);
}

describe('a bowler', () => {
  test.each(rowsOf(OF_BOWLERS))('in a record, %s %j', (field, text, form) => {
    const part = {
      papOverIn: { pap: { overIn: text, upIn: 0 } },
      papUpIn: { pap: { overIn: 5, upIn: text } },
    };
    const given = {
      ...bowler,
      ...(field === 'papOverIn' || field === 'papUpIn' ? part[field] : { [field]: text }),
    };
    expectForm(parseRecord(bowlerSchema, given, 'x'), field, form);
  });

  test.each(rowsOf(OF_BOWLERS))('in a list with semicolons, %s %j', (field, text, form) => {
    const cells = {
      name: 'Kim',
      hand: 'right',
      thumbHole: 'yes',
      speedMph: '17',
      revRateRpm: '300',
      axisTiltDeg: '14',
    };
    const row: Record<string, string> = {
      ...cells,
      axisRotationDeg: '45',
      papOverIn: '5',
      papUpIn: '0',
      [field]: text,
    };
    const quoted = Object.values(row).map((cell) => `"${cell.replaceAll('"', '""')}"`);
    const [read] = readBowlerList(`${Object.keys(row).join(';')}\n${quoted.join(';')}\n`, 'x.csv');
    expectForm(read as object, field, form);
  });

  test.each(rowsOf(OF_BOWLERS))('in the interview, %s %j', (field, text, { value, off }) => {
    const next = answer(walkTo(field).interview, text);
    if (isFault(next)) throw new Error(next.rule);
    const { deviations, ...answers } = answersOf(next);
    expect(answers[field]).toBeCloseTo(value, 9);
    expect(deviations?.[field] ?? 0).toBeCloseTo(off ?? 0, 9);
  });
});

describe('a ball', () => {
  test.each(rowsOf(OF_BALLS))('in a record, %s %j', (field, text, form) => {
    expectForm(parseRecord(ballSchemaFor, { ...ball, [field]: text }, 'x'), field, form);
  });

  test.each(rowsOf(OF_BALLS))('in the interview, %s %j', (field, text, { value, off }) => {
    const next = answer(walkTo(field, { ball: 'new:symmetric' }).interview, text);
    if (isFault(next)) throw new Error(next.rule);
    const { deviations, ...answers } = answersOf(next);
    expect(answers[field]).toBeCloseTo(value, 9);
    expect((deviations as Record<string, number> | undefined)?.[field] ?? 0).toBeCloseTo(off ?? 0, 9);
  });
});

// biome-ignore format: one layout a line
const LAYOUTS = [
  '70 x 4½ x 30', '70 x 4,5 x 30', '70 x 4.5 x 30', '70 by 4 1/2 by 30', '70x4-1/2x30', '70° × 4 1/2” × 30°',
  "70 x 4 1/2'' x 30", '70 x 4 1/2 inch x 30', '70 x 114,3 mm x 30', '70/4 1/2/30', '70 * 4½ * 30',
];

describe('a layout', () => {
  const numbers = { drillingAngleDeg: 70, pinToPapIn: 4.5, valAngleDeg: 30 };

  test.each(LAYOUTS)('by flag, %j', (text) => {
    expect(layoutFlag(text).numbers).toEqual(numbers);
    expect(readLayout(text).numbers).toEqual(numbers); // records, lists, the interview and keys read so
  });

  test.each(LAYOUTS)('in the interview, %j', (text) => {
    const next = answer(walkTo('oldLayout', { ball: 'new:symmetric', drilledBefore: true }).interview, text);
    expect(isFault(next)).toBe(false);
  });
});

test.each([
  ['hookStart', 'late', { step: 4, number: null }],
  ['hookStart', '4', { step: 4, number: null }],
  ['hookStart', '41 ft', { step: null, number: 41 }],
  ['hookStart', '41½ feet', { step: null, number: 41.5 }],
  ['totalHook', '22 boards', { step: null, number: 22 }],
  ['sharpness', '0,35 deg/ft', { step: null, number: 0.35 }],
] as const)('a wish, by flag and in records: %s %j', (wish, text, want) => {
  expect(readWish(wish, text)).toEqual(want);
});
