/** A count with what it counts: `1 shot`, `3 shots`. */
export const countOf = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;
