import { existsSync, mkdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { sync as writeFileAtomic } from 'write-file-atomic';
import { InputError } from '../errors.js';
import { namesIn } from './read-file.js';
import { readRecord } from './read-record.js';
import { RECORD_KINDS, type RecordKind, type RecordOf, SCHEMAS } from './record-kinds.js';

/*
 * Records that a person keeps: one JSON file each, in a folder for each kind, below one folder.
 *
 * Every change is made under a lock on that folder and each file is put in place whole, so that two
 * programs at once lose nothing. What is replaced or removed is moved into `removed`, never erased.
 */

/** A kept record by kind and id; the id is its file's name without ending. */
export interface RecordName {
  readonly kind: RecordKind;
  readonly id: string;
}

/** What is kept under a name, or what is wrong with its file. */
export type KeptRecord = RecordName &
  ({ readonly record: RecordOf[RecordKind] } | { readonly error: InputError });

/** Ids in the order of their letters; none when nothing was kept yet. */
export function keptIds(home: string, kind: RecordKind): readonly string[] {
  const folder = folderOf(home, kind);
  if (!existsSync(folder)) return [];
  return namesIn(folder)
    .filter((file) => file.endsWith('.json'))
    .map((file) => file.slice(0, -'.json'.length))
    .filter((id) => ID.test(id))
    .sort();
}

/** Everything that is kept; a file that cannot be read stands there with its error. */
export const allKept = (home: string): readonly KeptRecord[] =>
  RECORD_KINDS.flatMap((kind) =>
    keptIds(home, kind).map((id): KeptRecord => {
      try {
        return { kind, id, record: readKept(home, kind, id) };
      } catch (error) {
        if (error instanceof InputError) return { kind, id, error };
        throw error;
      }
    }),
  );

/** @throws {InputError} when there is no such record, or its file is damaged */
export const readKept = <K extends RecordKind>(home: string, kind: K, id: string): RecordOf[K] =>
  readRecord(SCHEMAS[kind], pathOf(home, { kind, id }));

/**
 * Keeps a record under a new id, made from the wanted one: `lane-40`, and where that is taken `lane-40-2`.
 *
 * @returns the id it got
 */
export const keepNew = <K extends RecordKind>(
  home: string,
  kind: K,
  wanted: string,
  record: RecordOf[K],
): Promise<string> =>
  underLock(home, () => {
    const stem = idFrom(wanted);
    let id = stem;
    for (let n = 2; existsSync(pathOf(home, { kind, id })); n++) id = `${stem}-${n}`;
    write(home, { kind, id }, record);
    return id;
  });

/**
 * Changes a kept record; the change is given the record as it stands, which nobody else changes meanwhile.
 *
 * @throws {InputError} when there is no such record, or its file is damaged
 */
export const changeKept = <K extends RecordKind>(
  home: string,
  kind: K,
  id: string,
  change: (record: RecordOf[K]) => RecordOf[K],
): Promise<void> => underLock(home, () => write(home, { kind, id }, change(readKept(home, kind, id))));

/** Puts a record under an id whether or not it is taken; one that was there goes to `removed`. */
export const replaceKept = <K extends RecordKind>(
  home: string,
  kind: K,
  id: string,
  record: RecordOf[K],
): Promise<void> =>
  underLock(home, () => {
    if (existsSync(pathOf(home, { kind, id }))) setAside(home, { kind, id });
    write(home, { kind, id }, record);
  });

/** @throws {InputError} `no-such-record`, or `id-taken` */
export const renameKept = (home: string, { kind, id }: RecordName, to: string): Promise<void> =>
  underLock(home, () => {
    mustExist(home, { kind, id });
    if (existsSync(pathOf(home, { kind, id: to }))) throw taken(kind, to);
    renameSync(pathOf(home, { kind, id }), pathOf(home, { kind, id: to }));
  });

/** Moves a record to `removed`. @throws {InputError} `no-such-record` */
export const removeKept = (home: string, name: RecordName): Promise<void> =>
  underLock(home, () => {
    mustExist(home, name);
    setAside(home, name);
  });

/** Where a record's file lies. */
export const pathOf = (home: string, { kind, id }: RecordName): string =>
  join(folderOf(home, kind), `${id}.json`);

const ID = /^[a-z0-9][a-z0-9-]{0,60}$/;

/**
 * An id as it was typed.
 *
 * @throws {InputError} `bad-id` when it cannot be a file's name on every system
 */
export function checkedId(text: string): string {
  if (ID.test(text)) return text;
  throw new InputError('bad-id', {
    field: 'id',
    rule: 'must be small letters, digits and hyphens, at most 61',
    got: JSON.stringify(text),
    hint: `Such as ${idFrom(text)}.`,
  });
}

/** An id made from any name: `Kim's ball, 15 lb` becomes `kim-s-ball-15-lb`. */
export const idFrom = (name: string): string =>
  name
    .normalize('NFKD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, 50)
    .replace(/^-+|-+$/g, '') || 'record';

const folderOf = (home: string, kind: RecordKind): string => join(home, `${kind}s`);

function write(home: string, name: RecordName, record: object): void {
  mkdirSync(folderOf(home, name.kind), { recursive: true });
  writeFileAtomic(pathOf(home, name), `${JSON.stringify(record, null, 2)}\n`);
}

/** Moves a record's file to the first free name in `removed`. */
function setAside(home: string, name: RecordName): void {
  const folder = join(home, 'removed', `${name.kind}s`);
  mkdirSync(folder, { recursive: true });
  const free = (n: number): string => join(folder, `${name.id}${n === 1 ? '' : `-${n}`}.json`);
  let n = 1;
  while (existsSync(free(n))) n++;
  renameSync(pathOf(home, name), free(n));
}

async function underLock<T>(home: string, change: () => T): Promise<T> {
  // loaded when a lock is needed: its handlers of signals wait for the event loop, which long computing does not reach
  const { lock } = await import('proper-lockfile');
  mkdirSync(home, { recursive: true });
  const release = await lock(home, { retries: { retries: 40, minTimeout: 20, maxTimeout: 250 } });
  try {
    return change();
  } finally {
    await release();
  }
}

function mustExist(home: string, name: RecordName): void {
  if (existsSync(pathOf(home, name))) return;
  throw new InputError('no-such-record', {
    field: name.kind,
    rule: 'must be one that is kept',
    got: JSON.stringify(name.id),
    hint: 'flarewise shelf lists them.',
  });
}

const taken = (kind: RecordKind, id: string): InputError =>
  new InputError('id-taken', {
    field: kind,
    rule: 'must be an id that is free',
    got: JSON.stringify(id),
    hint: 'Remove or rename the other one first.',
  });
