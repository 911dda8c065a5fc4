/** What to do about a file of another version of its kind; both tags are as `flarewise/ball/1`. */
export const versionHint = (given: string, wanted: string): string =>
  versionOf(given) > versionOf(wanted)
    ? 'A later version of flarewise wrote it: install that version.'
    : 'It belongs to another version of flarewise: compare it with the files in data/.';

const versionOf = (tag: string): number => Number(/\d+$/.exec(tag)?.[0]);
