import { InputError, quotedTyped } from '../../base/errors.js';
import { visible } from '../../base/visible.js';
import { nameField } from '../../records/schemas/quantity.js';
import { commandsOf } from '../../report/screens/next-steps.js';
import { KEPT_KINDS, type KeptKind, keepNamed } from '../files/keep-named.js';
import { knownIds } from '../files/known-ids.js';
import { nextCommands } from '../print/next-commands.js';
import { pageFor } from '../print/page-for.js';
import { askedLine } from './asked-line.js';
import { bestOf, type Standing } from './standing.js';

/** Keeps bowler, ball and lane under names, each but those that have an id already, and says the next command with all ids. */
export async function keepRecords(standing: Standing): Promise<void> {
  const { inputs, options, terminal } = standing;
  const known = knownIds(inputs, terminal);
  const names: { [K in KeptKind]?: string } = {};
  const unnamed = KEPT_KINDS.filter((each) => known[each] === undefined);
  for (const kind of unnamed) {
    const { name } = inputs[kind];
    const given = await askedLine(
      {
        question: `Name to save this ${kind} under?`,
        help: 'Enter takes the name shown. Escape skips it.',
        usual: NAMES_FOR[name] ?? visible(name),
        read: checkedName,
      },
      standing,
    );
    if (given !== null) names[kind] = given;
  }
  const ids = { ...known, ...(await keepNamed(names, inputs, terminal)) };
  const missing = KEPT_KINDS.filter((kind) => ids[kind] === undefined);
  const next = nextCommands({ ...ids, layout: bestOf(standing).text, units: options.units }, ['sheet']);
  const lines =
    missing.length > 0
      ? [`Not saved: ${missing.join(', ')}.`]
      : [
          ...(unnamed.length === 0 ? ['Nothing to save: all three have an id already.'] : []),
          ...commandsOf(next, pageFor(options, terminal).width),
        ];
  terminal.stderr.write(`${lines.join('\n')}\n`);
}

/** What an interview calls those that nothing names yet, and a name for each. */
const NAMES_FOR: Readonly<Record<string, string>> = { You: 'Me', 'Your ball': 'New ball' };

function checkedName(text: string): string {
  const result = nameField.safeParse(text);
  if (result.success) return result.data;
  const rule = result.error.issues[0]?.message ?? 'cannot be used';
  throw new InputError('name', { field: 'the name', rule, got: quotedTyped(text) });
}
