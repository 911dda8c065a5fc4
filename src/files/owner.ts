import { createHash, randomBytes } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { hostname } from 'node:os';
import { kill, pid } from 'node:process';

/*
 * The process that made a file, spelt into the file's name: its number, when it began by the machine's own count
 * (a number is given again, to another process), its machine, and which of its files this is. No clock is in it.
 */

const OWNER = /^(\d+)-(\d+)-([0-9a-f]{8})-[0-9a-f]{8}$/;

/** A name of this process, another at every call. */
export const newOwner = (): string => `${pid}-${begunAt(pid)}-${machine()}-${randomBytes(4).toString('hex')}`;

/** Whether the process behind such a name has ended; false too where that cannot be known from here. */
export function isGone(owner: string): boolean {
  const [, number, begun, on] = OWNER.exec(owner) ?? [];
  if (number === undefined || on !== machine()) return false;
  try {
    kill(Number(number), 0); // signal 0 only asks
  } catch (error) {
    return (error as NodeJS.ErrnoException).code === 'ESRCH'; // another person's process may not be asked, but lives
  }
  const now = begunAt(Number(number));
  return begun !== '0' && now !== 0 && Number(begun) !== now;
}

/** The process in words: `process 4711`. */
export function formatOwner(owner: string): string {
  const [, number, , on] = OWNER.exec(owner) ?? [];
  if (number === undefined) return 'an unknown process';
  return `process ${number}${on === machine() ? '' : ' on another machine'}`;
}

export const isOwner = (text: string): boolean => OWNER.test(text);

const machine = (): string => createHash('sha256').update(hostname()).digest('hex').slice(0, 8);

/**
 * Ticks from the machine's start to the process's (field 22 of proc(5) stat); 0 on systems that do not say, and -1 for
 * a process that has ended but is still listed, as its parent has not asked after it.
 */
function begunAt(process: number): number {
  try {
    const stat = readFileSync(`/proc/${process}/stat`, 'utf8');
    // the second field is the program's name in brackets, which may hold anything
    const [state, ...numbers] = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
    return state === 'Z' ? -1 : Number(numbers[18]);
  } catch {
    return 0;
  }
}
