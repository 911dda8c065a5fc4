import chalk from 'chalk';
import fc from 'fast-check';
import { adjust } from '../../../src/answer/adjust/adjust.js';
import { type AdjustInputs, adjustedInputs } from '../../../src/api/adjusted-inputs.js';
import { settingOptions } from '../../../src/api/search-options.js';
import { changeFlag, didNumber } from '../../../src/cli/flags/change-flags.js';
import { learn } from '../../../src/learn/learn.js';
import { sharedBalls } from '../../../src/prepare/shared-balls.js';
import { adjustAnswerSchema } from '../../../src/records/answers/adjust-answer.js';
import { parseRecord } from '../../../src/records/read/read-record.js';
import type { Bowler } from '../../../src/records/schemas/bowler.js';
import type { Lane } from '../../../src/records/schemas/lane.js';
import { WISHES } from '../../../src/records/schemas/reaction-numbers.js';
import { MOST_WISHED } from '../../../src/records/schemas/read-wish.js';
import { nightSchema } from '../../../src/records/schemas/shot-log.js';
import { adjustReport } from '../../../src/report/screens/adjust-report.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { paintWith } from '../../../src/report/text/paint.js';
import { withSentences } from '../../../src/report/wording/with-sentences.js';
import { within } from '../../support/arbitraries.js';
import { averageBowler, houseLane, plainBall } from '../../support/problems.js';
import { TINY_BUDGET } from '../../support/small-budget.js';
import { spoiledRecord } from '../spoiled-record.js';
import { anyText } from '../spoiled-text.js';
import { target } from '../target.js';
import { BALLS, BOWLERS, LANES, LOG } from './sound.js';

/* What to change in a drilled ball: what is typed, what another program hands in, and whole answers. */

const ASKED = [
  '3 ft later',
  'later',
  '41 ft',
  '4',
  'late',
  '4 boards less',
  '22 boards',
  '0.05 deg/ft sharper',
];
const DID = ['36', '36 ft', '12 boards', '0.3', '17½', '11 m'];

const LAYOUTS = ['70 x 4 1/2 x 30', '4 1/2 x 3 3/8 x 2', '30 x 6 x 60'];

/** What another program hands in, all of it sound. */
const GIVEN = {
  bowler: averageBowler,
  ball: plainBall,
  lane: houseLane,
  layout: LAYOUTS[0],
  want: { hookStart: '3 ft later', totalHook: 'less' },
  did: { hookStart: 36, sharpness: 0.3, totalHook: 14 },
  night: LOG.nights[0],
  others: { second: { ball: { ...plainBall, surfaceGrit: 4000 }, layout: LAYOUTS[1] } },
};

/** Sound balls that a record alone says all of. */
const WHOLE_BALLS = BALLS.filter((ball) => !('core' in ball)) as unknown as readonly AdjustInputs['ball'][];

/** A number of a range, at its ends now and then. */
const legal = (min: number, max: number): fc.Arbitrary<number> =>
  fc.oneof({ weight: 6, arbitrary: within(min, max) }, { weight: 1, arbitrary: fc.constantFrom(min, max) });

const bowler = fc
  .record({
    sound: fc.constantFrom(...(BOWLERS as unknown as readonly Bowler[])),
    speedMph: legal(8, 26),
    revRateRpm: legal(30, 700),
    axisTiltDeg: legal(0, 75),
    isAsItIs: fc.boolean(),
  })
  .map(({ sound, isAsItIs, ...numbers }): Bowler => (isAsItIs ? sound : { ...sound, ...numbers }));

const layout = fc.oneof(
  fc.constantFrom(...LAYOUTS),
  fc.tuple(legal(0, 180), legal(0, 6.75), legal(0, 180)).map((numbers) => numbers.join(' x ')),
);
const drilled = fc.record({ ball: fc.constantFrom(...WHOLE_BALLS), layout });

const wants = fc
  .record({
    hookStart: fc.constantFrom(
      'later',
      'earlier',
      '3 ft later',
      '0.01 ft earlier',
      '0 ft',
      '60 ft',
      '1',
      '5',
    ),
    sharpness: fc.constantFrom('0 deg/ft', '5 deg/ft', '0.35 deg/ft', '1', '3', '5'),
    totalHook: fc.constantFrom(
      'more',
      'less',
      '39 boards less',
      '1/8 board more',
      '0 boards',
      '39 boards',
      '4',
    ),
    kept: fc.integer({ min: 1, max: 7 }),
  })
  .map(({ kept, ...all }) =>
    Object.fromEntries(WISHES.flatMap((wish, i) => ((kept >> i) % 2 === 1 ? [[wish, all[wish]]] : []))),
  );

