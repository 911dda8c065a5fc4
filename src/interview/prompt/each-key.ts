// biome-ignore-start lint/suspicious/noControlCharactersInRegex: keys come as control signs
/** A key as a terminal sends it: an escape sequence (ECMA-48) or one character. */
const ONE_KEY = /\u001b\[[0-9;?]*[ -/]*[@-~]|\u001bO[A-Za-z]|[\s\S]/gu;
// biome-ignore-end lint/suspicious/noControlCharactersInRegex: keys come as control signs

/** What came in at once, key by key. */
export const eachKey = (chunk: string): readonly string[] => chunk.match(ONE_KEY) ?? [];
