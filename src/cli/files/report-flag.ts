import { checkedOut, kindOfFile } from './out-file.js';

export const REPORT_FLAG = '--report';

/**
 * The file for a web page; null when none is asked for.
 *
 * @throws {InputError} `flag` when its name says that it is something else, `no-access` when it cannot be written
 */
export function reportFlag(path: string | undefined): string | null {
  if (path === undefined) return null;
  kindOfFile(path, ['html'], REPORT_FLAG);
  return checkedOut(path, REPORT_FLAG);
}
