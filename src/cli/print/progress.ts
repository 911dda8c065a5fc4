import type { FirstLookAnswer } from '../../records/answers/first-look.js';
import type { Stage } from '../../records/answers/stage.js';
import type { Page } from '../../report/text/page.js';
import type { Terminal } from '../terminal/terminal.js';

/** How far a search has come. */
export interface Progress {
  /** One of the engine's, or words to be shown as they are. */
  readonly stage: Stage | (string & {});
  readonly done: number;
  readonly total: number;
}

export interface ProgressLine {
  show(progress: Progress): void;
  /** Shows a first look above the bar. */
  look(look: FirstLookAnswer, page: Pick<Page, 'units' | 'ascii'>): void;
}

/** One that stands on a terminal until it is ended. */
interface OwnLine extends ProgressLine {
  /** Takes away all that was shown. */
  end(): void;
}

const SILENT: OwnLine = { show() {}, look() {}, end() {} };

/** Columns of the longest words beside the bar with their counts, and the widest bar. */
const WORDS = 62;
const WIDEST_BAR = 24;
const NARROWEST_BAR = 4;
/** Columns of all beside bar and words: blanks, and the share. */
const REST = 11;

/** A bar on stderr for people; nothing in pipes and logs. It changes no setting of the terminal, so an interrupt has nothing to restore. */
export async function progressLine({ stderr }: Terminal): Promise<OwnLine> {
  if (!stderr.isTTY) return SILENT;
  const [{ SingleBar }, { stageText }, { firstLookText }, { wrap }, { plainText }] = await Promise.all([
    import('cli-progress').then((module) => module.default),
    import('../../report/wording/stages.js'),
    import('../../report/wording/first-look-text.js'),
    import('../../report/text/wrap.js'),
    import('../../report/text/plain-text.js'),
  ]);
  const columns = stderr.columns ?? 80;
  const barsize = Math.max(NARROWEST_BAR, Math.min(WIDEST_BAR, columns - WORDS));
  const bar = new SingleBar({
    stream: stderr,
    format: '  {bar}  {words} {percentage} %',
    barsize,
    barCompleteChar: '#',
    barIncompleteChar: '.',
    clearOnComplete: true,
    hideCursor: false,
    linewrap: true,
  });
  let stage: string | undefined;
  let linesAbove = 0;
  return {
    show(progress) {
      if (progress.stage !== stage) {
        stage = progress.stage;
        const [words] = wrap(stageText(stage), columns - 1 - barsize - REST);
        bar.start(progress.total, progress.done, { words });
      } else bar.update(progress.done);
    },
    look(look, { units, ascii }) {
      if (stage !== undefined) bar.stop();
      stage = undefined;
      const lines = wrap(plainText(firstLookText(look, units), ascii), columns - 1);
      stderr.write(lines.map((line) => `${line}\n`).join(''));
      linesAbove += lines.length;
    },
    end() {
      if (stage !== undefined) bar.stop();
      if (linesAbove > 0) stderr.write(upAndClear(linesAbove));
    },
  };
}

/** Moves this many lines up, to their beginning, and clears the screen from there on (ECMA-48: CPL, ED). */
const upAndClear = (lines: number): string => `\u001b[${lines}F\u001b[J`;

/** Runs something long with its progress shown, and takes it away however it ends. */
export async function withProgress<T>(
  terminal: Terminal,
  run: (line: ProgressLine) => Promise<T>,
): Promise<T> {
  const line = await progressLine(terminal);
  try {
    return await run(line);
  } finally {
    line.end();
  }
}
