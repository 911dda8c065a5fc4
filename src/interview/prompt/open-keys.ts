import type { Readable } from 'node:stream';
import { keysApart } from './keys-apart.js';
import { stopProgram } from './stop-program.js';

/** A terminal's input, or what stands for it in a test. */
export type KeyInput = Readable & { readonly isTTY?: boolean; setRawMode?(mode: boolean): unknown };

/** Keys as they are pressed. None is lost between questions. */
export interface Keys {
  readonly input: Readable;
  /** Suspends this program and its process group, as ctrl-Z does; returns when it continues. The shell gets the terminal as it was. */
  stop(): void;
  /** Gives the terminal back as it was. */
  close(): void;
}

/** Reads keys until it is closed, or a signal ends the program: a prompt of inquirer would leave the terminal raw then. */
export function openKeys(input: KeyInput): Keys {
  const raw = (mode: boolean): void => {
    if (input.isTTY) input.setRawMode?.(mode);
  };
  const onContinued = (): void => {
    raw(false); // the shell may have changed the terminal, which is not seen here
    raw(true);
  };
  const onSignal = (signal: NodeJS.Signals): void => {
    close();
    process.kill(process.pid, signal);
  };
  const close = (): void => {
    process.off('SIGCONT', onContinued).off('SIGINT', onSignal).off('SIGTERM', onSignal);
    input.unpipe(apart).pause();
    raw(false);
  };
  const apart = keysApart();
  raw(true);
  input.pipe(apart);
  process.on('SIGCONT', onContinued).on('SIGINT', onSignal).on('SIGTERM', onSignal);
  return {
    input: apart,
    stop: () => {
      raw(false);
      stopProgram();
      raw(true);
    },
    close,
  };
}
