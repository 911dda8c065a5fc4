import { existsSync, readFileSync, rmSync } from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { type Fault, InputError } from '../../base/errors.js';
import { putBeside, putFile } from '../../files/put-file.js';
import type { RecordKind, RecordOf } from '../read/record-kinds.js';
import { numbered } from '../text/record-id.js';
import { inHome, OWN_FILE, ownFolder } from './home-folder.js';
import { type Move, moveAll } from './pending-moves.js';
import { folderOf, pathOf, type RecordName, readKept } from './saved-records.js';

/*
 * Changes of kept records. Each is made under the lock of their folder, and files are put in place whole, all files of
 * a change or none: two programs at once lose nothing, nor does one that is killed. What is replaced or removed stays
 * in `removed`.
 */

/** A record to keep. */
export interface NewRecord extends RecordName {
  readonly record: RecordOf[RecordKind];
  /** What to do when the id is taken: put a number behind it, keep nothing, or replace the record that has it. */
  readonly ifTaken: 'number' | 'refuse' | 'replace';
}

/**
 * Keeps records, all of them or none; one that is replaced goes to `removed`.
 *
 * @returns the ids they got, in order
 * @throws {InputError} `id-taken`, with all such ids at once
 */
export const keepAll = (home: string, records: readonly NewRecord[]): Promise<readonly string[]> =>
  inHome(home, [...new Set(records.flatMap(({ kind }) => foldersOf(kind)))], () => {
    const ids = givenIds(home, records);
    const removed = new Set<string>();
    const moves: Move[] = [];
    const stage = (to: string, content: string | Uint8Array): void => {
      ownFolder(dirname(join(home, to)));
      const beside = putBeside(join(home, to), content, { mode: OWN_FILE });
      moves.push({ from: join(dirname(to), basename(beside)), to });
    };
    try {
      records.forEach(({ kind, record }, i) => {
        const name = { kind, id: ids[i] };
        if (isKept(home, name)) stage(freeRemoved(home, name, removed), readFileSync(pathOf(home, name)));
        stage(pathOf('', name), jsonOf(record));
      });
    } catch (error) {
      for (const { from } of moves) rmSync(join(home, from), { force: true });
      throw error;
    }
    moveAll(home, moves);
    return ids;
  });

/**
 * Changes a kept record; the change is given the record as it is, which nothing else changes meanwhile.
 *
 * @throws {InputError} when there is no such record, or its file is damaged
 */
export const changeKept = <K extends RecordKind>(
  home: string,
  kind: K,
  id: string,
  change: (record: RecordOf[K]) => RecordOf[K],
): Promise<void> =>
  inHome(home, foldersOf(kind), () =>
    putFile(pathOf(home, { kind, id }), jsonOf(change(readKept(home, kind, id))), { mode: OWN_FILE }),
  );

/** @throws {InputError} `no-such-record`, or `id-taken` */
export const renameKept = (home: string, { kind, id }: RecordName, to: string): Promise<void> =>
  inHome(home, foldersOf(kind), () => {
    mustExist(home, [{ kind, id }]);
    if (isKept(home, { kind, id: to })) throw new InputError('id-taken', takenFault({ kind, id: to }));
    moveAll(home, [{ from: pathOf('', { kind, id }), to: pathOf('', { kind, id: to }) }]);
  });

/** Moves records to `removed`, all of them or none. @throws {InputError} `no-such-record`, with all such at once */
export const removeKept = (home: string, names: readonly RecordName[]): Promise<void> =>
  inHome(home, [...new Set(names.flatMap(({ kind }) => foldersOf(kind)))], () => {
    mustExist(home, names);
    const removed = new Set<string>();
    const paths = [...new Set(names.map((name) => pathOf('', name)))];
    const moves = paths.map((from) => {
      const name = names.find((each) => pathOf('', each) === from) as RecordName;
      return { from, to: freeRemoved(home, name, removed) };
    });
    for (const { to } of moves) ownFolder(dirname(join(home, to)));
    moveAll(home, moves);
  });

/** The ids that records get: those wanted, or what to do about a taken one says. */
function givenIds(home: string, records: readonly NewRecord[]): readonly string[] {
  const given = new Set<string>();
  const faults: Fault[] = [];
  const ids = records.map(({ kind, id, ifTaken }) => {
    const isFree = (each: string): boolean =>
      !given.has(`${kind}/${each}`) && (ifTaken === 'replace' || !isKept(home, { kind, id: each }));
    let n = 1;
    if (ifTaken === 'number') while (!isFree(numbered(id, n))) n++;
    else if (!isFree(id)) faults.push(takenFault({ kind, id }));
    given.add(`${kind}/${numbered(id, n)}`);
    return numbered(id, n);
  });
  if (faults.length > 0) throw new InputError('id-taken', faults);
  return ids;
}

/** The first free path in `removed`, seen from the folder of kept records; it then counts as given. */
function freeRemoved(home: string, { kind, id }: RecordName, given: Set<string>): string {
  const path = (n: number): string => join(removedFolder(kind), `${id}${n === 1 ? '' : `-${n}`}.json`);
  let n = 1;
  while (given.has(path(n)) || existsSync(join(home, path(n)))) n++;
  given.add(path(n));
  return path(n);
}

const removedFolder = (kind: RecordKind): string => join('removed', folderOf(kind));

const foldersOf = (kind: RecordKind): readonly string[] => [folderOf(kind), removedFolder(kind)];

const jsonOf = (record: object): string => `${JSON.stringify(record, null, 2)}\n`;

const isKept = (home: string, name: RecordName): boolean => existsSync(pathOf(home, name));

function mustExist(home: string, names: readonly RecordName[]): void {
  const missing = names.filter((name) => !isKept(home, name));
  if (missing.length === 0) return;
  throw new InputError(
    'no-such-record',
    missing.map(({ kind, id }) => ({
      field: kind,
      rule: 'must be one that is kept',
      got: JSON.stringify(id),
      hint: 'flarewise shelf lists them.',
    })),
  );
}

const takenFault = ({ kind, id }: RecordName): Fault => ({
  field: kind,
  rule: 'must get an id that is free',
  got: JSON.stringify(id),
  hint: 'Choose another id, or remove or rename the record that has it.',
});
