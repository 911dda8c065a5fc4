import { median } from 'simple-statistics';
import type { LogAnswer } from '../../records/answers/log-answer.js';
import { LINE_READINGS, READINGS } from '../../records/log/readings.js';
import { type LoggedShot, READING_IDS, type ReadingId } from '../../records/schemas/shot-log.js';
import { countOf } from '../text/count-of.js';
import type { Page } from '../text/page.js';
import { withPlainText } from '../text/plain-text.js';
import { readingErrorsText } from '../text/reading-errors-text.js';
import { bareReading, boardText } from '../text/reading-text.js';
import { bullets, joinSections, paragraph, section } from '../text/section.js';
import { besidesText, nightText } from '../text/shot-text.js';
import { gridLines } from '../text/table.js';
import { withQuantities } from '../text/with-quantities.js';
import { sayAll } from '../wording/say.js';

type Log = LogAnswer['logs'][number];
type LoggedNight = Log['nights'][number];

/** The nights of all logs, a row each with the middle of its shots, or with `hasShots` every shot. */
export function logReport(answer: LogAnswer, page: Page, hasShots: boolean): string {
  const { logs } = withPlainText(answer, page.ascii);
  const withAny = logs.filter(({ nights }) => nights.length > 0);
  if (withAny.length === 0)
    return joinSections([
      paragraph(
        logs.length === 0
          ? 'No drilled layout is kept yet. flarewise shelf add keeps one; then flarewise log ID 20 14 8 17 --lane house-easy keeps a shot: laydown, arrows, breakpoint, pins.'
          : `No shot is logged yet. flarewise log ${logs[0].id} 20 14 8 17 --lane house-easy keeps one: laydown, arrows, breakpoint, pins.`,
        page,
      ),
    ]);
  return joinSections(withAny.flatMap((log) => (hasShots ? shotsOf(log, page) : [nightsOf(log, page)])));
}

const headingOf = ({ id, layout, ball, bowler, shots }: Log): string =>
  `${id}: ${layout} on ${ball} for ${bowler}, ${countOf(shots, 'shot')}`;

/** Nights of a ball, a row each, with the middle of the boards that were seen. */
function nightsOf(log: Log, page: Page): string[] {
  const right = 'right' as const;
  const hasGutter = log.nights.some(({ shots }) => shots.some(({ shot }) => shot.gutter));
  const columns = [
    { head: 'night' },
    { head: 'games', align: right },
    { head: 'target', align: right },
    { head: 'shots', align: right },
    ...LINE_READINGS.map((id) => ({ head: headOf(id, page), align: right })),
    ...(hasGutter ? [{ head: 'in the\ngutter', align: right }] : []),
  ];
  const rows = log.nights.map(({ head, shots: ofNight }) => {
    const shots = ofNight.map(({ shot }) => shot);
    const { on, lane, patternFt, games, targetBoard } = head;
    return [
      nightText({ ...(on ? { on } : {}), lane, ...(patternFt ? { patternFt } : {}) }, page.units),
      games === undefined ? '-' : String(games),
      targetBoard === undefined ? '-' : boardText(targetBoard),
      String(shots.length),
      ...LINE_READINGS.map((id) => middleOf(id, shots, page)),
      String(shots.filter(({ gutter }) => gutter).length),
    ];
  });
  const says = log.nights.flatMap((night) => night.says);
  return section(
    headingOf(log),
    [...gridLines({ columns, rows }, page), ...bullets(sayAll(says, page.units), page)],
    page,
  );
}

/** Every shot of a ball, night by night. */
function shotsOf(log: Log, page: Page): string[][] {
  const how = `flarewise log ${log.id} --edit N changes a shot, --undo N takes it out.`;
  let said = '';
  const nights = log.nights.map((night) => {
    const { head, shots, says } = night;
    const errors = readingErrorsText({ ...head, shots: shots.map(({ shot }) => shot) }, page.units);
    const isNew = errors !== said;
    said = errors;
    return section(
      nightText(head, page.units),
      [
        ...shotTable(night, page),
        ...(isNew ? paragraph(errors, page, page.paint.quiet) : []),
        ...bullets(sayAll(says, page.units), page),
      ],
      page,
    );
  });
  return [section(headingOf(log), paragraph(how, page), page), ...nights];
}

function shotTable({ shots }: LoggedNight, page: Page): string[] {
  const ids = idsIn(shots.map(({ shot }) => shot));
  const rows = shots.map(({ number, shot }) => [
    String(number),
    ...ids.map((id) => (id === 'pinsBoard' && shot.gutter ? 'gutter' : readingOf(id, shot, page))),
    besidesText(withoutReadings(shot), page.units).join(', '),
  ]);
  const columns = [
    { head: 'shot' },
    ...ids.map((id) => ({ head: headOf(id, page), align: 'right' as const })),
    { head: '' },
  ];
  return gridLines({ columns, rows }, page);
}

/** The boards of the line, and what else anyone looked at. */
const idsIn = (shots: readonly LoggedShot[]): readonly ReadingId[] =>
  READING_IDS.filter(
    (id) => LINE_READINGS.some((each) => each === id) || shots.some((shot) => shot[id] !== undefined),
  );

const headOf = (id: ReadingId, { units }: Page): string => {
  const { head, quantity } = READINGS[id];
  return `${withQuantities(head, units)}${quantity === 'boards' ? '' : `, ${units[quantity].name}`}`;
};

function readingOf(id: ReadingId, shot: LoggedShot, page: Page): string {
  const value = shot[id];
  return value === undefined ? '-' : bareReading(id, value, page.units);
}

function middleOf(id: ReadingId, shots: readonly LoggedShot[], page: Page): string {
  const values = shots.flatMap((shot) => shot[id] ?? []);
  return values.length === 0 ? '-' : bareReading(id, median(values), page.units);
}

const withoutReadings = (shot: LoggedShot): LoggedShot =>
  Object.fromEntries(
    Object.entries(shot).filter(([key]) => !READING_IDS.some((id) => id === key)),
  ) as LoggedShot;
