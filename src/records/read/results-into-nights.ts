/*
 * A drilled layout of version 1 had results: a day, a lane, and numbers by eye. They become shots of nights, and what follows
 * one another on the same day and lane is one night. The record is not yet checked, so what is none is left to the check.
 */

type Fields = Readonly<Record<string, unknown>>;

/** The step from `flarewise/layout/1` to `flarewise/layout/2`; nothing that was logged is lost. */
export function resultsIntoNights({ results, ...record }: Fields): Record<string, unknown> {
  const nights = Array.isArray(results) ? nightsOf(results) : results;
  return { ...record, schema: 'flarewise/layout/2', ...(nights === undefined ? {} : { nights }) };
}

function nightsOf(results: readonly unknown[]): unknown[] {
  const nights: { readonly on?: unknown; readonly lane: unknown; readonly shots: unknown[] }[] = [];
  for (const result of results) {
    const { on, lane, ...shot } = isFields(result) ? result : { shot: result };
    const last = nights.at(-1);
    if (last && last.on === on && last.lane === lane) last.shots.push(shot);
    else nights.push({ ...(on === undefined ? {} : { on }), lane, shots: [shot] });
  }
  return nights;
}

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);
