/**
 * The first of some settings, coarse to fine, from which on all are good enough: a coarse one may be so by luck.
 *
 * @throws {Error} when not even the finest is
 */
export function coarsest(settings: readonly number[], isGood: (setting: number) => boolean): number {
  let found: number | undefined;
  for (const setting of [...settings].reverse()) {
    if (!isGood(setting)) break;
    found = setting;
  }
  if (found === undefined) throw new Error('no setting tried is good enough');
  return found;
}
