import { readFileSync } from 'node:fs';
import type { z } from 'zod';
import { InputError } from '../errors.js';
import { faultsOf } from './faults.js';
import { jsonFaultAt } from './json-fault-at.js';
import { migrated } from './migrate.js';

/**
 * Reads one record from a JSON file.
 *
 * @param path  as the person typed it; it stands in the error
 * @throws {InputError} `no-such-file`, `broken-json`, `wrong-kind` or `bad-record`, with all faults at once
 */
export function readRecord<T>(schema: z.ZodType<T>, path: string): T {
  return parseRecord(schema, readJson(path), path);
}

/**
 * Reads a JSON file, not yet checked for what it holds.
 *
 * @throws {InputError} `no-such-file` or `broken-json`, with the place of the fault
 */
export const readJson = (path: string): unknown => parseJson(readText(path), path);

/**
 * Checks a value against a record's schema, once it is brought to the current version.
 *
 * @param source  where it comes from, for the error: a file, a question, a flag
 * @throws {InputError} `bad-record` with all faults at once; `wrong-kind` for a record of another kind or version
 */
export function parseRecord<T>(schema: z.ZodType<T>, given: unknown, source: string): T {
  const value = migrated(given);
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
          : `This is a ${kind} record; give it with --${kind}.`,
      },
      source,
    );
  throw new InputError('bad-record', faults, source);
}

/** @throws {InputError} `no-such-file` */
export function readText(path: string): string {
  try {
    return readFileSync(path, 'utf8').replace(/^\uFEFF/, ''); // some editors put a byte order mark
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    const WHY: Record<string, [string, string]> = {
      ENOENT: [
        'does not exist',
        'Check the spelling and the folder; demo records go by their id, without folder or ending.',
      ],
      EISDIR: ['is a folder', 'Name one JSON file in it.'],
      EACCES: ['may not be read', 'Check its permissions.'],
    };
    const [got, hint] = WHY[code ?? ''] ?? [
      `cannot be read (${code ?? 'unknown reason'})`,
      'Check the disk and the name.',
    ];
    throw new InputError(
      'no-such-file',
      { field: 'file', rule: 'must be a JSON file that can be read', got: `one that ${got}`, hint },
      path,
    );
  }
}

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
