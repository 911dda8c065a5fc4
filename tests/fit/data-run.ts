import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { sweep } from '../../src/files/leftovers.js';
import { putFile } from '../../src/files/put-file.js';
import { threadPool } from '../../src/threads/thread-pool.js';
import { ROW } from './shot-rows.js';

export interface DataRun {
  readonly seed: number;
  readonly lanes: number;
  /** Where finished parts are kept; a run that was stopped goes on from them. */
  readonly directory: string;
  readonly workers: number;
  /** Lanes whose shots are rolled, and kept, in one go; some seconds' work when left out. */
  readonly part?: number;
  readonly onProgress?: (done: number, total: number) => void;
}

const PART = 64;

/**
 * Rolls the design's shots in worker threads, one file a part; parts that are there already are read instead.
 *
 * A file is put in place whole, so that a kill leaves none half written. The rows come in the design's order
 * however many workers there are.
 */
export async function runDesign({
  seed,
  lanes,
  directory,
  workers,
  part = PART,
  onProgress,
}: DataRun): Promise<Float32Array> {
  await mkdir(directory, { recursive: true });
  sweep(directory);
  const pool = threadPool<{ seed: number; from: number; to: number }, Float32Array>(
    new URL('./rows-worker.mjs', import.meta.url),
    workers,
  );
  let done = 0;
  try {
    const parts = await Promise.all(
      Array.from({ length: Math.ceil(lanes / part) }, async (_, i) => {
        const from = part * i;
        const to = Math.min(lanes, from + part);
        const file = join(directory, `seed-${seed}-lanes-${from}-${to}.f32`);
        const kept = await readRows(file);
        const rows = kept ?? (await pool.run({ seed, from, to }));
        if (!kept) keep(file, rows);
        done += to - from;
        onProgress?.(done, lanes);
        return rows;
      }),
    );
    return concatenated(parts);
  } finally {
    await pool.close();
  }
}

/** Rows of a finished part; null when there is none, or not a whole one. */
async function readRows(file: string): Promise<Float32Array | null> {
  const content = await readFile(file).catch(() => null);
  if (!content || content.length % (4 * ROW) !== 0) return null;
  return new Float32Array(content.buffer.slice(content.byteOffset, content.byteOffset + content.length));
}

const keep = (file: string, rows: Float32Array): void =>
  putFile(file, Buffer.from(rows.buffer, rows.byteOffset, rows.byteLength));

function concatenated(parts: readonly Float32Array[]): Float32Array {
  const all = new Float32Array(parts.reduce((sum, part) => sum + part.length, 0));
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}
