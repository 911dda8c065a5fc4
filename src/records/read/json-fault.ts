/** Where a text is no JSON that is read here. */
export interface JsonFault {
  /** Stops being JSON, nests deeper than `MOST_DEPTH`, or names a field a second time. */
  readonly kind: 'syntax' | 'deep' | 'twice';
  /** Index of the character that cannot stand there; the text's length when it ends too soon. */
  readonly at: number;
}

/** Deepest nesting that is read. Records have 6 levels; what looks at them calls itself for each. */
export const MOST_DEPTH = 64;

/** What may come next. */
type Next = 'value' | 'first item' | 'first name' | 'name' | 'colon' | 'comma' | 'nothing';

/**
 * What is wrong with a text as JSON (RFC 8259); null when nothing is.
 *
 * Needed because `JSON.parse` names a position in some of its messages only, and takes the last of two fields
 * of one name without a word. In one pass without recursion: a text may be as deep or as long as it likes.
 */
export function jsonFault(text: string): JsonFault | null {
  const open: (Set<string> | null)[] = []; // names so far of an object, null for a list
  let next: Next = 'value';
  let at = 0;
  const syntax = (): JsonFault => ({ kind: 'syntax', at });

  for (;;) {
    while (isSpace(text.charCodeAt(at))) at++;
    const sign = text[at];
    if (sign === undefined) return next === 'nothing' ? null : syntax();
    if (closes(sign, next, open.at(-1))) {
      open.pop();
      next = open.length > 0 ? 'comma' : 'nothing';
      at++;
    } else if (next === 'value' || next === 'first item') {
      if (sign === '{' || sign === '[') {
        if (open.push(sign === '{' ? new Set() : null) > MOST_DEPTH) return { kind: 'deep', at };
        next = sign === '{' ? 'first name' : 'first item';
        at++;
      } else {
        const end = sign === '"' ? stringEnd(text, at) : atomEnd(text, at);
        at = end.at;
        if (!end.isSound) return syntax();
        next = open.length > 0 ? 'comma' : 'nothing';
      }
    } else if (next === 'name' || next === 'first name') {
      const start = at;
      if (sign !== '"') return syntax();
      const end = stringEnd(text, at);
      at = end.at;
      if (!end.isSound) return syntax();
      const names = open.at(-1) as Set<string>;
      const name: string = JSON.parse(text.slice(start, at));
      if (names.has(name)) return { kind: 'twice', at: start };
      names.add(name);
      next = 'colon';
    } else if (next === 'colon' && sign === ':') {
      next = 'value';
      at++;
    } else if (next === 'comma' && sign === ',') {
      next = open.at(-1) ? 'name' : 'value';
      at++;
    } else return syntax();
  }
}

/** Whether a character ends the innermost object or list at a place where it may end. */
function closes(sign: string, next: Next, innermost: Set<string> | null | undefined): boolean {
  if (sign === '}') return next === 'first name' || (next === 'comma' && innermost instanceof Set);
  return sign === ']' && (next === 'first item' || (next === 'comma' && innermost === null));
}

/** Index after a token, or of the character that spoils it. */
interface End {
  readonly at: number;
  readonly isSound: boolean;
}

/** @param start  of its opening quote */
function stringEnd(text: string, start: number): End {
  let at = start + 1;
  for (; at < text.length; at++) {
    const code = text.charCodeAt(at);
    if (code === QUOTE) return { at: at + 1, isSound: true };
    if (code < 0x20) return { at, isSound: false };
    if (code !== BACKSLASH) continue;
    const letter = text[at + 1] ?? '';
    if (
      letter === 'u' ? !HEX.test(text.slice(at + 2, at + 6)) : !'"\\/bfnrt'.includes(letter) || letter === ''
    )
      return { at: at + 1 < text.length ? at : text.length, isSound: false };
    at += letter === 'u' ? 5 : 1;
  }
  return { at, isSound: false };
}

const QUOTE = 0x22;
const BACKSLASH = 0x5c;
const HEX = /^[0-9a-fA-F]{4}$/;

/** A number, true, false or null. */
function atomEnd(text: string, start: number): End {
  for (const word of ['true', 'false', 'null'])
    if (text.startsWith(word, start)) return { at: start + word.length, isSound: true };
  const digitsEnd = (from: number): number => {
    let at = from;
    while (isDigit(text.charCodeAt(at))) at++;
    return at;
  };
  const whole = text[start] === '-' ? start + 1 : start;
  let at = text[whole] === '0' ? whole + 1 : digitsEnd(whole);
  if (at === whole) return { at: start, isSound: false };
  if (text[at] === '.' && isDigit(text.charCodeAt(at + 1))) at = digitsEnd(at + 1);
  const exponent = /^[eE][+-]?(?=\d)/.exec(text.slice(at, at + 3));
  return { at: exponent ? digitsEnd(at + exponent[0].length) : at, isSound: true };
}

const isDigit = (code: number): boolean => code >= 0x30 && code <= 0x39;
const isSpace = (code: number): boolean => code === 0x20 || code === 0x0a || code === 0x0d || code === 0x09;
