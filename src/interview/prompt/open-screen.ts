import type { Writable } from 'node:stream';
import { Chalk } from 'chalk';
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
  readonly style?: 'bold' | 'dim' | 'cyan' | 'yellow' | undefined;
}

/** The end of the terminal on which questions are put. */
export interface Screen {
  readonly output: ScreenOutput;
  readonly canMove: boolean;
  readonly width: number;
  readonly rows: number;
  /** A text in the characters that this screen can show. */
  plain(text: string): string;
  /** A text of at most the screen's width, in its characters and colours. */
  painted(line: ScreenLine): string;
  /** Writes lines that stay, cut where they are too long. */
  write(lines: readonly ScreenLine[]): void;
  /** Writes a text that stays, wrapped. */
  say(text: string, style?: ScreenLine['style'], indent?: string): void;
}

/** Widest lines that read well. */
const WIDEST = 100;

export function openScreen(output: ScreenOutput, { hasColour, ascii, canMove }: Look): Screen {
  const chalk = new Chalk({ level: hasColour ? 1 : 0 });
  const screen: Screen = {
    output,
    canMove,
    get width() {
      return Math.min(WIDEST, (output.columns ?? 80) - 1);
    },
    get rows() {
      return output.rows ?? 24;
    },
    plain: (text) => plainText(text, ascii),
    painted({ text, style }) {
      const cut = fitting(screen.plain(text), screen.width);
      return style ? chalk[style](cut) : cut;
    },
    write(lines) {
      output.write(lines.map((line) => `${screen.painted(line)}\n`).join(''));
    },
    say(text, style, indent = '') {
      screen.write(wrap(screen.plain(text), screen.width, indent).map((line) => ({ text: line, style })));
    },
  };
  return screen;
}

/** A text of at most this many columns. */
function fitting(text: string, width: number): string {
  if (columnsOf(text) <= width) return text;
  const signs = [...text];
  while (columnsOf(signs.join('')) > width - 3) signs.pop();
  return `${signs.join('')}...`;
}
