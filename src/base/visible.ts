/*
 * Texts come from other people's files, from file names and from the clipboard. In them a control character could move a terminal's
 * cursor, a bidirectional one could turn the rest of a line around, and U+FFFF makes XML readers refuse a file.
 */

/** Characters that start a new line or move the cursor. */
const CONTROL = /[\p{Cc}\p{Zl}\p{Zp}]/u;

/** Characters that show nothing and may hide or reverse what follows. Joiners and variation selectors stay, since names need them. */
const HIDDEN =
  /(?!\u200c|\u200d|[\ufe00-\ufe0f\u{e0100}-\u{e01ef}])[\p{Default_Ignorable_Code_Point}\p{Bidi_Control}\ufff9-\ufffb]/u;

/** Code points that are no characters: lone surrogates, and those that Unicode keeps out of texts. */
const NO_CHARACTER = /[\p{Cs}\p{Noncharacter_Code_Point}]/u;

const CONTROLS = new RegExp(`${CONTROL.source}+`, 'gu');
const ALL_HIDDEN = new RegExp(HIDDEN.source, 'gu');
const NO_CHARACTERS = new RegExp(NO_CHARACTER.source, 'gu');
const UNSAFE = new RegExp(`${CONTROL.source}|${HIDDEN.source}|${NO_CHARACTER.source}`, 'gu');

/** A text on one line, without invisible characters: for terminals, tables, pictures and pages. */
export const visible = (text: string): string =>
  text.replace(CONTROLS, ' ').replace(ALL_HIDDEN, '').replace(NO_CHARACTERS, '\ufffd');

/** The same for a text of several lines. */
export const visibleLines = (text: string): string => text.split('\n').map(visible).join('\n');

/** A value as JSON that reads back the same, with invisible characters written as escapes such as `\u202e`. */
export const visibleJson = (value: unknown, indent?: number): string =>
  (JSON.stringify(value, null, indent) ?? 'null').replace(UNSAFE, (found) =>
    found === '\n'
      ? found
      : Array.from(
          { length: found.length },
          (_, i) => `\\u${found.charCodeAt(i).toString(16).padStart(4, '0')}`,
        ).join(''),
  );

/** A text cut to this many characters (UTF-16 code units), the last three of them dots where it is cut. */
export const shortened = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most - 3)}...` : text;
