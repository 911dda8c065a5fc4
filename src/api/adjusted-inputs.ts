import { z } from 'zod';
import type { AdjustInputs as Adjusted } from '../answer/adjust/adjust.js';
import { fromKeys } from '../base/from-keys.js';
import { parseRecord } from '../records/read/read-record.js';
import { NUMBER_OF_WISH, WISHES, type Wish, type WishedId } from '../records/schemas/reaction-numbers.js';
import { readChange } from '../records/schemas/read-change.js';
import { MOST_WISHED } from '../records/schemas/read-wish.js';
import { type Night, nightSchema } from '../records/schemas/shot-log.js';
import { changeForms, wishUnit } from '../records/schemas/wish-forms.js';
import { checkedBall, checkedBowler, checkedLane, checkedLayout } from './checked-inputs.js';
import type { DrilledInputs } from './drilled.js';
import type { Lesson } from './learn.js';
import type { RollInputs } from './roll.js';

/** A drilled ball, what it should do instead, and what is known of what it did. */
export interface AdjustInputs extends Omit<RollInputs, 'learned'> {
  /** What the ball should do instead: `3 ft later`, `41 ft`, `later`, `4`. At least one. */
  readonly want: Readonly<Partial<Record<Wish, string>>>;
  /** What it did of these, in the unit of the answer's readings; by its logged night, else by simulation, where left out. */
  readonly did?: Readonly<Partial<Record<Wish, number>>> | undefined;
  /** A logged night of this ball on this lane. */
  readonly night?: Night | undefined;
  /** The bowler's other drilled balls, by names to call them by. */
  readonly others?: Readonly<Record<string, Drilled>> | undefined;
  /** What the bowler's logged shots teach, as `learn` hands it back; nothing when left out. */
  readonly lesson?: Lesson | undefined;
}

type Drilled = Pick<DrilledInputs, 'ball' | 'layout'>;

/** What the ball is called in the answer. */
const ITSELF = 'this ball';

/**
 * What the engine takes of what another program hands in.
 *
 * @throws {InputError} when a record, a layout or a wish cannot be used
 */
export function adjustedInputs(inputs: AdjustInputs): Adjusted {
  const drilled = (id: string, of: Drilled): Adjusted['kept'] => {
    const ball = checkedBall(of.ball);
    return { id, ball, layout: checkedLayout(of.layout, ball) };
  };
  return {
    bowler: checkedBowler(inputs.bowler),
    kept: drilled(ITSELF, inputs),
    lane: checkedLane(inputs.lane),
    asked: parseRecord(askedSchema, inputs.want, 'want') as Adjusted['asked'], // what is left out is no key
    told: byReading(parseRecord(didSchema, inputs.did ?? {}, 'did')),
    night: inputs.night === undefined ? null : parseRecord(nightSchema, inputs.night, 'night'),
    others: Object.entries(parseRecord(othersSchema, inputs.others ?? {}, 'others')).map(([name, other]) =>
      drilled(name, other as Drilled),
    ),
    lesson: inputs.lesson ?? null,
  };
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

/** What each holds is looked at ball by ball. */
const othersSchema = z.record(z.string(), z.looseObject({}));

const byReading = (did: z.infer<typeof didSchema>): Readonly<Partial<Record<WishedId, number>>> =>
  Object.fromEntries(
    WISHES.flatMap((wish) => (did[wish] === undefined ? [] : [[NUMBER_OF_WISH[wish], did[wish]]])),
  );
