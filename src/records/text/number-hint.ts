/** What to do about a text that is nearly a number; null where it is not clear what was meant. */
export function numberHint(text: string): string | null {
  const comma = /^\s*([+-]?\d{1,9}),(\d{1,9})(?!\d)/.exec(text);
  if (comma) return `Numbers need a decimal point, not a comma: ${comma[1]}.${comma[2]}.`;
  return /\d\/0+(?![\d.])/.test(text) ? 'A fraction cannot be divided by 0.' : null;
}
