import { spawnSync } from 'node:child_process';
import type { Terminal } from '../terminal/terminal.js';

/**
 * Writes a text to stdout; through the person's pager (`PAGER`, else `less -FRX`) where stdout is the terminal itself and the text is
 * longer than it. A pager that cannot be started is done without.
 */
export function writePaged(text: string, { stdout, env }: Terminal): void {
  const rows = 'rows' in stdout ? Number(stdout.rows) : Number.NaN;
  const isLong = text.split('\n').length > rows;
  const command = env.PAGER ?? 'less -FRX';
  if (stdout !== process.stdout || !stdout.isTTY || !isLong || command === '' || env.TERM === 'dumb') {
    stdout.write(text);
    return;
  }
  const { error, status } = spawnSync(command, {
    shell: true,
    input: text,
    stdio: ['pipe', 'inherit', 'inherit'],
  });
  if (error || status === 127) stdout.write(text); // no such program
}
