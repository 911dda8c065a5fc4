import { InputError } from '../../base/errors.js';
import type { LoggedShot, Night } from '../schemas/shot-log.js';
import { type NightHead, shotCount, withGiven } from './add-shot.js';

/** A shot of a log with its night; shots are counted from 1 over all nights of a ball. */
interface PlacedShot {
  readonly number: number;
  readonly night: Night;
  readonly shot: LoggedShot;
}

/**
 * The shot of a number, or the last.
 *
 * @throws {InputError} `no-such-shot`
 */
export function shotAt(nights: readonly Night[], number = shotCount(nights)): PlacedShot {
  const place = placeOf(nights, number);
  const night = nights[place.night];
  return { number, night, shot: night.shots[place.i] };
}

/** A log without one of its shots; a night without shots goes with it. @throws {InputError} `no-such-shot` */
export function withoutShot(nights: readonly Night[], number: number): readonly Night[] {
  const place = placeOf(nights, number);
  return nights
    .map((each, n) =>
      n === place.night ? { ...each, shots: each.shots.filter((_, i) => i !== place.i) } : each,
    )
    .filter(({ shots }) => shots.length > 0);
}

/**
 * A log with one of its shots changed, and the data of its night.
 *
 * @param given  of the whole night in which the shot stands
 * @throws {InputError} `no-such-shot`
 */
export function withChangedShot(
  nights: readonly Night[],
  number: number,
  shot: LoggedShot,
  given: Partial<NightHead>,
): readonly Night[] {
  const place = placeOf(nights, number);
  return nights.map((each, n) =>
    n === place.night
      ? { ...withGiven(each, given), shots: each.shots.map((before, i) => (i === place.i ? shot : before)) }
      : each,
  );
}

function placeOf(nights: readonly Night[], number: number): { readonly night: number; readonly i: number } {
  let before = 0;
  for (const [night, { shots }] of nights.entries()) {
    if (number > before && number <= before + shots.length) return { night, i: number - before - 1 };
    before += shots.length;
  }
  throw new InputError('no-such-shot', {
    field: 'the shot',
    rule: before === 0 ? 'must be in the log' : `must be one of 1 to ${before}`,
    got: before === 0 ? 'a log without shots' : String(number),
    hint: 'flarewise log ID --list shows them with their numbers.',
  });
}

/**
 * A shot with the typed values in place of its own.
 *
 * @param unseen  readings that were typed as not seen: they are taken out
 */
export function withTyped(
  before: LoggedShot,
  typed: LoggedShot,
  unseen: readonly (keyof LoggedShot)[],
): LoggedShot {
  const gone: readonly string[] = [
    'confirmed',
    ...unseen,
    ...(typed.gutter ? ['pinsBoard'] : []),
    ...(typed.pinsBoard === undefined ? [] : ['gutter']),
  ];
  return { ...Object.fromEntries(Object.entries(before).filter(([key]) => !gone.includes(key))), ...typed };
}
