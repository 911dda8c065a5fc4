import { createPrompt, isEnterKey, type KeypressEvent, useKeypress, useState } from '@inquirer/core';
import { wrap } from '../../report/text/wrap.js';
import { isEscape, isStop } from './keys-apart.js';
import type { Keys } from './open-keys.js';
import type { Screen, ScreenLine } from './open-screen.js';
import type { Pressed } from './pressed.js';
import { type PromptOf, putPrompt } from './put-prompt.js';
import { shown } from './shown.js';

/** A question that is answered by choosing a line. */
interface ChoiceAsked {
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
export const askChoice = (asked: ChoiceAsked, screen: Screen, keys: Keys): Promise<Pressed<number>> =>
  putPrompt(choicePrompt, asked, screen, keys);

const choicePrompt: PromptOf<number, ChoiceAsked> = createPrompt(({ asked, screen }, done) => {
  const [mark, setMark] = useState<Marked>({ at: asked.start, typed: '' });
  useKeypress((key, rl) => {
    const sign = rl.line;
    rl.clearLine(0);
    const end = (ending: Parameters<typeof done>[0]): void => {
      rl.pause(); // what is pressed now is for the next prompt
      done(ending);
    };
    const isLost = !isFound(mark.typed, asked.options);
    if (isEnterKey(key) && !isLost) end({ did: 'give', given: mark.at });
    else if (sign === '?') end({ did: 'not-know' });
    else if (isEscape(key) || sign === asked.backSign) end({ did: 'go-back' });
    else if (isStop(key)) end({ did: 'stop', again: { ...asked, start: mark.at } });
    else setMark(marked(mark, key, sign, asked.options));
  });
  return shownChoice(asked, mark, screen);
});

/** Which line is marked, and what was typed to find it: where no line begins with that, the mark stays and Enter takes nothing. */
interface Marked {
  readonly at: number;
  readonly typed: string;
}

/** Which line is marked after a key, and the character that it typed, if any. */
export function marked(
  { at, typed }: Marked,
  { name }: Pick<KeypressEvent, 'name'>,
  sign: string,
  options: readonly Option[],
): Marked {
  const last = options.length - 1;
  const to = { up: at - 1, down: at + 1, pageup: at - 10, pagedown: at + 10, home: 0, end: last }[name];
  if (to !== undefined) return { at: Math.min(last, Math.max(0, to)), typed: '' };
  const letters = name === 'backspace' ? typed.slice(0, -1) : typed + sign;
  const place = placeOf(letters, options);
  return { at: letters === '' || place < 0 ? at : place, typed: letters };
}

const isFound = (letters: string, options: readonly Option[]): boolean =>
  letters === '' || placeOf(letters, options) >= 0;

/** The line that begins with some letters; by a number, the one whose note begins with it (`4 of 5`), else the one of that place. */
function placeOf(letters: string, options: readonly Option[]): number {
  const named = options.findIndex(({ label }) => label.toLowerCase().startsWith(letters.toLowerCase()));
  if (named >= 0 || !/^\d+$/.test(letters)) return named;
  const noted = options.findIndex(({ note }) => note?.startsWith(`${letters} `));
  return noted >= 0 ? noted : Number(letters) <= options.length ? Number(letters) - 1 : -1;
}

const typedText = (typed: string, options: readonly Option[]): string => {
  if (typed === '') return '';
  return isFound(typed, options)
    ? `Typed: ${typed}`
    : `No line begins with “${typed}”. Choose with the arrows, or take letters back.`;
};

function shownChoice(
  { question, help, options, fault = '', keysHelp }: ChoiceAsked,
  { at, typed }: Marked,
  screen: Screen,
): [string, string] {
  const lines = (text: string, indent: string, style?: ScreenLine['style']): readonly string[] =>
    wrap(text, screen.width, indent).map((line) => screen.painted({ text: line, style }));
  const above = [...lines(question, '', 'bold'), ...lines(help, '  ', 'dim')];
  const belowWith = (help: string): readonly string[] => [
    ...lines(fault, '  ', 'yellow'),
    ...lines(options[at]?.note ?? '', '    '),
    ...lines(typedText(typed, options), '  ', isFound(typed, options) ? 'dim' : 'yellow'),
    ...lines(help, '  ', 'dim'),
  ];
  const roomOver = (below: readonly string[]): number =>
    screen.canMove
      ? Math.max(3, Math.min(MOST_LINES, screen.rows - above.length - below.length))
      : options.length; // what is written stays, and can be read up to its beginning
  const isCut = roomOver(belowWith(keysHelp)) < options.length;
  const below = belowWith(
    isCut ? `${options.length} lines in all: arrows show the others. ${keysHelp}` : keysHelp,
  );
  const room = roomOver(below);
  const from = Math.max(0, Math.min(at - Math.floor(room / 2), options.length - room));
  const listed = options.map(({ label }, i) =>
    screen.painted(i === at ? { text: `> ${label}`, style: 'cyan' } : { text: `  ${label}` }),
  );
  return shown(
    [...above, ...listed.slice(from, at)],
    listed[at] ?? '',
    [...listed.slice(at + 1, from + room), ...below],
    screen,
  );
}
