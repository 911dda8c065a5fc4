import { CLEARLY, PROBABLY, SLIGHTLY } from '../../records/schemas/sureness.js';

/** A share of worlds in words. */
export function verdict(share: number): string {
  if (share >= CLEARLY) return 'clearly better';
  if (share >= PROBABLY) return 'probably better';
  if (share >= SLIGHTLY) return 'slightly better';
  if (share > 1 - SLIGHTLY) return 'no real difference';
  return 'behind in most worlds';
}
