/** The known word that a misspelt one may stand for: the nearest in letters, or one that begins with it. */
export function nearestWord(word: string, known: readonly string[]): string | null {
  let best: string | null = null;
  const most = Math.max(2, Math.floor(word.length / 3));
  let least = Math.min(most, Math.floor(word.length / 2)) + 1; // two slips in three letters are another word
  for (const candidate of known) {
    if (Math.abs(word.length - candidate.length) >= least) continue; // at least this many letters differ
    const distance = editDistance(word.toLowerCase(), candidate.toLowerCase());
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best ?? known.find((candidate) => word.length > 2 && startsWith(candidate, word)) ?? null;
}

const startsWith = (whole: string, start: string): boolean =>
  whole.toLowerCase().startsWith(start.toLowerCase());

/** Least number of letters put in, taken out or changed (Levenshtein, 1966), row by row. */
function editDistance(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++)
      next[j] = Math.min(row[j] + 1, next[j - 1] + 1, row[j - 1] + (a[i - 1] === b[j - 1] ? 0 : 1));
    row = next;
  }
  return row[b.length];
}
