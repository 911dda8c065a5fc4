import { resultsIntoNights } from './results-into-nights.js';

/** Turns a record of one version into the next one; the new tag included. */
export type Migration = (record: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/**
 * The step out of each tag that is no longer the current one. A schema that only gains fields which may be left out needs
 * no new version.
 */
const MIGRATIONS: Readonly<Record<string, Migration>> = { 'flarewise/layout/1': resultsIntoNights };

/** A record brought to the current version, step by step; anything else is handed on as it is. */
export function migrated(value: unknown, steps: Readonly<Record<string, Migration>> = MIGRATIONS): unknown {
  let at = value;
  for (let step = stepFrom(at, steps); step; step = stepFrom(at, steps))
    at = step(at as Record<string, unknown>);
  return at;
}

function stepFrom(value: unknown, steps: Readonly<Record<string, Migration>>): Migration | undefined {
  const tag = typeof value === 'object' && value !== null ? (value as { schema?: unknown }).schema : null;
  return typeof tag === 'string' && Object.hasOwn(steps, tag) ? steps[tag] : undefined;
}
