import { nearestWord } from '../../records/text/nearest-word.js';

/** `Did you mean list? `, to stand before what else there is to say; empty where no known word is near. */
export function didYouMean(word: string, known: readonly string[]): string {
  const near = nearestWord(word, known);
  return near ? `Did you mean ${near}? ` : '';
}
