import { wrap } from '../../report/text/wrap.js';
import type { Key } from './keys.js';
import type { Keys } from './open-keys.js';
import type { Screen, ScreenLine, Shown } from './open-screen.js';
import type { Pressed } from './pressed.js';

/** A question that is answered by choosing a line. */
export interface ChoiceAsked {
  readonly question: string;
  readonly help: string;
  readonly options: readonly Option[];
  /** Which is marked at first. */
  readonly start: number;
  readonly backSign: string;
  /** What is wrong and where, to stand below. */
  readonly fault?: string | undefined;
  /** Which keys do what; said below the options. */
  readonly keysHelp: string;
}

interface Option {
  readonly label: string;
  /** Said below the list while the line is marked. */
  readonly note?: string | undefined;
}

/** Lines that a list takes at most, where the terminal has more. */
const MOST_LINES = 24;

/** Lets a line be chosen with arrows, its number or its first letters. @returns the place of the chosen one */
export async function askChoice(asked: ChoiceAsked, screen: Screen, keys: Keys): Promise<Pressed<number>> {
  let state: Marked = { at: asked.start, typed: '' };
  for (;;) {
    screen.show(shownChoice(asked, state.at, screen));
    const key = await keys.next();
    switch (key.name) {
      case 'leave':
      case 'end-of-input':
        return { did: 'leave' };
      case 'escape':
        return { did: 'go-back' };
      case 'enter':
        return { did: 'give', given: state.at };
      default:
        if (key.name === 'text' && key.text === '?') return { did: 'not-know' };
        if (key.name === 'text' && key.text === asked.backSign) return { did: 'go-back' };
        state = marked(state, key, asked.options);
    }
  }
}

/** Which line is marked, and the letters typed to find it. */
interface Marked {
  readonly at: number;
  readonly typed: string;
}

/** Which line is marked after a key. */
export function marked({ at, typed }: Marked, key: Key, options: readonly Option[]): Marked {
  const last = options.length - 1;
  const move = (to: number): Marked => ({ at: Math.min(last, Math.max(0, to)), typed: '' });
  switch (key.name) {
    case 'up':
      return move(at - 1);
    case 'down':
      return move(at + 1);
    case 'page-up':
      return move(at - 10);
    case 'page-down':
      return move(at + 10);
    case 'home':
      return move(0);
    case 'end':
      return move(last);
    case 'text': {
      for (const letters of [typed + key.text, key.text]) {
        const place = placeOf(letters, options);
        if (place >= 0) return { at: place, typed: letters };
      }
      return { at, typed: '' };
    }
    default:
      return { at, typed };
  }
}

/** The line that begins with some letters; by a number, the one whose note begins with it (`4 of 5`), else the one of that place. */
function placeOf(letters: string, options: readonly Option[]): number {
  const named = options.findIndex(({ label }) => label.toLowerCase().startsWith(letters.toLowerCase()));
  if (named >= 0 || !/^\d+$/.test(letters)) return named;
  const noted = options.findIndex(({ note }) => note?.startsWith(`${letters} `));
  return noted >= 0 ? noted : Number(letters) <= options.length ? Number(letters) - 1 : -1;
}

function shownChoice(
  { question, help, options, fault, keysHelp }: ChoiceAsked,
  at: number,
  { width, rows }: Screen,
): Shown {
  const dim = (text: string): readonly ScreenLine[] =>
    wrap(text, width, '  ').map((line) => ({ text: line, style: 'dim' }));
  const above: readonly ScreenLine[] = [
    ...wrap(question, width).map((text): ScreenLine => ({ text, style: 'bold' })),
    ...(help === '' ? [] : dim(help)),
  ];
  const note = options[at]?.note;
  const below: readonly ScreenLine[] = [
    ...(fault === undefined
      ? []
      : wrap(fault, width, '  ').map((text): ScreenLine => ({ text, style: 'yellow' }))),
    ...(note === undefined ? [] : wrap(note, width, '    ').map((text): ScreenLine => ({ text }))),
    ...dim(keysHelp),
  ];
  const room = Math.max(3, Math.min(MOST_LINES, rows - above.length - below.length));
  const from = Math.max(0, Math.min(at - Math.floor(room / 2), options.length - room));
  const listed = options
    .slice(from, from + room)
    .map(
      ({ label }, i): ScreenLine =>
        from + i === at ? { text: `> ${label}`, style: 'cyan' } : { text: `  ${label}` },
    );
  return { lines: [...above, ...listed, ...below], focus: above.length + at - from, column: 0 };
}
