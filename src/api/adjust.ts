import { z } from 'zod';
import { type AdjustInputs as Adjusted, adjust as adjustment } from '../answer/adjust/adjust.js';
import { fromKeys } from '../base/from-keys.js';
import { parseRecord } from '../records/read/read-record.js';
import { NUMBER_OF_WISH, WISHES, type Wish, type WishedId } from '../records/schemas/reaction-numbers.js';
import { readChange } from '../records/schemas/read-change.js';
import { MOST_WISHED } from '../records/schemas/read-wish.js';
import { type Night, nightSchema } from '../records/schemas/shot-log.js';
import { changeForms, wishUnit } from '../records/schemas/wish-forms.js';
import type { AdjustAnswer } from './answers.js';
import { checkedBall, checkedBowler, checkedLane, checkedLayout } from './checked-inputs.js';
import type { DrilledInputs } from './drilled.js';
import type { Lesson } from './learn.js';
import type { RollInputs } from './roll.js';
import { type SearchOptions, settingOptions } from './search-options.js';
import { wordedLater } from './worded.js';

export interface AdjustInputs extends Omit<RollInputs, 'learned'> {
  /** What the ball should do instead: `3 ft later`, `41 ft`, `later`, `4`. At least one. */
  readonly want: Readonly<Partial<Record<Wish, string>>>;
  /** What it did of these, in the unit of the answer's readings; by its logged night, else by simulation, where left out. */
  readonly did?: Readonly<Partial<Record<Wish, number>>> | undefined;
  /** A logged night of this ball on this lane. */
  readonly night?: Night | undefined;
  /** The bowler's other drilled balls, by names to call them by. */
  readonly others?: Readonly<Record<string, Pick<DrilledInputs, 'ball' | 'layout'>>> | undefined;
  /** What the bowler's logged shots teach, as `learn` hands it back; nothing when left out. */
  readonly lesson?: Lesson | undefined;
}

/** What the ball is called in the answer. */
const ITSELF = 'this ball';

/**
 * What to change where a drilled ball does not do what was wanted: moves on the lane, finishes, speed, other drilled balls, plugging and
 * redrilling, each simulated in the same worlds. Some ten seconds of one core.
 *
 * @throws {InputError} when a record, a layout, a wish or an option cannot be used, or the ball's numbers fit no core
 * @throws the signal's reason once it is aborted
 *
 * @example
 * import { readFileSync } from 'node:fs';
 * import { adjust, readBall } from 'flarewise';
 *
 * const { remedies } = await adjust({
 *   bowler: JSON.parse(readFileSync('data/bowlers/average-right.json', 'utf8')),
 *   ball: readBall('data/balls/plain-medium.json'),
 *   lane: JSON.parse(readFileSync('data/lanes/house-easy.json', 'utf8')),
 *   layout: '70 x 4 1/2 x 30',
 *   want: { totalHook: '4 boards less' },
 * });
 * const [first] = remedies.filter(({ rank }) => rank !== null);
 * console.log(first.remedy.code, first.isUndone);
 * // → speed-by true
 */
export async function adjust(inputs: AdjustInputs, options: SearchOptions = {}): Promise<AdjustAnswer> {
  options.signal?.throwIfAborted();
  return wordedLater(() => {
    const drilled = (id: string, of: Pick<DrilledInputs, 'ball' | 'layout'>): Adjusted['kept'] => {
      const ball = checkedBall(of.ball);
      return { id, ball, layout: checkedLayout(of.layout, ball) };
    };
    const adjusted: Adjusted = {
      bowler: checkedBowler(inputs.bowler),
      kept: drilled(ITSELF, inputs),
      lane: checkedLane(inputs.lane),
      asked: parseRecord(askedSchema, inputs.want, 'want') as Adjusted['asked'], // what is left out is no key
      told: byReading(parseRecord(didSchema, inputs.did ?? {}, 'did')),
      night: inputs.night === undefined ? null : parseRecord(nightSchema, inputs.night, 'night'),
      others: Object.entries(inputs.others ?? {}).map(([name, other]) => drilled(name, other)),
      lesson: inputs.lesson ?? null,
    };
    return adjustment(adjusted, settingOptions(options));
  });
}

const askedSchema = z
  .strictObject(
    fromKeys(WISHES, (wish) =>
      z
        .string({ error: `must be ${changeForms(wish)}` })
        .transform((text, context) => {
          const asked = readChange(wish, text);
          if (!('rule' in asked)) return { text: text.trim(), asked };
          context.addIssue(`must be ${changeForms(wish)}`);
          return z.NEVER;
        })
        .optional(),
    ),
  )
  .refine((asked) => Object.values(asked).some((each) => each !== undefined), {
    error: 'must say what the ball should do',
  });

const didSchema = z.strictObject(
  fromKeys(WISHES, (wish) => {
    const rule = `must be a number, 0 to ${MOST_WISHED[wish]} ${wishUnit(wish)}`;
    return z.number(rule).min(0, rule).max(MOST_WISHED[wish], rule).optional();
  }),
);

const byReading = (did: z.infer<typeof didSchema>): Readonly<Partial<Record<WishedId, number>>> =>
  Object.fromEntries(
    WISHES.flatMap((wish) => (did[wish] === undefined ? [] : [[NUMBER_OF_WISH[wish], did[wish]]])),
  );
