import { Refusal, type RefusalStatement } from '../../records/refusals/refusal.js';

/** What the flags that name records were given. */
export interface NamedRecords {
  readonly bowler?: string | undefined;
  readonly ball?: string | undefined;
  readonly lane?: string | undefined;
}

/**
 * A failure that names the record to correct, and its fields as they are in that record.
 *
 * @returns anything but a refusal about fields of one named record as it is
 */
export function withFileAtFault(error: unknown, named: NamedRecords): unknown {
  if (!(error instanceof Refusal) || error.source !== undefined) return error;
  const kinds = (['bowler', 'ball', 'lane'] as const).filter((kind) =>
    error.statements.every((statement) => fieldOf(statement).startsWith(`${kind}.`)),
  );
  const source = kinds.length === 1 ? named[kinds[0]] : undefined;
  if (source === undefined) return error;
  const within = (statement: RefusalStatement): RefusalStatement =>
    ({
      ...statement,
      params: { ...statement.params, field: fieldOf(statement).slice(kinds[0].length + 1) },
    }) as RefusalStatement;
  return new Refusal(error.statements.map(within), source);
}

const fieldOf = ({ params }: RefusalStatement): string => ('field' in params ? String(params.field) : '');
