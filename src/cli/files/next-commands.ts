import { shellLines } from '../print/shell-line.js';

/** What bowler, ball and lane are called on a command line. */
export interface Called {
  readonly bowler: string;
  readonly ball: string;
  readonly lane: string;
}

/**
 * What to do after a recommendation, as lines ready to paste.
 *
 * @param called  null where the records are kept nowhere
 */
export function nextCommands(called: Called | null, layout: string, width: number): string[] {
  const sheet = called
    ? shellLines(
        [
          'flarewise',
          'sheet',
          ...['--bowler', called.bowler, '--ball', called.ball, '--lane', called.lane],
          ...['--layout', layout, '--out', 'sheet.pdf'],
        ],
        width,
      )
    : [];
  return [...sheet, 'More: --full, or --show why,compare,path,marks (see --help)'];
}
