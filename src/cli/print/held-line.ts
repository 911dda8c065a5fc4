import type { ProgressLine } from './progress.js';

/** The progress of something for which no one waits yet. */
interface HeldLine extends ProgressLine {
  /** Shows on another line where it stands, and from then on all that comes. */
  follow(line: ProgressLine): void;
}

/** @param signal  once aborted, `show` throws, which ends what goes on */
export function heldLine(signal: AbortSignal): HeldLine {
  let followed: ProgressLine | null = null;
  let latest: Parameters<ProgressLine['show']> | null = null;
  let look: Parameters<ProgressLine['look']> | null = null;
  return {
    show(...progress) {
      signal.throwIfAborted();
      latest = progress;
      followed?.show(...progress);
    },
    look(...seen) {
      look = seen;
      followed?.look(...seen);
    },
    follow(line) {
      followed = line;
      if (look) line.look(...look);
      if (latest) line.show(...latest);
    },
  };
}
