import { createHash } from 'node:crypto';
import { closeSync, existsSync, fsyncSync, openSync, readFileSync, writeFileSync } from 'node:fs';
import { InputError } from '../../base/errors.js';
import { type Held, tryLock } from '../../files/lock.js';
import { orSayWhy } from '../../files/machine-fault.js';
import { formatOwner } from '../../files/owner.js';
import { putFile, realPlace } from '../../files/put-file.js';
import {
  COACH_DONE,
  COACH_FAULT,
  type CoachLine,
  coachBagSchema,
  coachPairSchema,
} from '../../records/answers/coach-answer.js';
import { checkedOut } from './out-file.js';

/*
 * A file of JSON lines that grows unit by unit. Behind the lines of each unit stands one that says which unit they
 * were: what comes before such a line is whole. So a run that was killed continues where it stopped.
 */

/** A fingerprint of everything a unit's lines depend on, the bytes of meshes included. */
export const unitKey = (unit: unknown, told: unknown): string =>
  sha256(JSON.stringify([unit, told], withContents)).slice(0, 24);

/** JSON leaves out what maps hold, and spells bytes out one by one (a buffer even before it is handed here). */
function withContents(this: Readonly<Record<string, unknown>>, key: string, value: unknown): unknown {
  const held = this[key];
  if (held instanceof Uint8Array) return sha256(held);
  return held instanceof Map ? [...held] : value;
}

const sha256 = (data: string | Uint8Array): string => createHash('sha256').update(data).digest('hex');

/** A file of JSON lines that one run adds to. */
interface CoachFile {
  /** What it held already: lines by unit. */
  readonly known: ReadonlyMap<string, readonly CoachLine[]>;
  /** Puts a unit's lines at its end. @throws {InputError} `no-access` when they find no room */
  readonly append: (key: string, lines: readonly unknown[]) => void;
  readonly close: () => void;
}

/**
 * The file that `--out` names, seen to be a new one or a coach's, and to be writable. Nothing in it changes.
 *
 * @throws {InputError} `no-access`; `not-coach-lines` for a file that holds something else, `older-coach-lines` for one that another
 *   version wrote
 */
export function coachFileFlag(path: string | undefined): string | undefined {
  if (path === undefined) return undefined;
  checkedOut(path);
  readLines(path);
  return path;
}

/**
 * Opens a file for one run alone. A last unit that was cut short is left out of it.
 *
 * @throws {InputError} `locked` when another run adds to it; else as `coachFileFlag`
 */
export function openCoachFile(path: string): CoachFile {
  const place = { path, field: OUT };
  return orSayWhy(place, () => {
    const lock = lockBeside(realPlace(path));
    try {
      const { units, whole, isCut } = readLines(path);
      if (isCut) putFile(path, whole);
      const append: CoachFile['append'] = (key, lines) =>
        orSayWhy(
          { ...place, hint: 'All bowlers before are kept in it. Make room, then give the same command.' },
          () =>
            appendDurably(
              path,
              [...lines, { schema: COACH_DONE, key }].map((line) => `${JSON.stringify(line)}\n`).join(''),
            ),
        );
      return { known: units, append, close: lock.release };
    } catch (error) {
      lock.release();
      throw error;
    }
  });
}

const OUT = '--out';

/** How each line begins. */
const MARK = '{"schema":"flarewise/coach-';

/** Lines that this version writes; those of another cannot be read as its own. */
const KNOWN: ReadonlySet<unknown> = new Set([
  COACH_DONE,
  COACH_FAULT,
  ...[coachPairSchema, coachBagSchema].map(({ shape }) => shape.schema.value),
]);

/** The lines of a file by unit, the text up to the end of the last whole unit, and whether there is more. */
function readLines(path: string) {
  const units = new Map<string, readonly CoachLine[]>();
  const text = existsSync(path) ? readFileSync(path, 'utf8') : '';
  const whole = text.split('\n');
  const rest = whole.pop() as string; // of a line that was cut short; nothing, when the last one is whole
  let end = 0; // of the last whole unit
  let at = 0;
  let lines: CoachLine[] = [];
  for (const line of whole) {
    at += line.length + 1;
    const value = line.startsWith(MARK) ? parsed(line) : null;
    if (value === null) throw notCoachLines(path);
    if (!KNOWN.has(value.schema)) throw olderCoachLines(path, value.schema);
    if (value.schema === COACH_DONE) {
      units.set(String(value.key), lines);
      lines = [];
      end = at;
    } else lines.push(value as unknown as CoachLine);
  }
  const isOurs = rest.startsWith(MARK) || (whole.length > 0 && MARK.startsWith(rest)) || text === '';
  if (!isOurs) throw notCoachLines(path);
  return { units, whole: text.slice(0, end), isCut: end < text.length };
}

function lockBeside(path: string): Held {
  const got = tryLock(`${path}.lock`);
  if ('release' in got) return got;
  throw new InputError('locked', {
    field: OUT,
    rule: 'must be a file that no other run adds to',
    got: `${JSON.stringify(path)}, which ${formatOwner(got.owner)} adds to`,
    hint: `Wait until that has ended, or name another file. If it is no flarewise, remove the folder ${path}.lock.`,
  });
}

function appendDurably(path: string, text: string): void {
  const file = openSync(path, 'a');
  try {
    writeFileSync(file, text);
    fsyncSync(file);
  } finally {
    closeSync(file);
  }
}

const olderCoachLines = (path: string, schema: unknown): InputError =>
  new InputError('older-coach-lines', {
    field: OUT,
    rule: 'must be a new file, or one that this version of flarewise coach wrote',
    got: `${JSON.stringify(path)}, with lines of the kind ${JSON.stringify(schema)}`,
    hint: 'Another version wrote it. Name another file; all bowlers are then worked out anew.',
  });

const notCoachLines = (path: string): InputError =>
  new InputError('not-coach-lines', {
    field: OUT,
    rule: 'must be a new file, or one that flarewise coach wrote',
    got: JSON.stringify(path),
    hint: 'Name another file.',
  });

function parsed(line: string): Record<string, unknown> | null {
  try {
    return JSON.parse(line) as Record<string, unknown>;
  } catch {
    return null;
  }
}
