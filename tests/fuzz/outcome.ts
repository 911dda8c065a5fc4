import { type Fault, InputError } from '../../src/base/errors.js';
import { Refusal } from '../../src/records/refusals/refusal.js';
import { UNITS } from '../../src/report/text/display-units.js';
import { formatRefusal } from '../../src/report/wording/refusals/word-refusal.js';
import type { Target } from './target.js';

/** How an input ends. The first two are as they should be. */
export const OUTCOMES = ['accepted', 'refused', 'unworded', 'crash', 'not finite', 'slow'] as const;

export interface Ending {
  readonly outcome: (typeof OUTCOMES)[number];
  /** The rule that refuses it, or what went wrong. */
  readonly detail: string;
}

/** Most processor time that an input may take, s, where its target says nothing else: a person would think that the program hangs. */
const MOST_SECONDS = 2;

/** Gives a target one input. Never throws. */
export async function endingOf(
  { take, mostSeconds = MOST_SECONDS }: Target,
  input: unknown,
): Promise<Ending> {
  const before = process.cpuUsage();
  const ending = await takenBy(take, input);
  const { user, system } = process.cpuUsage(before);
  const seconds = (user + system) / 1e6;
  const isSound = ending.outcome === 'accepted' || ending.outcome === 'refused';
  return isSound && seconds > mostSeconds
    ? { outcome: 'slow', detail: `${seconds.toFixed(1)} s; ${ending.detail}` }
    : ending;
}

async function takenBy(take: Target['take'], input: unknown): Promise<Ending> {
  try {
    const bad = notFinite(await take(input as never));
    return bad === null ? { outcome: 'accepted', detail: '' } : { outcome: 'not finite', detail: bad };
  } catch (error) {
    if (error instanceof InputError) return refused(error);
    if (error instanceof Refusal) return refused(formatRefusal(error, UNITS.trade));
    return {
      outcome: 'crash',
      detail: error instanceof Error ? (error.stack ?? error.message) : String(error),
    };
  }
}

function refused({ code, faults }: InputError): Ending {
  const poor = faults.find((fault) => lacks(fault).length > 0);
  if (faults.length === 0) return { outcome: 'unworded', detail: `${code}: no fault` };
  if (poor)
    return { outcome: 'unworded', detail: `${code}: no ${lacks(poor).join(', ')}: ${JSON.stringify(poor)}` };
  return { outcome: 'refused', detail: `${code}: ${faults[0].rule.replace(/\d+/g, '0')}` };
}

/** Which of field, rule, value and remedy a fault does not say. */
const lacks = (fault: Fault): readonly string[] =>
  (['field', 'rule', 'got', 'hint'] as const).filter((part) => !fault[part]?.trim());

/** Where in a value a number is none, or infinite; null where all are finite. */
export function notFinite(value: unknown, at = ''): string | null {
  if (typeof value === 'number') return Number.isFinite(value) ? null : `${at || 'it'} is ${value}`;
  if (typeof value !== 'object' || value === null) return null;
  const parts = value instanceof Map ? value.entries() : Object.entries(value);
  for (const [key, part] of parts) {
    const found = notFinite(part, `${at}.${key}`);
    if (found !== null) return found;
  }
  return null;
}
