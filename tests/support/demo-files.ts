import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { DEMO } from '../../src/records/read/shelf.js';

type Json = Record<string, unknown>;

const read = (folder: string, id: string): Json =>
  JSON.parse(readFileSync(new URL(`../../data/${folder}/${id}.json`, import.meta.url), 'utf8'));

/** The default demo records as parsed files, for tests to spoil. */
export const demo = {
  bowler: (): Json => read('bowlers', DEMO.bowler),
  ball: (): Json => read('balls', DEMO.ball),
  lane: (): Json => read('lanes', DEMO.lane),
};

/** A folder of its own for one test file. */
export function scratchFolder() {
  const path = mkdtempSync(join(tmpdir(), 'flarewise-'));
  return {
    path,
    /** Writes a file, JSON unless it is text or bytes already, and returns its path. */
    write(name: string, content: unknown): string {
      const file = join(path, name);
      const isReady = typeof content === 'string' || content instanceof Uint8Array;
      writeFileSync(file, isReady ? content : JSON.stringify(content));
      return file;
    },
    remove: () => rmSync(path, { recursive: true, force: true }),
  };
}
