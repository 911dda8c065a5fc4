/** A text with its first letter as a capital: `Hook start`. */
export const capital = (text: string): string => `${text.charAt(0).toUpperCase()}${text.slice(1)}`;
