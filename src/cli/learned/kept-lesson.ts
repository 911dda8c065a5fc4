import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { deserialize, serialize } from 'node:v8';
import type { LearnedInputs, LearnedOptions, Taught } from '../../answer/learned-answer.js';
import { sweep } from '../../files/leftovers.js';
import { putFile } from '../../files/put-file.js';
import { OWN_FILE, ownFolder } from '../../records/home/home-folder.js';
import { VERSION } from '../../records/shared/version.js';

/*
 * What logs taught, kept in the folder of kept records, since learning takes about half a second a night. A lesson is a pure
 * function of what it was learned from and of the program, so one that is kept is the one that would be learned. It only saves time:
 * what cannot be read or written is learned again.
 */

/** As many lessons are kept, the newest ones. */
export const MOST_LESSONS = 32;

const folderIn = (home: string): string => join(home, 'lessons');

/** A place for what is learned from one log. */
export interface LessonPlace {
  /** What was kept there; null where nothing is, or it is damaged. */
  read(): Taught | null;
  /** Keeps it, where the folder can be written to. */
  keep(taught: Taught): void;
}

/** The place of what these inputs teach. */
export function lessonPlace(
  home: string,
  inputs: LearnedInputs,
  options: Omit<LearnedOptions, 'fitter'>,
): LessonPlace {
  const folder = folderIn(home);
  const path = join(folder, hashOf(VERSION, builtFrom(), serialize([inputs, options])).toString('hex'));
  return {
    read() {
      try {
        const bytes = readFileSync(path);
        const [hash, content] = [bytes.subarray(0, HASH_BYTES), bytes.subarray(HASH_BYTES)];
        return hash.equals(hashOf(content)) ? deserialize(content) : null;
      } catch {
        return null; // not there, or written by another version of Node
      }
    },
    keep(taught) {
      try {
        const content = serialize(taught);
        ownFolder(folder);
        putFile(path, Buffer.concat([hashOf(content), content]), { mode: OWN_FILE });
        keepNewest(folder);
      } catch {
        // a full or read-only disk is no reason not to answer
      }
    },
  };
}

/** Forgets all lessons: they are learned again from what is still logged. */
export const forgetLessons = (home: string): void => rmSync(folderIn(home), { recursive: true, force: true });

function keepNewest(folder: string): void {
  sweep(folder);
  const byAge = readdirSync(folder)
    .filter((name) => /^[0-9a-f]+$/.test(name))
    .map((name) => ({ path: join(folder, name), written: statSync(join(folder, name)).mtimeMs }))
    .sort((a, b) => b.written - a.written);
  for (const { path } of byAge.slice(MOST_LESSONS)) rmSync(path, { force: true });
}

const HASH_BYTES = 32;

const hashOf = (...parts: readonly (string | Uint8Array)[]): Buffer =>
  parts.reduce((hash, part) => hash.update(part), createHash('sha256')).digest();

/** What the program that learns was built from, where it was built here; a package has its version alone. */
function builtFrom(): string | Buffer {
  const sources = fileURLToPath(new URL('../../.sources.json', import.meta.url));
  return existsSync(sources) ? readFileSync(sources) : '';
}
