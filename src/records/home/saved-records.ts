import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { InputError } from '../../base/errors.js';
import { orSayWhy } from '../../files/machine-fault.js';
import { readRecord } from '../read/read-record.js';
import { type RecordKind, type RecordOf, SCHEMAS } from '../read/record-kinds.js';
import { RECORD_KINDS } from '../schemas/kept-record.js';
import { isId } from '../text/record-id.js';
import { settle } from './home-folder.js';

/*
 * Records that a person keeps: one JSON file each, in a folder for each kind, below one folder. `change-records.ts`
 * changes them.
 */

/** A kept record by kind and id; the id is its file's name without ending. */
export interface RecordName {
  readonly kind: RecordKind;
  readonly id: string;
}

/** What is kept under a name, or what is wrong with its file. */
export type KeptRecord = RecordName &
  ({ readonly record: RecordOf[RecordKind] } | { readonly error: InputError });

/**
 * Ids in the order of their letters; none when nothing was kept yet.
 *
 * @throws {InputError} `no-access` when their folder cannot be read
 */
export function keptIds(home: string, kind: RecordKind): readonly string[] {
  settle(home);
  const folder = join(home, folderOf(kind));
  if (!existsSync(folder)) return [];
  const place = { path: folder, field: 'the folder of kept records', rule: 'must be one that can be read' };
  return orSayWhy({ ...place, hint: 'Move what stands there away, or set FLAREWISE_HOME.' }, () =>
    readdirSync(folder),
  )
    .filter((file) => file.endsWith('.json'))
    .map((file) => file.slice(0, -'.json'.length))
    .filter(isId)
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

/** Where a record's file lies. */
export const pathOf = (home: string, { kind, id }: RecordName): string =>
  join(home, folderOf(kind), `${id}.json`);

/** The folder for records of a kind, seen from the folder of kept records. */
export const folderOf = (kind: RecordKind): string => `${kind}s`;
