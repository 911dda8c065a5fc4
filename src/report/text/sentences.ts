/** A text in its sentences; a full stop within a number ends none. */
export const sentences = (text: string): string[] => text.split(/(?<=[.!?]) (?=[A-Z0-9])/);
