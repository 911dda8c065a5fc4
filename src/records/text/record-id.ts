import { InputError } from '../../base/errors.js';
import { withoutAccents } from '../../base/without-accents.js';

/*
 * Ids of kept records. An id is its file's name without ending, so it must be one on every system.
 */

const MOST = 61;
const ROOM_FOR_NUMBER = 11; // an id made from a name stays short enough for a number behind it

const ID = /^[a-z0-9][a-z0-9-]*$/;

/** Names that Windows takes for devices, whatever ending follows them. */
const DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** Whether a file of that name can be a kept record's. */
export const isId = (text: string): boolean => ID.test(text) && text.length <= MOST;

/**
 * An id as it was typed.
 *
 * @throws {InputError} `bad-id` when it cannot be a file's name on every system
 */
export function checkedId(text: string): string {
  const isDevice = DEVICE.test(text.toLowerCase());
  if (isId(text) && !isDevice) return text;
  throw new InputError('bad-id', {
    field: 'id',
    rule: isDevice
      ? 'must not be a name that Windows keeps for devices: con, prn, aux, nul, com1, lpt1 and their like'
      : `must be small letters, digits and hyphens, at most ${MOST}`,
    got: JSON.stringify(text.length > MOST + 20 ? `${text.slice(0, MOST)}...` : text),
    hint: `Such as ${idFrom(text)}.`,
  });
}

/** An id made from any name: `Kim's ball, 15 lb` becomes `kim-s-ball-15-lb`. */
export function idFrom(name: string): string {
  const id = trimmed(
    withoutAccents(name)
      .toLowerCase()
      .replace(/[^a-z0-9]+/g, '-')
      .slice(0, MOST - ROOM_FOR_NUMBER),
  );
  return DEVICE.test(id) ? `${id}-record` : id || 'record';
}

/** An id with a number behind it, cut where both would be too long. */
export const numbered = (id: string, n: number): string =>
  n === 1 ? id : `${trimmed(id.slice(0, MOST - `-${n}`.length))}-${n}`;

const trimmed = (id: string): string => id.replace(/^-+|-+$/g, '');
