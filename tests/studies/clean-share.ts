import { FOOT, from } from '../../src/base/units.js';
import type { Shot } from '../../src/motion/shot/shot.js';

const OIL_THINS = from(30, FOOT);

/** Share of clean cover under the contact, mean over time from 30 ft to roll start (or the shot's end). */
export function cleanShare({ fresh, y, rollStart }: Shot): number {
  const end = rollStart < 0 ? y.length : rollStart;
  const seen = [...fresh.subarray(0, end)].filter((_, i) => y[i] > OIL_THINS);
  return seen.reduce((sum, share) => sum + share, 0) / seen.length;
}
