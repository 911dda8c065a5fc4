import type { CoachLine } from '../records/answers/coach-answer.js';
import type { CoachRun } from './coach-pair.js';
import { type CoachUnit, coachUnit } from './coach-unit.js';
import { pairsShare } from './pairs-share.js';

/**
 * Works out units, several at a time, and hands each one's lines on in the order of the units.
 *
 * Units know nothing of one another, so the lines are the same however many workers there are.
 *
 * @param onUnit  called in order, as soon as a unit and all before it are done
 */
export async function coach(
  units: readonly CoachUnit[],
  run: CoachRun,
  workers: number,
  onUnit: (lines: readonly CoachLine[], index: number) => void,
): Promise<void> {
  if (workers <= 1) {
    const share = pairsShare();
    try {
      for (const [i, unit] of units.entries()) onUnit(await coachUnit(unit, { ...run, ...share }), i);
    } finally {
      await share.regression.close();
    }
    return;
  }
  const { threadPool } = await import('../threads/thread-pool.js');
  const pool = threadPool<CoachUnit, CoachLine[]>(
    new URL('./coach-worker.js', import.meta.url),
    workers,
    run,
  );
  const done: (readonly CoachLine[])[] = [];
  let next = 0;
  let handedOn = 0;
  // one unit a worker at a time: the pool would hand it more, which then all end late
  const workOn = async (): Promise<void> => {
    while (next < units.length) {
      const i = next++;
      done[i] = await pool.run(units[i]);
      for (; done[handedOn]; handedOn++) onUnit(done[handedOn], handedOn);
    }
  };
  try {
    await Promise.all(Array.from({ length: workers }, workOn));
  } finally {
    await pool.close();
  }
}
