import { z } from 'zod';
import { type Fault, MOST_FAULTS } from '../../base/errors.js';
import { shortened, visible, visibleJson } from '../../base/visible.js';
import { meantBy, recordUnit, remedyOf } from '../schemas/quantity.js';
import { nearestWord } from '../text/nearest-word.js';
import { numberHint } from '../text/number-hint.js';

type Issue = z.core.$ZodIssue;

/** The issues of a failed check as faults: field, rule, value given, remedy. No more than an error names. */
export const faultsOf = (issues: readonly Issue[], schema: z.ZodType, value: unknown): Fault[] =>
  issues
    .slice(0, MOST_FAULTS)
    .flatMap((issue) =>
      issue.code === 'unrecognized_keys'
        ? unknownFields(issue, schema, value)
        : [faultOf(issue, schema, value)],
    )
    .slice(0, MOST_FAULTS);

/** How many faults a failed check found. */
export const faultCount = (issues: readonly Issue[]): number =>
  issues.reduce((sum, issue) => sum + (issue.code === 'unrecognized_keys' ? issue.keys.length : 1), 0);

function faultOf(issue: Issue, schema: z.ZodType, value: unknown): Fault {
  const given = valueAt(value, issue.path);
  const nearNumber =
    typeof given === 'string' && issue.code === 'invalid_type' && issue.expected === 'number'
      ? numberHint(given, unitAt(schema, issue.path, value))
      : null;
  const at = schemaAt(schema, issue.path, value);
  const hint = nearNumber ?? hintOf(issue) ?? (at && remedyOf(at)) ?? COMPARE;
  const missing = given === undefined;
  return {
    field: formatPath(issue.path),
    rule: ruleOf(issue),
    got: missing ? 'nothing: it is missing' : shorten(given),
    hint,
  };
}

/** Remedy for a field whose schema has none. */
const COMPARE = 'Compare it with the files in data/.';

/** The rule in words: the schema's own, except for objects and lists, for which schemas have none. */
function ruleOf(issue: Issue): string {
  if (issue.code !== 'invalid_type') return issue.message;
  if (issue.path.length === 0) return 'must be a JSON object';
  if (issue.expected === 'object') return 'must be an object: fields in { }';
  if (issue.expected === 'array') return 'must be a list: entries in [ ]';
  return issue.message;
}

function unknownFields(issue: Issue & { keys: string[] }, schema: z.ZodType, value: unknown): Fault[] {
  const known = Object.keys(shapeAt(schema, issue.path, value) ?? {});
  return issue.keys.slice(0, MOST_FAULTS).map((key) => {
    const near = nearestWord(key, known);
    return {
      field: formatPath([...issue.path, key]),
      rule: 'must not be there: no such field is known',
      got: shorten(valueAt(value, [...issue.path, key])),
      hint: near ? `Did you mean "${near}"?` : `Known fields: ${known.join(', ')}.`,
    };
  });
}

const hintOf = (issue: Issue): string | undefined =>
  issue.code === 'custom' ? (issue.params as { hint?: string } | undefined)?.hint : undefined;

/** The unit of the number at a path; '' where its schema names none. */
function unitAt(schema: z.ZodType, path: readonly PropertyKey[], value: unknown): string {
  const at = schemaAt(schema, path, value);
  return (at && recordUnit(at)) ?? '';
}

/**
 * The schema of the field at a path, without its `optional`, `nullable` and `default` wrappers; of a choice of several
 * schemas, the one the value says it is.
 */
function schemaAt(schema: z.ZodType, path: readonly PropertyKey[], value: unknown): z.ZodType | undefined {
  let at: z.ZodType | undefined = meantBy(schema, value);
  for (const [i, key] of path.entries()) {
    if (at instanceof z.ZodObject) at = at.shape[key as string] as z.ZodType | undefined;
    else if (at instanceof z.ZodArray) at = at.element as z.ZodType;
    else if (at instanceof z.ZodTuple) at = at.def.items[key as number] as z.ZodType | undefined;
    else return undefined;
    if (at) at = meantBy(at, valueAt(value, path.slice(0, i + 1)));
  }
  return at;
}

const shapeAt = (
  schema: z.ZodType,
  path: readonly PropertyKey[],
  value: unknown,
): Record<string, unknown> | undefined => {
  const at = schemaAt(schema, path, value);
  return at instanceof z.ZodObject ? at.shape : undefined;
};

function valueAt(value: unknown, path: readonly PropertyKey[]): unknown {
  let at: unknown = value;
  for (const key of path) {
    if (typeof at !== 'object' || at === null) return undefined;
    at = (at as Record<PropertyKey, unknown>)[key];
  }
  return at;
}

/** A path as it would be written in the file: `pap.overIn`, `zones[2].toFt`. */
const formatPath = (path: readonly PropertyKey[]): string =>
  path.reduce<string>(
    (text, key) => (typeof key === 'number' ? `${text}[${key}]` : text ? `${text}.${word(key)}` : word(key)),
    '',
  ) || 'record';

/** A name of a field; one from another program may have any length, or invisible characters. */
function word(key: PropertyKey): string {
  const name = shortened(String(key), 80);
  return visible(name).trim() === '' ? visibleJson(name) : name;
}

function shorten(value: unknown): string {
  const text = typeof value === 'number' ? String(value) : (JSON.stringify(value) ?? String(value));
  return shortened(text, 60);
}
