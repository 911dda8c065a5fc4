import { setImmediate as nextTurn } from 'node:timers/promises';
import type { Interviewed } from '../../interview/made-records.js';
import { heldLine } from '../print/held-line.js';
import type { ProgressLine } from '../print/progress.js';
import type { Answerer } from './answered.js';

/** An answer that is found while a person still reads over what it is asked for; usually it stands when they go on. */
interface Ahead<Found> {
  /** Begins for these records; what was begun for others ends at its next step. */
  begin(records: Interviewed): void;
  /** What is found for these records, with its progress shown from now on. */
  found(records: Interviewed, line: ProgressLine): Promise<Found>;
  /** Ends what was begun at its next step. */
  stop(): void;
}

/** Prepares to find an answer ahead. @param find  as a command does; it may throw at any step once it is stopped */
export function findAhead<Found>(find: Answerer<Found>['find']): Ahead<Found> {
  let begun: Begun<Found> | null = null;
  const stop = (): void => begun?.stop();
  const begin = (records: Interviewed): Begun<Found> => {
    stop();
    begun = begunFor(records, find);
    return begun;
  };
  return {
    begin,
    stop,
    found: (records, line) => (begun?.records === records ? begun : begin(records)).wait(line),
  };
}

interface Begun<Found> {
  readonly records: Interviewed;
  readonly wait: (line: ProgressLine) => Promise<Found>;
  readonly stop: () => void;
}

function begunFor<Found>(records: Interviewed, find: Answerer<Found>['find']): Begun<Found> {
  const stopping = new AbortController();
  const held = heldLine(stopping.signal);
  let isOver = false;
  const found = nextTurn() // what is read over is shown first
    .then(() => find(records, { line: held, isAhead: true }))
    .finally(() => {
      isOver = true;
    });
  found.catch(() => undefined); // said when it is asked for
  return {
    records,
    wait(line) {
      if (!isOver) held.follow(line);
      return found;
    },
    stop: () => stopping.abort(),
  };
}
