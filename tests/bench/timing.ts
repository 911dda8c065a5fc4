import { cpus } from 'node:os';

/** Time of one call, ms: median and 90th percentile over batches. */
export interface Timing {
  readonly median: number;
  readonly p90: number;
}

type Call = (n: number) => unknown;

/**
 * Times calls against one another: each is warmed up, then they take turns batch by batch, so that what else
 * the machine does weighs on all alike. A batch is long enough for the clock.
 */
export function timeTogether(calls: readonly Call[], batches = 60, perBatch = 5): Timing[] {
  for (const call of calls) for (let n = 0; n < batches * perBatch; n++) call(n);
  const times: number[][] = calls.map(() => []);
  for (let b = 0; b < batches; b++)
    calls.forEach((call, c) => {
      const start = performance.now();
      for (let n = 0; n < perBatch; n++) call(b * perBatch + n);
      times[c].push((performance.now() - start) / perBatch);
    });
  return times.map((of) => {
    of.sort((a, b) => a - b);
    return { median: of[batches >> 1], p90: of[Math.floor(0.9 * batches)] };
  });
}

export const timeCalls = (call: Call, batches?: number, perBatch?: number): Timing =>
  timeTogether([call], batches, perBatch)[0];

export const machine = (): string => `Node ${process.version}, ${cpus()[0]?.model ?? 'unknown CPU'}`;

/** A line of a table: what was timed, and how long it took. */
export const row = (name: string, { median, p90 }: Timing): string =>
  `  ${name.padEnd(48)} ${median.toFixed(3)} ms median, ${p90.toFixed(3)} ms p90, ${Math.round(1000 / median)} a second`;
