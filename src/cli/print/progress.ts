import type { Terminal } from '../terminal/terminal.js';

/** How far a search has come. */
export interface Progress {
  readonly stage: string;
  readonly done: number;
  readonly total: number;
}

export interface ProgressLine {
  show(progress: Progress): void;
  end(): void;
}

/** A bar on stderr for people; nothing in pipes and logs. */
export async function progressLine({ stderr }: Terminal): Promise<ProgressLine> {
  if (!stderr.isTTY) return { show() {}, end() {} };
  const { SingleBar } = (await import('cli-progress')).default;
  const bar = new SingleBar({
    stream: stderr,
    format: '  {bar}  {stage} {value}/{total}',
    barsize: 24,
    barCompleteChar: '#',
    barIncompleteChar: '.',
    clearOnComplete: true,
    hideCursor: false,
    linewrap: true, // changes no terminal setting, so an interrupt has nothing to restore
  });
  let stage: string | undefined;
  return {
    show(progress) {
      if (progress.stage !== stage) {
        stage = progress.stage;
        bar.start(progress.total, progress.done, { stage });
      } else bar.update(progress.done);
    },
    end() {
      if (stage !== undefined) bar.stop();
    },
  };
}

/** Runs something long with its progress shown, and takes the bar away however it ends. */
export async function withProgress<T>(
  terminal: Terminal,
  run: (onProgress: (progress: Progress) => void) => Promise<T>,
): Promise<T> {
  const line = await progressLine(terminal);
  try {
    return await run(line.show);
  } finally {
    line.end();
  }
}
