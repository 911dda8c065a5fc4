/**
 * A typed text without white space at its ends and with one blank where it had some between.
 *
 * Expressions that follow look for one blank at most: with any number of them, `/\s*in$/` tries each start of a long
 * run in vain, which takes time with the square of its length.
 */
export const singleBlanks = (text: string): string => text.trim().replace(/\s+/g, ' ');
