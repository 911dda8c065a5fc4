import { checkFolder, kindOfFile } from './out-file.js';

export const REPORT_FLAG = '--report';

/**
 * The file a web page is asked for in; null where none is.
 *
 * @throws {InputError} `flag` when its name says that it is something else, `cannot-write` when its folder is none
 */
export function reportFlag(path: string | undefined): string | null {
  if (path === undefined) return null;
  kindOfFile(path, ['html'], REPORT_FLAG);
  checkFolder(path, REPORT_FLAG);
  return path;
}
