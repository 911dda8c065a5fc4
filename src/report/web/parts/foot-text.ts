/** Which program made a page, and what the page needs: nothing. */
export const footText = ({ version, seed }: { readonly version: string; readonly seed: number }): string =>
  `flarewise ${version}, seed ${seed}: the same inputs and seed give the same page. It is one file that fetches nothing and ` +
  'needs no licence; its text is set in your own fonts.';

/** With commas and a last "and". */
const LIST = new Intl.ListFormat('en-GB', { type: 'conjunction' });

/** Said where records are demos; null where none is. */
export const inventedText = (invented: readonly string[]): string | null =>
  invented.length === 0
    ? null
    : `A demonstration: the ${LIST.format(invented)} ${invented.length > 1 ? 'are' : 'is'} invented, so drill nothing by it.`;
