import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { putFile } from '../../files/put-file.js';
import type { InterviewDraft } from '../../interview/draft.js';
import { OWN_FILE, ownFolder } from '../../records/home/home-folder.js';
import { JSON_FILE } from '../../records/read/read-file.js';
import { readText } from '../../records/read/read-record.js';

/* The draft of an interview that was left, kept until it is finished: one file in the folder of kept records. */

const fileIn = (home: string): string => join(home, 'interview-draft.json');

/** The answers of an interview that was left; null when there is none, or its file is damaged. */
export function readInterviewDraft(home: string): InterviewDraft | null {
  if (!existsSync(fileIn(home))) return null;
  try {
    const draft: unknown = JSON.parse(readText(fileIn(home), JSON_FILE));
    const isSound =
      Array.isArray(draft) && draft.every((pair) => Array.isArray(pair) && typeof pair[0] === 'string');
    return isSound ? (draft as InterviewDraft) : null;
  } catch {
    return null; // it only saves typing: no one should have to mend it
  }
}

/** Keeps the answers so far, or forgets them with null. @returns whether it could: a folder may not be writable */
export function writeInterviewDraft(home: string, draft: InterviewDraft | null): boolean {
  try {
    if (draft === null) rmSync(fileIn(home), { force: true });
    else {
      ownFolder(home);
      putFile(fileIn(home), JSON.stringify(draft), { mode: OWN_FILE });
    }
    return true;
  } catch {
    return false; // a full or read-only disk is no reason to stop asking
  }
}
