import { readFileSync } from 'node:fs';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';

export const SCHEMAS = new URL('../../shared/schemas/', import.meta.url);

/** A schema as it is published. */
export const published = (file: string): string => readFileSync(new URL(file, SCHEMAS), 'utf8');

/** A published schema's validator: ajv in its strict mode, which knows the draft's keywords and our annotations `hint` and `unit` only. */
export function validator(name: string): ValidateFunction {
  const ajv = new Ajv2020({
    strict: true,
    allErrors: true,
    strictTuples: false,
    formats: { date: /^\d{4}-\d{2}-\d{2}$/, base64: /^[A-Za-z0-9+/]*={0,2}$/ }, // RFC 3339: full-date; RFC 4648, section 4
  });
  ajv.addVocabulary(['hint', 'unit']);
  ajv.addSchema(JSON.parse(published('parts.schema.json')), 'parts.schema.json');
  return ajv.getSchema(`${name}.schema.json`) ?? ajv.compile(JSON.parse(published(`${name}.schema.json`)));
}

/** What is wrong with a value by a published schema; nothing where it is valid. */
export function wrongBy(name: string, value: unknown): readonly string[] {
  const validate = validator(name);
  return validate(value)
    ? []
    : (validate.errors ?? []).map(({ instancePath, message }) => `${instancePath} ${message}`);
}
