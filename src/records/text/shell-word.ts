/** A word as a shell takes it whole: bare where it may be, in double quotes where nothing in it means more, else in single ones. */
export function shellWord(word: string): string {
  if (/^[\w@%+=:,./-]+$/.test(word)) return word;
  return /["$`\\!]/.test(word) ? `'${word.replaceAll("'", "'\\''")}'` : `"${word}"`;
}
