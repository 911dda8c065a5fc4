import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { z } from 'zod';
import { bodiesAt, type Ensemble, fitEnsemble, SEARCH_EDITION } from '../ball/core/ensemble.js';
import type { PublishedNumbers } from '../ball/core/published.js';
import { MISFITS } from '../ball/core/solve-core.js';
import { sweep } from '../files/leftovers.js';
import { putFile } from '../files/put-file.js';
import { JSON_FILE } from '../records/read/read-file.js';
import { readText } from '../records/read/read-record.js';
import { hasNoses } from '../records/schemas/core-families.js';
import type { CoreFitter } from './fit-cores.js';

/**
 * A fitter that remembers ensembles in a folder, by the content of what was asked.
 *
 * Kept is what was found where, not the cores: a search is long and making its cores again from their starting
 * points is short, gives the same cores to the last digit, and shows that they still fit. So a remembered ensemble
 * is the one a search would find, or it is not used: an entry that is damaged, foreign, or of another
 * edition of the search is searched for anew, in silence, as is everything when the folder cannot be used.
 *
 * @param folder  made when needed; `MOST_ENTRIES` files of less than 2 kB at most
 */
export const cachedFitter =
  (folder: string): CoreFitter =>
  (published, count) => {
    const key = keyOf(published, count);
    const file = join(folder, `${key}.json`);
    const known = recalled(file, key, published);
    if (known) return known;
    const found = fitEnsemble(published, count);
    if (found.bodies.length > 0) remember(folder, file, key, found);
    return found;
  };

const TAG = 'flarewise/fit/1';
const MOST_ENTRIES = 500;

const entrySchema = z.strictObject({
  schema: z.literal(TAG),
  key: z.string(),
  found: z.strictObject({
    points: z.array(z.int().positive()).min(1),
    tried: z.int().positive(),
    misfits: z.partialRecord(z.enum(MISFITS), z.int().positive()),
  }),
  /** SHA-256 of the key and what was found. */
  checksum: z.string(),
});

type Entry = z.infer<typeof entrySchema>;

const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');

/** Fingerprint of everything a search depends on. */
const keyOf = (p: PublishedNumbers, count: number): string =>
  sha256(
    JSON.stringify([
      SEARCH_EDITION,
      count,
      p.family,
      p.mass,
      p.radius,
      p.lowRg,
      p.differential,
      p.intermediateDifferential,
      p.pinToCg,
      p.topMoment,
      hasNoses(p.family) && p.lobes,
    ]),
  );

const checksumOf = (key: string, found: Entry['found']): string => sha256(JSON.stringify([key, found]));

function recalled(file: string, key: string, published: PublishedNumbers): Ensemble | null {
  try {
    const entry = entrySchema.parse(JSON.parse(readText(file, JSON_FILE)));
    if (entry.key !== key || entry.checksum !== checksumOf(key, entry.found)) return null;
    const bodies = bodiesAt(published, entry.found.points);
    return bodies && { ...entry.found, bodies };
  } catch {
    return null; // not there, or not to be used: the search answers
  }
}

function remember(folder: string, file: string, key: string, { points, tried, misfits }: Ensemble): void {
  const found: Entry['found'] = { points: [...points], tried, misfits };
  const entry: Entry = { schema: TAG, key, found, checksum: checksumOf(key, found) };
  try {
    mkdirSync(folder, { recursive: true });
    putFile(file, JSON.stringify(entry), { durable: false }); // of two programs at once each leaves a whole file
    sweep(folder);
    dropOldest(folder);
  } catch {
    // a folder that cannot be written makes the next answer slower, not wrong
  }
}

/** Keeps the folder small. Only files named as this cache names them are touched. */
function dropOldest(folder: string): void {
  const entries = readdirSync(folder).filter((name) => /^[0-9a-f]{64}\.json$/.test(name));
  if (entries.length <= MOST_ENTRIES) return;
  entries
    .map((name) => ({ path: join(folder, name), written: statSync(join(folder, name)).mtimeMs }))
    .sort((a, b) => a.written - b.written)
    .slice(0, entries.length - MOST_ENTRIES)
    .forEach(({ path }) => {
      rmSync(path, { force: true });
    });
}
