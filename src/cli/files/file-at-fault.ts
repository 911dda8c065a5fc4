import { movedRefusal } from '../../records/refusals/moved-refusal.js';

/** What the flags that name records were given; a command that compares takes several balls. */
export interface NamedRecords {
  readonly bowler?: string | undefined;
  readonly ball?: string | readonly string[] | undefined;
  readonly lane?: string | undefined;
}

/**
 * A failure that names the record to correct, and its fields as they are in that record.
 *
 * @returns anything but a refusal about fields of one named record as it is
 */
export function withFileAtFault(error: unknown, { bowler, ball = [], lane }: NamedRecords): unknown {
  const balls = [ball].flat();
  const [only] = balls.length === 1 ? balls : [];
  const named = [
    ['bowler.', bowler],
    ['ball.', only],
    ...balls.map((each, i) => [`balls[${i}].`, each] as const),
    ['lane.', lane],
  ] as const;
  return named.reduce<unknown>(
    (found, [path, source]) => (source === undefined ? found : movedRefusal(found, path, '', source)),
    error,
  );
}
