import { basename, extname } from 'node:path';
import { z } from 'zod';
import { type Fault, InputError } from '../../base/errors.js';
import { readCoachList } from '../read/bowler-list.js';
import { type GuessedEncoding, isListFile, readListText } from '../read/list-text.js';
import { packCore, packedCoreSchema, unpackCore } from '../read/packed-core.js';
import { readCore } from '../read/read-core.js';
import { BUNDLE_FILE, fileBeside, LIST_FILE } from '../read/read-file.js';
import { parseRecord, type RecordSchema, readJson } from '../read/read-record.js';
import { RECORD_TAGS, type RecordKind, type RecordOf, recordKindOf, SCHEMAS } from '../read/record-kinds.js';
import { versionHint } from '../read/version-hint.js';
import type { CoreFile } from '../schemas/core.js';
import { keptRecordSchema, RECORD_KINDS } from '../schemas/kept-record.js';
import { checkedId, idFrom } from '../text/record-id.js';

/** A record out of a file, with the id it had in a bundle, or that its file's name makes. */
export interface Imported {
  readonly kind: RecordKind;
  readonly id?: string;
  readonly record: RecordOf[RecordKind];
  /** The core and its meshes, for a ball with a core of its own. */
  readonly coreFile?: CoreFile;
}

const BUNDLE = 'flarewise/shelf/1';

/** A record as it is in a bundle: a core travels along, and no path of this machine does. */
const bundledSchema = z.strictObject({
  kind: z.enum(RECORD_KINDS).optional(),
  id: z.string().optional(),
  record: keptRecordSchema,
  core: packedCoreSchema.optional().meta({ description: 'Of a ball with a core of its own.' }),
});

export type Bundled = z.infer<typeof bundledSchema>;

/** Many records in one file. */
export const bundleSchema = z
  .strictObject({ schema: z.literal(BUNDLE), records: z.array(bundledSchema) })
  .meta({ title: 'Bundle of records', description: 'What shelf export prints and shelf import reads.' });

/** @throws {InputError} `too-large` for a core that no bundle takes */
export const bundled = ({ coreFile, record, ...name }: Imported): Bundled =>
  coreFile
    ? { ...name, record: { ...record, core: 'core.json' } as Bundled['record'], core: packCore(coreFile) }
    : { ...name, record };

/** Many records as one JSON value, for `importedFrom` to read. */
export const bundleOf = (records: readonly Bundled[]) => ({ schema: BUNDLE, records });

/**
 * The records of a file: a single one, a bundle, or a coach's list of bowlers (`.csv`, `.tsv`, `.txt`).
 *
 * @param onGuess  is handed what to check in a list that is not UTF-8
 * @param onBalls  is called where a list names balls, which no bowler's record has
 * @throws {InputError} as `readRecord` and `readCoachList` do; `bad-id`, with all bad ids of a bundle at once
 */
export function importedFrom(
  path: string,
  onGuess: (guess: GuessedEncoding) => void,
  onBalls: () => void,
): readonly Imported[] {
  if (isListFile(path)) {
    const rows = readCoachList(readListText(path, LIST_FILE, onGuess), path);
    if (rows.some(({ balls }) => balls !== '')) onBalls();
    return rows.map(({ bowler }) => ({ kind: 'bowler', record: bowler }));
  }
  const value = readJson(path, BUNDLE_FILE) as { schema?: unknown; records?: unknown } | null;
  if (
    typeof value?.schema === 'string' &&
    /^flarewise\/shelf\/\d+$/.test(value.schema) &&
    value.schema !== BUNDLE
  )
    throw new InputError(
      'wrong-kind',
      {
        field: 'schema',
        rule: `must be "${BUNDLE}"`,
        got: JSON.stringify(value.schema),
        hint: versionHint(value.schema, BUNDLE),
      },
      path,
    );
  if (value?.schema !== BUNDLE)
    return [{ ...importedRecord(value, path), id: idFrom(basename(path, extname(path))) }];
  if (!Array.isArray(value.records))
    throw new InputError(
      'bad-record',
      { field: 'records', rule: 'must be a list', got: 'none', hint: 'flarewise shelf export writes one.' },
      path,
    );
  const faults = value.records.flatMap((each: BundleEntry, i) => idFaults(each?.id, `records[${i}].id`));
  if (faults.length > 0) throw new InputError('bad-id', faults, path);
  return value.records.map((each: BundleEntry) => ({
    ...importedRecord(each?.record, path, each?.core),
    ...(typeof each?.id === 'string' ? { id: each.id } : {}),
  }));
}

type BundleEntry = { readonly id?: unknown; readonly record?: unknown; readonly core?: unknown } | null;

function idFaults(id: unknown, field: string): readonly Fault[] {
  try {
    if (typeof id === 'string') checkedId(id);
    return [];
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return error.faults.map((fault) => ({ ...fault, field }));
  }
}

/** @param packed  the core that travelled along; a ball without one names a file beside `path` */
function importedRecord(value: unknown, path: string, packed?: unknown): Imported {
  const kind = recordKindOf(value);
  if (kind) {
    const schema = SCHEMAS[kind] as RecordSchema<RecordOf[RecordKind]>;
    const record = parseRecord(schema, value, path);
    if (!('core' in record)) return { kind, record };
    const coreFile =
      packed === undefined ? readCore(fileBeside(path, record.core)) : unpackCore(packed, path);
    return { kind, record, coreFile };
  }
  throw new InputError(
    'wrong-kind',
    {
      field: 'schema',
      rule: `must name a record that is kept: ${RECORD_KINDS.map((each) => RECORD_TAGS[each]).join(', ')}`,
      got: JSON.stringify((value as { schema?: unknown } | null | undefined)?.schema ?? null),
      hint: 'Compare it with the files in data/.',
    },
    path,
  );
}
