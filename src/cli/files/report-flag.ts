import { checkedOut, kindOfFile, writeOut } from './out-file.js';

const REPORT = '--report';

/**
 * The file for a web page; null when none is asked for.
 *
 * @throws {InputError} `flag` when its name says that it is something else, `no-access` when it cannot be written
 */
export function reportFlag(path: string | undefined): string | null {
  if (path === undefined) return null;
  kindOfFile(path, ['html'], REPORT);
  return checkedOut(path, REPORT);
}

/** Writes a web page there. @throws {InputError} `no-access` when it cannot be written to */
export const writeReport = (path: string, html: string): void => writeOut(path, Buffer.from(html), REPORT);
