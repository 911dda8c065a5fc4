import { existsSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { putFile } from '../../files/put-file.js';
import type { InterviewDraft } from '../../interview/interview.js';
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

/** Keeps the answers so far, or forgets them with null. Where the folder cannot be written nothing is kept. */
export function writeInterviewDraft(home: string, draft: InterviewDraft | null): void {
  try {
    if (draft === null) rmSync(fileIn(home), { force: true });
    else {
      ownFolder(home);
      putFile(fileIn(home), JSON.stringify(draft), { mode: OWN_FILE });
    }
  } catch {
    // a full or read-only disk is no reason to stop asking
  }
}
