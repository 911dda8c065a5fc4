import { parseArgs } from 'node:util';
import { InputError, quotedTyped } from '../../base/errors.js';
import { readLine, type ShotLine } from '../../records/log/read-line.js';
import { LINE_READINGS } from '../../records/log/readings.js';
import type { LoggedShot } from '../../records/schemas/shot-log.js';
import { nightFlags, shotFlags } from '../flags/log-flags.js';
import type { LogOptions } from '../flags/options.js';
import { collectFaults } from '../terminal/collect-faults.js';
import { type TypedShot, turned } from './typed-shot.js';

/**
 * A shot by the words of its line and its flags.
 *
 * @param words  four boards, or none
 * @throws {InputErrors} all faults at once
 */
export function readTyped(words: readonly string[], options: LogOptions): TypedShot {
  const { line, shot, given } = collectFaults({
    line: () => (words.length === 0 ? {} : readLine(words)),
    shot: () => merged(collectFaults(shotFlags(options))),
    given: () => merged(collectFaults(nightFlags(options))),
  });
  const typed = { shot: { ...line, ...shot }, given };
  return options.otherSide ? turned(typed) : typed;
}

/** The readings of a line that were typed as not seen. */
export const unseenIn = (words: readonly string[], line: ShotLine): readonly (keyof LoggedShot)[] =>
  words.length === 0
    ? []
    : [
        ...LINE_READINGS.filter((id) => line[id] === undefined),
        ...(line.gutter ? [] : (['gutter'] as const)),
      ];

/** @throws {InputError} `shot-line` for a shot without any reading */
export function checkSeen({ note: _, confirmed: __, arrowsAgainstTarget: ___, ...seen }: LoggedShot): void {
  if (Object.keys(seen).length > 0) return;
  throw new InputError('shot-line', {
    field: 'the shot',
    rule: 'must say at least one thing that was seen',
    got: 'nothing',
    hint: 'Such as 20 14 8 17: laydown, arrows, breakpoint, pins.',
  });
}

/** The flags that a line typed at a question may have. */
const LINE_FLAGS = {
  'at-50': 'string',
  'breakpoint-ft': 'string',
  'display-speed': 'string',
  flare: 'string',
  'ring-over': 'string',
  'read-off': 'boolean',
  note: 'string',
  lane: 'string',
  games: 'string',
  target: 'string',
  pattern: 'string',
  error: 'string',
} as const;

/**
 * The words and flags of a line that was typed at a question: `20 14 8 17 --flare 5`; a text of several words stands in quotes.
 *
 * @throws {InputError} `shot-line` for an unknown flag
 */
export function splitLine(text: string): {
  readonly words: readonly string[];
  readonly options: Partial<LogOptions>;
} {
  const args = (text.match(/"[^"]*"|\S+/g) ?? []).map((word) => word.replace(/^"(.*)"$/, '$1'));
  const options = Object.fromEntries(Object.entries(LINE_FLAGS).map(([name, type]) => [name, { type }]));
  try {
    const { values, positionals } = parseArgs({ args, options, allowPositionals: true });
    const named = Object.entries(values).map(([name, value]) => [
      name.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase()),
      value,
    ]);
    return { words: positionals, options: Object.fromEntries(named) };
  } catch {
    throw new InputError('shot-line', {
      field: 'the shot',
      rule: 'must be four boards, then flags with their values',
      got: quotedTyped(text),
      hint: `Flags here: ${Object.keys(LINE_FLAGS)
        .map((name) => `--${name}`)
        .join(', ')}.`,
    });
  }
}

const merged = <T extends object>(parts: Readonly<Record<string, Partial<T>>>): Partial<T> =>
  Object.assign({}, ...Object.values(parts));
