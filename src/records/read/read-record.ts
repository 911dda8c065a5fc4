import type { z } from 'zod';
import { type Fault, InputError } from '../../base/errors.js';
import { shortened } from '../../base/visible.js';
import { decodedText } from '../text/decoded-text.js';
import { faultCount, faultsOf } from './faults.js';
import { type JsonFault, jsonFault, MOST_DEPTH } from './json-fault.js';
import { type FileKind, JSON_FILE, readBytes } from './read-file.js';
import { withTypedNumbers } from './typed-numbers.js';
import { versionHint } from './version-hint.js';

/** A record's schema, or how to tell from the value which of several it should meet. */
export type RecordSchema<T> = z.ZodType<T> | ((value: unknown) => z.ZodType<T>);

/**
 * Reads one record from a JSON file.
 *
 * @param path  as the person typed it; it appears in the error
 * @throws {InputError} `no-such-file`, `broken-json`, `wrong-kind` or `bad-record`, with all faults at once
 */
export const readRecord = <T>(schema: RecordSchema<T>, path: string): T =>
  parseRecord(schema, readJson(path), path);

/**
 * What a JSON file holds, not yet checked.
 *
 * @param kind    how large it may be
 * @param remedy  what to check when there is no such file
 * @throws {InputError} `no-such-file` or `broken-json`
 */
export const readJson = (path: string, kind = JSON_FILE, remedy?: string): unknown =>
  parseJson(readText(path, kind, remedy), path);

/**
 * Checks a value against a record's schema, once its typed numbers are read.
 *
 * @param source  where it comes from, for the error: a file, a question, a flag
 * @throws {InputError} `bad-record` with all faults at once; `wrong-kind` for a record of another kind or version
 */
export function parseRecord<T>(wanted: RecordSchema<T>, given: unknown, source: string): T {
  const schema = typeof wanted === 'function' ? wanted(given) : wanted;
  const value = withTypedNumbers(schema, given);
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
          ? versionHint((value as { schema: string }).schema, tag.rule.replaceAll('"', ''))
          : kind === 'core'
            ? 'This is a core record; a ball record names it: "core": "<file>".'
            : `This is a ${kind} record; give it with --${kind}.`,
      },
      source,
    );
  throw new InputError('bad-record', faults, source, faultCount(result.error.issues));
}

/**
 * A file as text.
 *
 * @throws {InputError} as `readBytes` and `decodedText` do
 */
export const readText = (path: string, kind: FileKind, remedy?: string): string =>
  decodedText(readBytes(path, kind, remedy), path);

function parseJson(text: string, path: string): unknown {
  const fault = jsonFault(text);
  if (fault) throw new InputError('broken-json', { field: 'file', ...formatJsonFault(fault, text) }, path);
  return JSON.parse(text);
}

/** What is wrong with a text as JSON: where, what stands there, what to do. */
function formatJsonFault({ kind, at }: JsonFault, text: string): Omit<Fault, 'field'> {
  const lineStart = text.lastIndexOf('\n', at - 1) + 1;
  const place = `line ${text.slice(0, at).split('\n').length}, column ${at - lineStart + 1}`;
  const there = text.slice(at, at + 40).split(/[\r\n]/, 1)[0];
  if (kind === 'deep')
    return {
      rule: `must be JSON nested at most ${MOST_DEPTH} deep`,
      got: `deeper nesting at ${place}`,
      hint: 'Compare it with the files in data/.',
    };
  if (kind === 'twice')
    return {
      rule: 'must name each field once',
      got: `a second ${shortened(/^"(?:[^"\\]|\\.)*"?/.exec(there)?.[0] ?? there, 40)} at ${place}`,
      hint: 'Leave out one of the two.',
    };
  return {
    rule: 'must be valid JSON',
    got:
      text.trim() === ''
        ? 'an empty file'
        : at >= text.trimEnd().length
          ? 'a file that ends too soon'
          : `a fault at ${place}, near ${JSON.stringify(there)}`,
    hint: 'Look there for a missing comma, quote or bracket; JSON has no comments and no comma after the last entry.',
  };
}

/** The kind in a record's tag, such as `ball`; null when it has none of ours. */
export function kindInTag(value: unknown): string | null {
  const tag =
    typeof value === 'object' && value !== null ? (value as { schema?: unknown }).schema : undefined;
  return typeof tag === 'string' ? (/^flarewise\/([a-z]+)\/\d+$/.exec(tag)?.[1] ?? null) : null;
}
