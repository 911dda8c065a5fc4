import { InputError, quotedTyped } from '../../base/errors.js';
import { visibleJson } from '../../base/visible.js';
import { coach } from '../../coach/coach.js';
import type { CoachUnit } from '../../coach/coach-unit.js';
import { VERSION } from '../../records/shared/version.js';
import { coachCsv } from '../../report/csv/coach-csv.js';
import { coachReport } from '../../report/screens/coach-report.js';
import { UNITS } from '../../report/text/display-units.js';
import { printedCoachLine } from '../../report/wording/coach-lines.js';
import { ballsOfRow } from '../files/balls-of-row.js';
import { coachFileFlag, openCoachFile, unitKey } from '../files/coach-file.js';
import { loadBalls, loadBowlers, loadLanes } from '../files/load-list.js';
import { reportFlag, writeReport } from '../files/report-flag.js';
import { oneFormat } from '../flags/one-format.js';
import type { CoachCommandOptions } from '../flags/options.js';
import { searchFlags } from '../flags/search-flags.js';
import { wantFlags } from '../flags/want-flags.js';
import { keptLogs } from '../learned/bowler-log.js';
import { logToLearnFrom } from '../learned/learned-for.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { collectAll, collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';
import { afterCoach } from './after-coach.js';

/** `flarewise coach`: every bowler with every ball on every lane. */
export async function coachCommand(options: CoachCommandOptions, terminal: Terminal): Promise<void> {
  const { seed, ruleSet, practiceWeight, workers, units: unitSystem } = searchFlags(options, terminal);
  const given = collectFaults({
    bowlers: () => loadBowlers(options.bowlers, terminal),
    balls: () => loadBalls(options.balls, terminal),
    lanes: () => loadLanes(options.lanes, terminal),
    want: () => wantFlags(options),
    part: () => partFlag(options.part),
    format: () => oneFormat(options),
    out: () => coachFileFlag(options.out),
    report: () => reportFlag(options.report),
    seed,
    ruleSet,
    practiceWeight,
    workers,
    unitSystem,
  });
  const bags = collectAll(given.bowlers, (row) => ballsOfRow(row, given.balls));
  const logs = options.unlearned ? null : keptLogs(terminal);
  const units = given.bowlers
    .flatMap(({ record: bowler }, i): CoachUnit[] => {
      const log = logToLearnFrom(bowler, logs);
      return given.lanes.map(({ record: lane }) => ({
        bowler,
        lane,
        balls: bags[i],
        want: given.want,
        log,
      }));
    })
    .filter((_, i) => i % given.part.of === given.part.number - 1);
  const told = {
    seed: given.seed,
    ruleSet: given.ruleSet,
    practiceWeight: given.practiceWeight,
    budget: terminal.budget,
  };
  const keys = units.map((unit) => unitKey(unit, [VERSION, given.seed, given.ruleSet, given.practiceWeight]));
  const file = given.out === undefined ? undefined : openCoachFile(given.out);
  process.once('exit', () => file?.close()); // an interrupt ends the program without coming back here
  const known = file?.known ?? new Map();
  const open = units.map((unit, i) => ({ unit, key: keys[i] })).filter(({ key }) => !known.has(key));
  const answered = new Map(known);
  await withProgress(terminal, async ({ show: onProgress }) => {
    const show = (): void =>
      onProgress({ stage: 'bowlers x lanes', done: units.length - open.length + fresh, total: units.length });
    let fresh = 0;
    show();
    await coach(
      open.map(({ unit }) => unit),
      told,
      given.workers,
      (lines, i) => {
        answered.set(open[i].key, lines);
        file?.append(open[i].key, lines.map(printedCoachLine));
        fresh += 1;
        show();
      },
    );
  }).finally(() => file?.close());
  const lines = keys.flatMap((key) => answered.get(key) ?? []);
  const printed = lines.map(printedCoachLine);
  if (options.jsonl) terminal.stdout.write(printed.map((line) => `${visibleJson(line)}\n`).join(''));
  else if (options.json) terminal.stdout.write(`${visibleJson(printed, 2)}\n`);
  else if (options.csv) terminal.stdout.write(coachCsv(lines));
  else
    await printAnswer(
      lines,
      (page) => coachReport(lines, page, options.full),
      options,
      terminal,
      afterCoach(options, given, lines),
    );
  if (given.report === null) return;
  const { coachHtml } = await import('../../report/web/coach-html.js');
  writeReport(given.report, coachHtml(lines, UNITS[given.unitSystem]));
}

/** `2/5`: the second of five parts; everything by default. */
function partFlag(text = '1/1'): { readonly number: number; readonly of: number } {
  const match = /^(\d{1,4})\/(\d{1,4})$/.exec(text);
  const [number, of] = [Number(match?.[1]), Number(match?.[2])];
  if (!(number >= 1 && number <= of))
    throw new InputError('flag', {
      field: '--part',
      rule: 'must be K/N with K from 1 to N',
      got: quotedTyped(text),
      hint: '2/5 works out the second of five parts.',
    });
  return { number, of };
}
