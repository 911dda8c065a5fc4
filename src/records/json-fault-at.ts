/**
 * Where a text stops being JSON (RFC 8259): index of the first token that cannot stand there; the text's
 * length when it ends too soon, or when nothing is wrong.
 *
 * Needed because `JSON.parse` names a position in some of its messages only.
 */
export function jsonFaultAt(text: string): number {
  const SPACE = /[ \t\n\r]*/y;
  const STRING = /"(?:[ !#-[\]-\uffff]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"/y;
  const ATOM = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?|true|false|null/y;
  let at = 0;

  const skip = (pattern: RegExp): boolean => {
    pattern.lastIndex = at;
    const found = pattern.exec(text);
    if (found) at += found[0].length;
    return found !== null;
  };
  const take = (sign: string): boolean => {
    skip(SPACE);
    if (text[at] !== sign) return false;
    at += 1;
    return true;
  };
  const value = (): boolean => {
    if (take('{')) return list('}', member);
    if (take('[')) return list(']', value);
    return skip(STRING) || skip(ATOM);
  };
  const member = (): boolean => {
    skip(SPACE);
    return skip(STRING) && take(':') && value();
  };
  const list = (close: string, item: () => boolean): boolean => {
    if (take(close)) return true;
    do if (!item()) return false;
    while (take(','));
    return take(close);
  };

  if (value()) skip(SPACE);
  return at;
}
