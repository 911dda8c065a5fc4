import { Refusal, type RefusalStatement } from './refusal.js';

/**
 * A refusal of what stands at one path, with its fields at another: `ball.rgIn` becomes `balls[1].rgIn`, or `rgIn` in the ball's file.
 *
 * @param from    what all its fields begin with, `ball.`
 * @param to      what they begin with then
 * @param source  the record they come from, when known
 * @returns anything but a refusal whose fields all begin so, and that has no source yet, as it is
 */
export function movedRefusal(error: unknown, from: string, to: string, source?: string): unknown {
  if (!(error instanceof Refusal) || error.source !== undefined) return error;
  if (!error.statements.every((statement) => fieldOf(statement).startsWith(from))) return error;
  const moved = (statement: RefusalStatement): RefusalStatement =>
    ({
      ...statement,
      params: { ...statement.params, field: `${to}${fieldOf(statement).slice(from.length)}` },
    }) as RefusalStatement;
  return new Refusal(error.statements.map(moved), source);
}

const fieldOf = ({ params }: RefusalStatement): string => ('field' in params ? String(params.field) : '');
