import { basename, extname, resolve } from 'node:path';
import { InputError } from '../errors.js';
import { readBowlerList } from './bowler-list.js';
import { fileBeside, LIST_FILE } from './read-file.js';
import { parseRecord, type RecordSchema, readJson, readText } from './read-record.js';
import { RECORD_KINDS, type RecordKind, type RecordOf, recordKindOf, SCHEMAS } from './record-kinds.js';
import { idFrom } from './saved-records.js';

/** A record out of a file, with the id it had in a bundle, or that its file's name makes. */
export interface Imported {
  readonly kind: RecordKind;
  readonly id?: string;
  readonly record: RecordOf[RecordKind];
}

const BUNDLE = 'flarewise/shelf/1';

/** Many records as one JSON value, for `importedFrom` to read. */
export const bundleOf = (records: readonly Imported[]) => ({ schema: BUNDLE, records });

/**
 * The records of a file: a single one, a bundle, or a coach's list of bowlers (`.csv`, `.tsv`, `.txt`).
 *
 * @throws {InputError} as `readRecord` and `readBowlerList` do
 */
export function importedFrom(path: string): readonly Imported[] {
  if (/\.(csv|tsv|txt)$/i.test(path))
    return readBowlerList(readText(path, LIST_FILE), path).map((record) => ({ kind: 'bowler', record }));
  const value = readJson(path) as { schema?: unknown; records?: unknown } | null;
  if (value?.schema !== BUNDLE)
    return [{ ...importedRecord(value, path), id: idFrom(basename(path, extname(path))) }];
  if (!Array.isArray(value.records))
    throw new InputError('bad-record', { field: 'records', rule: 'must be a list', got: 'none' }, path);
  return value.records.map((each: { id?: unknown; record?: unknown } | null) => ({
    ...importedRecord(each?.record, path),
    ...(typeof each?.id === 'string' ? { id: each.id } : {}),
  }));
}

function importedRecord(value: unknown, path: string): Imported {
  const kind = recordKindOf(value);
  if (kind) {
    const schema = SCHEMAS[kind] as RecordSchema<RecordOf[RecordKind]>;
    const record = parseRecord(schema, value, path);
    // a core file stays where it is: the record is to find it from the folder it is kept in, too
    return {
      kind,
      record: 'core' in record ? { ...record, core: resolve(fileBeside(path, record.core)) } : record,
    };
  }
  throw new InputError(
    'wrong-kind',
    {
      field: 'schema',
      rule: `must name a record that is kept: ${RECORD_KINDS.map((each) => `flarewise/${each}/1`).join(', ')}`,
      got: JSON.stringify((value as { schema?: unknown } | null | undefined)?.schema ?? null),
      hint: 'Compare it with the files in data/.',
    },
    path,
  );
}
