import { InputError } from '../../base/errors.js';

/**
 * The text of a file in UTF-8, without the byte order mark that some editors put.
 *
 * @param source  the file, for the error
 * @throws {InputError} `not-utf8` for another encoding: a misread letter would end up in records and sheets
 */
export function decodedText(bytes: Uint8Array, source: string): string {
  if (isUtf16(bytes)) throw notUtf8('a text in UTF-16', source);
  try {
    return new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    const before = new TextDecoder('utf-8').decode(bytes).split('\ufffd', 1)[0];
    throw notUtf8(`other bytes in line ${before.split('\n').length}`, source);
  }
}

/** Text in UTF-16 begins with a mark, or has a zero in its first or second byte. */
const isUtf16 = ([first, second]: Uint8Array): boolean =>
  (first === 0xff && second === 0xfe) || (first === 0xfe && second === 0xff) || first === 0 || second === 0;

const notUtf8 = (got: string, source: string): InputError =>
  new InputError(
    'not-utf8',
    {
      field: 'file',
      rule: 'must be text in UTF-8',
      got,
      hint: 'Save it as UTF-8: an editor asks for the encoding, a spreadsheet offers "CSV UTF-8".',
    },
    source,
  );
