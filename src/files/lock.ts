import {
  existsSync,
  mkdirSync,
  readdirSync,
  renameSync,
  rmSync,
  statSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { basename, dirname, join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { InputError } from '../base/errors.js';
import { formatOwner, isGone, isOwner, newOwner } from './owner.js';

/*
 * One lock among processes: a folder that holds one file, named after the process that has it.
 *
 * To take it, a process makes such a folder under its own name, `lock.OWNER`, and renames it to `lock`, which the system
 * does for one only, since a folder that is not empty is never renamed over. A lock whose process has ended is renamed
 * back to `lock.OWNER`. As that folder then stays for an hour, a slower process that wants to do the same fails, and
 * so cannot carry off the lock of who came next. Neither needs a clock that is right.
 */

/** A lock that is held, to be given back. */
export interface Held {
  readonly release: () => void;
}

/** Takes a lock if it is free; else says which process has it. @throws the system's error where none can be made */
export function tryLock(path: string): Held | { readonly owner: string } {
  for (;;) {
    const owner = ownerOf(path);
    if (owner === null) {
      const held = take(path);
      if (held) return held;
    } else if (isGone(owner)) bury(path, owner);
    else return { owner };
  }
}

/**
 * Does something while holding a lock.
 *
 * @param what      is locked, in words
 * @param patience  how long to wait for it, ms
 * @throws {InputError} `locked` when another process has it all that time
 */
export async function underLock<T>(
  path: string,
  what: string,
  patience: number,
  act: () => T | Promise<T>,
): Promise<T> {
  const begun = performance.now();
  for (;;) {
    const got = tryLock(path);
    if ('release' in got) {
      try {
        return await act();
      } finally {
        got.release();
      }
    }
    if (performance.now() - begun >= patience) throw locked(path, what, got.owner);
    await sleep(5 + 40 * Math.random());
  }
}

const AN_HOUR = 60 * 60 * 1000; // ms

/** The name in a lock; null when it is free. */
function ownerOf(path: string): string | null {
  try {
    return readdirSync(path)[0] ?? null;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return null;
    throw error;
  }
}

function take(path: string): Held | null {
  const owner = newOwner();
  const own = `${path}.${owner}`;
  mkdirSync(own, { mode: 0o700 });
  try {
    writeFileSync(join(own, owner), '');
    if (!moved(own, path)) return null;
  } finally {
    rmSync(own, { recursive: true, force: true });
  }
  sweepBuried(path);
  return {
    release: () => {
      if (ownerOf(path) === owner && moved(path, own)) rmSync(own, { recursive: true, force: true });
    },
  };
}

function bury(path: string, owner: string): void {
  try {
    utimesSync(path, new Date(), new Date()); // the hour counts from now
  } catch {
    return; // another process buried it first
  }
  moved(path, `${path}.${owner}`);
}

/** Whether a folder could be renamed; not when another stands there already, or it was gone. */
function moved(from: string, to: string): boolean {
  try {
    renameSync(from, to);
    return true;
  } catch (error) {
    const { code } = error as NodeJS.ErrnoException;
    // Windows says of a folder in the way that it is not permitted
    if (code === 'ENOTEMPTY' || code === 'EEXIST' || code === 'ENOENT') return false;
    if (code === 'EPERM' && existsSync(to)) return false;
    throw error;
  }
}

function sweepBuried(path: string): void {
  const prefix = `${basename(path)}.`;
  for (const name of readdirSync(dirname(path))) {
    const owner = name.startsWith(prefix) ? name.slice(prefix.length) : '';
    if (!isOwner(owner) || !isGone(owner)) continue;
    const old = join(dirname(path), name);
    const since = statSync(old, { throwIfNoEntry: false })?.mtimeMs ?? Date.now();
    if (Math.abs(Date.now() - since) > AN_HOUR) rmSync(old, { recursive: true, force: true });
  }
}

const locked = (path: string, what: string, owner: string): InputError =>
  new InputError('locked', {
    field: what,
    rule: 'must not be in use by another flarewise',
    got: `one that ${formatOwner(owner)} is changing`,
    hint: `Wait until that has ended, or end it. If it is no flarewise, remove the folder ${path}.`,
  });