const told = fc.record(Object.fromEntries(WISHES.map((wish) => [wish, legal(0, MOST_WISHED[wish])])), {
  requiredKeys: [],
});

/** Nights as logs have them, sound or spoiled: the latter may be refused. */
const night = fc.option(
  fc.oneof(
    { weight: 3, arbitrary: fc.constantFrom<unknown>(...LOG.nights) },
    { weight: 1, arbitrary: spoiledRecord(LOG.nights, 2) },
  ),
  { nil: undefined },
);

/** What made-up logs teach, each looked into once. */
const lessons = new Map<number, AdjustInputs['lesson']>();
function lessonOf(nights: number): AdjustInputs['lesson'] {
  if (nights === 0) return undefined;
  if (!lessons.has(nights)) {
    const logged = LOG.nights.slice(-nights).map((each) => ({
      night: parseRecord(nightSchema, each, 'night'),
      lane: houseLane,
    }));
    const numbers = { drillingAngleDeg: 70, pinToPapIn: 4.5, valAngleDeg: 30 };
    const taught = learn(averageBowler, [{ ball: plainBall, layout: numbers, nights: logged }], {
      budget: TINY_BUDGET,
    });
    if (!taught) throw new Error('nothing is learned of a sound log');
    lessons.set(nights, { answer: { misfit: taught.misfit }, learned: taught.learned } as never);
  }
  return lessons.get(nights);
}

/** So few worlds and layouts that an answer takes about a second: of its numbers nothing is asked but that they are numbers. */
const FEWEST = {
  ...TINY_BUDGET,
  worlds: 3,
  grid: { coarse: { arcIn: 2, angleDeg: 60 }, finest: { arcIn: 1, angleDeg: 30 } },
};

/** Balls are made ready once: that takes a second. */
const readyBall = sharedBalls();

const SCREEN = { ascii: false, paint: paintWith(chalk), units: UNITS.trade };
const NOT_A_NUMBER = /\b(NaN|Infinity|undefined|null)\b/;

/** Throws where the answer breaks its schema, or a screen shows what is no number. */
function shown(answer: Awaited<ReturnType<typeof adjust>>): unknown {
  const worded = withSentences(answer);
  adjustAnswerSchema.parse(worded);
  for (const isFull of [false, true]) {
    const text = adjustReport(answer, { ...SCREEN, width: isFull ? 80 : 60 }, isFull);
    if (NOT_A_NUMBER.test(text)) throw new Error(`not a number on the screen:\n${text}`);
  }
  return worded;
}

export const ADJUST = [
  target({
    name: 'changes of a drilled ball',
    what: 'what it should do instead, and what it did, as typed',
    inputs: 60_000,
    arbitrary: fc.record({
      text: fc.oneof(anyText(ASKED), anyText(DID)),
      wish: fc.constantFrom(...WISHES),
      isWanted: fc.boolean(),
    }),
    take: ({ text, wish, isWanted }) => (isWanted ? changeFlag(wish, text) : didNumber(wish, text)),
  }),
  target({
    name: 'drilled balls to adjust',
    what: 'what another program hands in: fields gone, renamed, doubled, of another kind, out of range',
    inputs: 40_000,
    arbitrary: spoiledRecord([GIVEN], 3).map((given) => Object(given)),
    take: (given) => adjustedInputs(given as AdjustInputs),
  }),
  target({
    name: 'adjustments',
    what: 'whole answers of `adjust`, in few worlds, each in less than 6 s: any bowler, lane, layout, wishes, night, other balls, with and without a log learned from',
    inputs: 100,
    chunk: 20,
    mostSeconds: 6,
    arbitrary: fc.record({
      bowler,
      drilled,
      lane: fc.constantFrom(...(LANES as unknown as readonly Lane[])),
      want: wants,
      did: fc.option(told, { nil: undefined }),
      night,
      others: fc.dictionary(fc.constantFrom('second', 'spare', 'toString'), drilled, { maxKeys: 2 }),
      lesson: fc.nat(LOG.nights.length),
    }),
    take: async ({ drilled, lesson, ...given }) => {
      const inputs = { ...given, ...drilled, lesson: lessonOf(lesson) } as AdjustInputs;
      return shown(
        await adjust(adjustedInputs(inputs), {
          ...settingOptions({}),
          budget: FEWEST,
          readyBall,
        }),
      );
    },
  }),
];
