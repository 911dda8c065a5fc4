/** From this share of worlds on a layout counts as better at all (our own choice; a coin has 0.5). */
export const SLIGHT = 0.55;

/** A share of worlds in words; the other thresholds are our own choice too. */
export function verdict(share: number): string {
  if (share >= 0.9) return 'clearly better';
  if (share >= 0.7) return 'probably better';
  if (share >= SLIGHT) return 'slightly better';
  if (share > 0.45) return 'no real difference';
  return 'ahead only on the mean';
}
