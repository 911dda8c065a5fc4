/** The part of semver that the tests use; it comes without types. */
export function subset(range: string, of: string): boolean;
