import { logAnswer, type NamedLog } from '../../answer/log-answer.js';
import type { LogAnswer } from '../../records/answers/log-answer.js';
import { keptIds, readKept } from '../../records/home/saved-records.js';
import { formatShotList } from '../../records/log/shot-list.js';
import { logReport } from '../../report/screens/log-report.js';
import { homeOf } from '../files/home.js';
import { knownLanes, openLog } from '../files/shot-log.js';
import type { LogOptions } from '../flags/options.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/**
 * Prints the nights of all logs, or the shots of one.
 *
 * @param word  the drilled layout; undefined for all
 * @param on    the evening; all of them when left out
 */
export async function listShots(
  word: string | undefined,
  options: LogOptions,
  terminal: Terminal,
  on?: string,
): Promise<void> {
  const logs = word === undefined ? allLogs(terminal) : [openLog(word, terminal)];
  if (options.csv) {
    terminal.stdout.write(formatShotList(logs));
    return;
  }
  const lanes = knownLanes(terminal);
  const whole = logAnswer(logs, (lane) => lanes.find(({ id }) => id === lane)?.patternFt ?? null);
  const answer = on === undefined ? whole : ofEvening(whole, on);
  const hasShots = word !== undefined || Boolean(options.list);
  await printAnswer(answer, (page) => logReport(answer, page, hasShots), options, terminal);
}

function allLogs(terminal: Terminal): readonly NamedLog[] {
  const home = homeOf(terminal);
  const ids = keptIds(home, 'layout');
  const records = collectFaults(
    Object.fromEntries(ids.map((id) => [id, () => readKept(home, 'layout', id)])),
  );
  return ids.map((id) => ({ id, record: records[id] }));
}

/** The same with the nights of one evening alone. */
const ofEvening = (answer: LogAnswer, on: string): LogAnswer => ({
  ...answer,
  logs: answer.logs.map((log) => ({ ...log, nights: log.nights.filter(({ head }) => head.on === on) })),
});
