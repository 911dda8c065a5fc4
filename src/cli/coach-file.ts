import { createHash } from 'node:crypto';
import { appendFileSync, existsSync, readFileSync, writeFileSync } from 'node:fs';
import { InputError } from '../errors.js';
import type { CoachLine } from '../records/coach-answer.js';

/*
 * A file of JSON lines that grows unit by unit. Behind the lines of each unit stands one that says which unit they
 * were: what comes before such a line is whole. So a run that was killed goes on where it stopped.
 */

const DONE = 'flarewise/coach-done/1';

/** A fingerprint of everything a unit's lines depend on, the bytes of meshes included. */
export const unitKey = (unit: unknown, told: unknown): string =>
  sha256(JSON.stringify([unit, told], withContents)).slice(0, 24);

/** JSON leaves out what maps hold, and spells bytes out one by one (a buffer even before it is handed here). */
function withContents(this: Readonly<Record<string, unknown>>, key: string, value: unknown): unknown {
  const held = this[key];
  if (held instanceof Uint8Array) return sha256(held);
  return held instanceof Map ? [...held] : value;
}

const sha256 = (data: string | Uint8Array): string => createHash('sha256').update(data).digest('hex');

/**
 * What a file holds already: lines by unit. A last unit that was cut short is taken off the file.
 *
 * @throws {InputError} `not-coach-lines` for a file that holds something else
 */
export function readCoachFile(path: string): ReadonlyMap<string, readonly CoachLine[]> {
  const units = new Map<string, readonly CoachLine[]>();
  if (!existsSync(path)) return units;
  const text = readFileSync(path, 'utf8');
  let whole = 0; // where the last whole unit ends
  let at = 0;
  let lines: CoachLine[] = [];
  for (const line of text.split('\n').slice(0, -1)) {
    at += line.length + 1;
    const value = parsed(line);
    if (typeof value?.schema !== 'string' || !value.schema.startsWith('flarewise/coach-'))
      throw new InputError('not-coach-lines', {
        field: '--out',
        rule: 'must be a new file, or one that flarewise coach wrote',
        got: JSON.stringify(path),
        hint: 'Name another file.',
      });
    if (value.schema === DONE) {
      units.set(String(value.key), lines);
      lines = [];
      whole = at;
    } else lines.push(value as unknown as CoachLine);
  }
  if (whole < text.length) writeFileSync(path, text.slice(0, whole));
  return units;
}

/** Puts a unit's lines at the end of a file. */
export const appendUnit = (path: string, key: string, lines: readonly CoachLine[]): void =>
  appendFileSync(path, [...lines, { schema: DONE, key }].map((line) => `${JSON.stringify(line)}\n`).join(''));

function parsed(line: string): Record<string, unknown> | null {
  try {
    return JSON.parse(line) as Record<string, unknown>;
  } catch {
    return null;
  }
}
