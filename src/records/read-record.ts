import type { z } from 'zod';
import { InputError } from '../errors.js';
import { faultCount, faultsOf } from './faults.js';
import { jsonFaultAt } from './json-fault-at.js';
import { migrated } from './migrate.js';
import { readBytes } from './read-file.js';

/** A record's schema, or how to tell from the value which of several it should meet. */
export type RecordSchema<T> = z.ZodType<T> | ((value: unknown) => z.ZodType<T>);

/**
 * Reads one record from a JSON file.
 *
 * @param path  as the person typed it; it stands in the error
 * @throws {InputError} `no-such-file`, `broken-json`, `wrong-kind` or `bad-record`, with all faults at once
 */
export const readRecord = <T>(schema: RecordSchema<T>, path: string): T =>
  parseRecord(schema, readJson(path), path);

/**
 * What a JSON file holds, not yet checked.
 *
 * @param remedy  what to check when there is no such file
 * @throws {InputError} `no-such-file` or `broken-json`
 */
export const readJson = (path: string, remedy?: string): unknown => parseJson(readText(path, remedy), path);

/**
 * Checks a value against a record's schema, once it is brought to the current version.
 *
 * @param source  where it comes from, for the error: a file, a question, a flag
 * @throws {InputError} `bad-record` with all faults at once; `wrong-kind` for a record of another kind or version
 */
export function parseRecord<T>(wanted: RecordSchema<T>, given: unknown, source: string): T {
  const value = migrated(given);
  const schema = typeof wanted === 'function' ? wanted(value) : wanted;
  const result = schema.safeParse(value);
  if (result.success) return result.data;
  const kind = kindInTag(value);
  const faults = faultsOf(result.error.issues, schema, value);
  const tag = faults.find((fault) => fault.field === 'schema');
  if (tag && kind !== null)
    throw new InputError(
      'wrong-kind',
      {
        ...tag,
        hint: tag.rule.includes(`/${kind}/`)
          ? 'It belongs to another version of flarewise: compare it with the files in data/.'
          : kind === 'core'
            ? 'This is a core record; a ball record names it: "core": "<file>".'
            : `This is a ${kind} record; give it with --${kind}.`,
      },
      source,
    );
  throw new InputError('bad-record', faults, source, faultCount(result.error.issues));
}

/** A file as text; a byte order mark, which some editors put, is dropped. */
export const readText = (path: string, remedy?: string): string =>
  new TextDecoder('utf-8').decode(readBytes(path, 'a JSON file', remedy));

function parseJson(text: string, path: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    throw new InputError(
      'broken-json',
      {
        field: 'file',
        rule: 'must be valid JSON',
        got: text.trim() === '' ? 'an empty file' : placeOf(text),
        hint: 'Look there for a missing comma, quote or bracket; JSON has no comments and no comma after the last entry.',
      },
      path,
    );
  }
}

/** Line and column at which a text stops being JSON, with what stands there. */
function placeOf(text: string): string {
  const at = jsonFaultAt(text);
  if (at >= text.trimEnd().length) return 'a file that ends too soon';
  const before = text.slice(0, at).split('\n');
  const column = (before.at(-1) ?? '').length + 1;
  const there = (text.split('\n')[before.length - 1] ?? '').trim().slice(0, 40);
  return `a fault at line ${before.length}, column ${column}, near ${JSON.stringify(there)}`;
}

/** The kind in a record's tag, such as `ball`; null when it has none of ours. */
export function kindInTag(value: unknown): string | null {
  const tag =
    typeof value === 'object' && value !== null ? (value as { schema?: unknown }).schema : undefined;
  return typeof tag === 'string' ? (/^flarewise\/([a-z]+)\/\d+$/.exec(tag)?.[1] ?? null) : null;
}
