import type { Writable } from 'node:stream';
import { styleText } from 'node:util';
import { plainText } from '../../report/text/plain-text.js';
import { columnsOf, wrap } from '../../report/text/wrap.js';

/** Where questions are shown. */
export type ScreenOutput = Writable & { readonly columns?: number; readonly rows?: number };

/** How they are shown. */
export interface Look {
  readonly hasColour: boolean;
  /** Signs of ASCII only. */
  readonly ascii: boolean;
  /** Whether what was written can be written over: not on a dumb terminal. */
  readonly canMove: boolean;
}

/** A line with how it is painted. */
export interface ScreenLine {
  readonly text: string;
  readonly style?: 'bold' | 'dim' | 'cyan' | 'yellow';
}

/** A question as it stands on the screen. */
export interface Shown {
  readonly lines: readonly ScreenLine[];
  /** The line that the cursor stands on, and before which of its columns. */
  readonly focus: number;
  readonly column: number;
}

/** The end of the terminal on which a question stands until it is answered. */
export interface Screen {
  readonly width: number;
  readonly rows: number;
  /** A text in the signs that this screen has. */
  plain(text: string): string;
  /** Shows a question, in place of what was shown before it. */
  show(shown: Shown): void;
  /** What stays of a question that was answered, in place of it. */
  close(lines: readonly ScreenLine[]): void;
  /** Writes lines that stay, wrapped. */
  say(text: string, style?: ScreenLine['style'], indent?: string): void;
  /** Shows the same once more, below what may have been written since. */
  again(): void;
}

/** Widest lines that read well. */
const WIDEST = 100;

export function openScreen(output: ScreenOutput, { hasColour, ascii, canMove }: Look): Screen {
  let last: Shown | null = null;
  let spoken = '';
  const plain = (text: string): string => plainText(text, ascii);
  const painted = ({ text, style }: ScreenLine): string => {
    const cut = fitting(plain(text), screen.width);
    return hasColour && style && cut !== '' ? styleText(style, cut, { validateStream: false }) : cut;
  };
  /** Up to the first line of what is shown, and clears from there. */
  const clear = (): string =>
    last && canMove ? `${last.focus > 0 ? `\u001b[${last.focus}A` : ''}\r\u001b[J` : '';

  const screen: Screen = {
    get width() {
      return Math.min(WIDEST, (output.columns ?? 80) - 1);
    },
    get rows() {
      return output.rows ?? 24;
    },
    plain,
    show(shown) {
      const lines = shown.lines.map(painted);
      if (canMove) {
        const up = lines.length - 1 - shown.focus;
        const column = shown.column > 0 ? `\u001b[${shown.column}C` : '';
        output.write(`${clear()}${lines.join('\n')}${up > 0 ? `\u001b[${up}A` : ''}\r${column}`);
      } else {
        const focus = plain(shown.lines[shown.focus]?.text ?? '');
        const fresh = newLines(shown, last)
          .map((i) => lines[i])
          .join('\n');
        if (fresh !== '') output.write(`${last ? '\n' : ''}${fresh}\n${focus}`);
        else if (focus.startsWith(spoken)) output.write(focus.slice(spoken.length));
        else output.write(`\n${focus}`);
        spoken = focus;
      }
      last = shown;
    },
    close(lines) {
      output.write(`${canMove ? clear() : '\n'}${lines.map((line) => `${painted(line)}\n`).join('')}`);
      last = null;
      spoken = '';
    },
    say(text, style, indent = '') {
      for (const line of wrap(plain(text), screen.width, indent))
        output.write(`${painted({ text: line, ...(style ? { style } : {}) })}\n`);
    },
    again() {
      const shown = last;
      last = null;
      spoken = '';
      if (!shown) return;
      output.write('\n');
      screen.show(shown);
    },
  };
  return screen;
}

/** The lines to write where nothing can be written over: all of a new question, a fault that came up in the same one. */
function newLines(shown: Shown, last: Shown | null): readonly number[] {
  const isSame = last !== null && shown.lines[0]?.text === last.lines[0]?.text;
  return shown.lines.flatMap(({ text, style }, i) => {
    const isThere = isSame && (style !== 'yellow' || last.lines.some((line) => line.text === text));
    return i === shown.focus || isThere ? [] : [i];
  });
}

/** A text of at most so many columns. */
function fitting(text: string, width: number): string {
  if (columnsOf(text) <= width) return text;
  let cut = '';
  for (const sign of text) {
    if (columnsOf(cut + sign) > width - 3) break;
    cut += sign;
  }
  return `${cut}...`;
}
