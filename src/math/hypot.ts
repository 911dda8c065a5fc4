/**
 * Square root of a sum of squares, to two units in the last place.
 *
 * `Math.hypot` scales its arguments first, each version of the language's engine in its own way; this is the same to the last bit in all.
 * It does not scale: sizes must be 0 or between 1e-150 and 1e150, as lengths in any unit are.
 */
export function hypot(...numbers: readonly number[]): number {
  let sum = 0;
  for (const number of numbers) sum += number * number;
  return Math.sqrt(sum);
}
