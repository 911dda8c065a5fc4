import type { AdjustAnswer } from '../../records/answers/adjust-answer.js';
import { Refusal } from '../../records/refusals/refusal.js';
import { NUMBER_OF_WISH, WISHES, type Wish, type WishedId } from '../../records/schemas/reaction-numbers.js';
import type { AskedChange } from '../../records/schemas/read-change.js';
import { targetsOf } from '../../search/scoring/target.js';
import { type Reached, reader, wishedInUnit } from '../../simulate/readings.js';
import type { ShotScatter } from '../../simulate/shot-scatter.js';
import type { Outcome } from '../../simulate/simulator.js';
import type { WantedChange } from './weigh-remedy.js';

/** What was asked of each wish, as typed and as read. */
export type AskedChanges = Readonly<
  Partial<Record<Wish, { readonly text: string; readonly asked: AskedChange }>>
>;

/** What the ball did according to a person or a log, and the error of the log. */
export interface Did {
  readonly value: number;
  readonly from: 'told' | 'log';
  readonly deviation: number | null;
}

type WishedChange = AdjustAnswer['wished'][number];

/**
 * The wanted change of each number from what the ball did. If neither a person nor a log says what it did, the simulation counts. A step
 * refers to what layouts of this ball attain by simulation, so its change is counted from the simulated ball.
 *
 * @param nominal   the ball as drilled, simulated
 * @param attained  layouts of an even grid, simulated; used for steps only
 * @throws {Refusal} for a step where no layout attains anything
 */
export function wishedChanges(
  asked: AskedChanges,
  did: Readonly<Partial<Record<WishedId, Did>>>,
  nominal: Outcome,
  attained: readonly Reached[],
  scatter: ShotScatter,
): readonly WishedChange[] {
  return WISHES.flatMap((wish): WishedChange[] => {
    const wanted = asked[wish];
    if (!wanted) return [];
    const reading = NUMBER_OF_WISH[wish];
    const simulated = reader(reading)(nominal);
    const { value, from, deviation } = did[reading] ?? {
      value: simulated,
      from: 'simulated',
      deviation: null,
    };
    const change = changeOf(wish, wanted, {
      now: value,
      simulated,
      scatter: scatter[reading],
      attained,
    });
    return [
      {
        wish,
        asked: wanted.text,
        reading,
        did: value,
        from,
        deviation,
        simulated,
        wanted: value + change,
        change,
      },
    ];
  });
}

/** By how much a number should change, in the unit of answers. */
function changeOf(
  wish: Wish,
  { text, asked }: NonNullable<AskedChanges[Wish]>,
  known: {
    readonly now: number;
    readonly simulated: number;
    readonly scatter: number;
    readonly attained: readonly Reached[];
  },
): number {
  if (asked.is === 'number') return asked.number - known.now;
  if (asked.is === 'step') {
    if (known.attained.length === 0) throw new Refusal([{ code: 'no-step', params: { wish, asked: text } }]);
    const [target] = targetsOf({ [wish]: asked.step }, known.attained);
    return wishedInUnit(wish, target.value) - known.simulated;
  }
  const by = asked.by ?? known.scatter; // what a game shows
  return asked.is === 'more' ? by : -by;
}

export const wantedChange = (wished: readonly WishedChange[]): WantedChange =>
  Object.fromEntries(wished.map(({ reading, change }) => [reading, change]));
