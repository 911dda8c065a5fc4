/** A key as it was pressed: a sign that is typed, or one that does something. */
export type Key =
  | { readonly name: 'text'; readonly text: string }
  | { readonly name: (typeof NAMES)[keyof typeof NAMES] | 'other' | 'end-of-input' };

/** What each control sign and escape sequence stands for (ECMA-48, and what common terminals send for their keys). */
const NAMES = {
  '\r': 'enter',
  '\n': 'enter',
  '\t': 'other',
  '\u007f': 'erase',
  '\b': 'erase',
  '\u0003': 'leave',
  '\u0004': 'leave',
  '\u001a': 'suspend',
  '\u0015': 'clear',
  '\u001b': 'escape',
  '\u001b[A': 'up',
  '\u001bOA': 'up',
  '\u001b[B': 'down',
  '\u001bOB': 'down',
  '\u001b[C': 'right',
  '\u001bOC': 'right',
  '\u001b[D': 'left',
  '\u001bOD': 'left',
  '\u001b[H': 'home',
  '\u001b[1~': 'home',
  '\u001bOH': 'home',
  '\u001b[F': 'end',
  '\u001b[4~': 'end',
  '\u001bOF': 'end',
  '\u001b[5~': 'page-up',
  '\u001b[6~': 'page-down',
  '\u001b[3~': 'delete',
} as const satisfies Readonly<Record<string, string>>;

// biome-ignore lint/suspicious/noControlCharactersInRegex: keys come as control signs
const ONE_KEY = /\u001b\[[0-9;?]*[ -/]*[@-~]|\u001bO[A-Za-z]|[\s\S]/gu;

/** What came in at once as keys. Each Escape that nothing follows is one, however fast they come. */
export const keysIn = (chunk: string): readonly Key[] =>
  (chunk.match(ONE_KEY) ?? []).map((sequence): Key => {
    if (Object.hasOwn(NAMES, sequence)) return { name: NAMES[sequence as keyof typeof NAMES] };
    return /^[\p{Cc}]/u.test(sequence) ? { name: 'other' } : { name: 'text', text: sequence };
  });

/** Whether more may follow that belongs to the last key: an escape sequence may come in pieces. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: keys come as control signs
export const mayGoOn = (chunk: string): boolean => /\u001b(?:\[[0-9;?]*[ -/]*|O)?$/.test(chunk);
