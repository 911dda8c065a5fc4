import { spawnSync } from 'node:child_process';
import { newOwner } from '../../src/files/owner.js';

/** The name of a process of this machine that has ended. */
export function deadOwner(): string {
  const { pid } = spawnSync(process.execPath, ['--version']);
  return newOwner().replace(/^\d+/, String(pid));
}
