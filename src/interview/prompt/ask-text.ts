import { visible } from '../../base/visible.js';
import { columnsOf, wrap } from '../../report/text/wrap.js';
import { EMPTY, edited, type Typed } from './edited.js';
import type { Keys } from './open-keys.js';
import type { Screen, ScreenLine } from './open-screen.js';
import type { Pressed } from './pressed.js';

/** A question that is answered by typing. */
export interface TextAsked {
  readonly question: string;
  readonly help: string;
  /** What Enter alone gives. */
  readonly usual?: string | undefined;
  /** Goes back, wherever it is typed; null where it may be part of an answer. */
  readonly backSign: string | null;
  /** What is wrong with an answer; null for nothing. */
  readonly faultOf: (text: string) => string | null;
}

const INDENT = '  ';

/** Asks until a sound answer is given. A refused one is taken out of the way of the next; its fault says what it was. */
export async function askText(asked: TextAsked, screen: Screen, keys: Keys): Promise<Pressed<string>> {
  let typed = EMPTY;
  let fault: string | null = null;
  for (;;) {
    screen.show(shownText(asked, typed, fault, screen.width));
    const key = await keys.next();
    const text = typed.signs.join('');
    switch (key.name) {
      case 'leave':
      case 'end-of-input':
        return { did: 'leave' };
      case 'escape':
        return { did: 'go-back' };
      case 'enter': {
        const given = text.trim() === '' ? (asked.usual ?? '') : text;
        fault = asked.faultOf(given);
        if (fault === null) return { did: 'give', given };
        typed = EMPTY;
        break;
      }
      default:
        if (key.name === 'text' && key.text === '?' && text === '') return { did: 'not-know' };
        if (key.name === 'text' && key.text === asked.backSign) return { did: 'go-back' };
        typed = edited(typed, key);
        if (key.name === 'text') fault = null;
    }
  }
}

function shownText(
  { question, help, usual }: TextAsked,
  { signs, at }: Typed,
  fault: string | null,
  width: number,
) {
  const above: ScreenLine[] = [
    ...wrap(question, width).map((text) => ({ text, style: 'bold' as const })),
    ...wrap(help, width, INDENT).map((text) => ({ text, style: 'dim' as const })),
    ...(fault === null ? [] : wrap(fault, width, INDENT).map((text) => ({ text, style: 'yellow' as const }))),
  ];
  const head = usual === undefined || usual === '' ? '> ' : `> (${visible(usual)}) `;
  const { text, column } = within(signs, at, width - columnsOf(head) - 1);
  return {
    lines: [...above, { text: `${head}${text}` }],
    focus: above.length,
    column: columnsOf(head) + column,
  };
}

/** The part of a typed line that fits, with the cursor in it. */
function within(signs: readonly string[], at: number, room: number): { text: string; column: number } {
  const shown = signs.map(visible);
  let from = 0;
  while (from < at && columnsOf(shown.slice(from, at).join('')) >= room) from += 1;
  let to = shown.length;
  while (to > at && columnsOf(shown.slice(from, to).join('')) > room) to -= 1;
  return { text: shown.slice(from, to).join(''), column: columnsOf(shown.slice(from, at).join('')) };
}
