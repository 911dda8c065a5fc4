/*
 * Texts come from files of others, from file names and from what is pasted. A control sign in one could move a
 * terminal's cursor, a bidi sign turn the rest of a line around, and U+FFFF keep an XML reader from taking a file.
 */

/** What starts a new line or moves the cursor. */
const CONTROL = /[\p{Cc}\p{Zl}\p{Zp}]/u;

/** What shows nothing and may hide or turn around what follows. Joiners and variation selectors stay: names need them. */
const HIDDEN =
  /(?!\u200c|\u200d|[\ufe00-\ufe0f\u{e0100}-\u{e01ef}])[\p{Default_Ignorable_Code_Point}\p{Bidi_Control}\ufff9-\ufffb]/u;

/** What is no letter in any script: half a surrogate pair, and code points that Unicode keeps out of texts. */
const NO_SIGN = /[\p{Cs}\p{Noncharacter_Code_Point}]/u;

const CONTROLS = new RegExp(`${CONTROL.source}+`, 'gu');
const ALL_HIDDEN = new RegExp(HIDDEN.source, 'gu');
const NO_SIGNS = new RegExp(NO_SIGN.source, 'gu');
const UNSAFE = new RegExp(`${CONTROL.source}|${HIDDEN.source}|${NO_SIGN.source}`, 'gu');

/** A text on one line of which every sign can be seen: for terminals, tables, pictures and pages. */
export const visible = (text: string): string =>
  text.replace(CONTROLS, ' ').replace(ALL_HIDDEN, '').replace(NO_SIGNS, '\ufffd');

/** The same for a text of several lines. */
export const visibleLines = (text: string): string => text.split('\n').map(visible).join('\n');

/** A value as JSON that reads back the same, with what cannot be seen spelt `\u202e`. */
export const visibleJson = (value: unknown, indent?: number): string =>
  (JSON.stringify(value, null, indent) ?? 'null').replace(UNSAFE, (sign) =>
    sign === '\n'
      ? sign
      : Array.from(
          { length: sign.length },
          (_, i) => `\\u${sign.charCodeAt(i).toString(16).padStart(4, '0')}`,
        ).join(''),
  );

/** A text cut to this many signs, with dots where it continues. */
export const shortened = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most - 3)}...` : text;
